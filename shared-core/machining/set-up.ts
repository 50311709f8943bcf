import type { Surface } from '../boring/model.js';
import type { Handedness } from '../carcass/model.js';
import type { EdgeName } from '../job/model.js';
import type { Micrometres } from '../length/units.js';
import type { CupBorer, HorizontalHead, LineDrill, VerticalHead } from '../shop/model.js';

/**
 * Room that a panel which lies against one stop must have to any other that stands up: one that is a little longer than drawn
 * would else be held off its own stop (common practice, no source).
 */
export const STOP_ROOM: Micrometres = 2000;

/**
 * A set-up: all that an operator (or the replay) needs, and nothing of how it was found.
 *
 * Table frame of every machine, as the operator stands: X to the right, Y away from him, Z up.
 * - Vertical head: the spindle line is X = 0, square to the fence; spindle k stands `fence + k * pitch` from the fence.
 *   A stop's position is from its face to the line: a left stop's face is at X = -position, a right stop's at X = +position.
 * - Line drill: spindle k of every head stands at X = k * pitch; head h stands `heads[h]` from the fence. A left stop's face
 *   is at X = -position, a right stop's at X = (S - 1) * pitch + position.
 * - Horizontal head: the spindle line lies along X at height `height` over the table, spindle k at X = k * pitch, boring
 *   away from the head into the end that is pressed against it; stops as on the line drill, against the FRONT EDGE. The
 *   head stands at the far side of the table: the operator pushes the end away from himself against its plate.
 * - Cup borer: one spindle at X = 0, `fence` from a fence at the far side, boring from above.
 * Every stop of a set-up is set and stands up. A step that covers one with the panel (a stop of the other hand, or its own
 * after an index move), or brings the panel's other end nearer to one than STOP_ROOM, needs that stop to be one that `lowers`.
 * Stops of one hand slide on one fence and cannot pass each other: from the spindles outward they stand in the order of the
 * least positions of their ranges, then of the greatest, then as the shop lists them. With the extension on, the stop of each
 * hand that reaches furthest (of several the outermost) can be set beyond its range, so far as the extension is long.
 */
export interface SetUp {
  /** Unique in the job: 'face-borer-C', lettered as the set-ups of a machine are run once that is known. */
  readonly id: string;
  readonly machine: VerticalHead | HorizontalHead | LineDrill | CupBorer;
  /** Vertical: fence to first spindle. Line drill: fence to each head, front to rear. Cup: fence to spindle. Horizontal: empty. */
  readonly fence: readonly Micrometres[];
  /** Horizontal head: spindle centres over the table; otherwise null. */
  readonly height: Micrometres | null;
  readonly stops: readonly SetStop[];
  readonly extension: boolean;
  /** Where the depth stop ends the travel: of a set-up that bores through, beyond the thickness. */
  readonly depth: Micrometres;
  /**
   * Thickness of the panels that the depth stop is set for, where the bits come from above: the head stops at a level over the
   * table, so another thickness would be bored to another depth. null where any thickness will do.
   */
  readonly thickness: Micrometres | null;
  /** True where the depth stop lets the bit come out on the other side. */
  readonly through: boolean;
  readonly runs: readonly Run[];
}

/** A stop as the shop calls it, set and engaged for this set-up. */
export interface SetStop {
  readonly name: string;
  readonly side: 'left' | 'right';
  readonly position: Micrometres;
}

/** Which spindle carries which bit. */
export interface LoadedSpindle {
  readonly head: number;
  readonly spindle: number;
  readonly diameter: Micrometres;
}

/** One panel on the machine, step by step. */
export interface Run {
  readonly carcass: string;
  readonly panel: string;
  /** How many equal panels are bored so, one after the other. */
  readonly pieces: number;
  readonly steps: readonly Step[];
}

/** One stroke with the panel lying in one way. */
export interface Step {
  /** Face on the table. */
  readonly down: 'inside' | 'outside';
  /**
   * Edge against the fence (against the squaring stop on a horizontal head). 'back' breaks the reference; an end only where the
   * panel lies turned by a quarter, for bores in a line along it.
   */
  readonly edge: EdgeName;
  /** What is at the stop, or pressed against a horizontal head: an end; the front edge of a panel that lies turned by a quarter. */
  readonly end: EdgeName;
  readonly stop: string;
  /** Index move: how far the panel is moved along X from contact with the stop; to the right positive. Line drills only. */
  readonly moved: Micrometres;
  readonly spindles: readonly LoadedSpindle[];
  /** The holes that this stroke is claimed to make, in panel coordinates. The replay does not read them. */
  readonly holes: readonly PlannedHole[];
}

export interface PlannedHole {
  /** Id of the bore in the bore map. */
  readonly bore: string;
  readonly face: Surface;
  readonly u: Micrometres;
  readonly v: Micrometres;
  readonly diameter: Micrometres;
  readonly depth: Micrometres;
  readonly through: boolean;
}

/** A blank as it comes to the machine: finished size and handedness of its frame in the carcass. */
export interface Blank {
  readonly length: Micrometres;
  readonly width: Micrometres;
  readonly thickness: Micrometres;
  readonly hand: Handedness;
}
