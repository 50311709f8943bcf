import type { Bore } from '../../boring/model.js';
import type { EdgeName } from '../../job/model.js';
import type { Micrometres } from '../../length/units.js';
import type { CupBorer, Hand, HorizontalHead, LineDrill, VerticalHead } from '../../shop/model.js';
import type { Blank } from '../set-up.js';
import type { Message } from '../../words/message.js';

export type BoringMachine = VerticalHead | HorizontalHead | LineDrill | CupBorer;

/** One spindle of one head. */
export interface SpindlePlace {
  readonly head: number;
  readonly spindle: number;
}

/** A spindle that must carry a bit in a stroke, and the bore that it makes there. */
export interface WantedSpindle extends SpindlePlace {
  readonly bore: Bore;
}

/**
 * The spindles of a machine in one array, head by head. `wanted[i]` is the diameter that must be there, 0 for none;
 * `limit[i]` is the greatest diameter that may be there though nothing is wanted: twice the distance to the wood, since a
 * loaded spindle bores wherever there is wood under it.
 */
export interface Load {
  readonly wanted: readonly Micrometres[];
  readonly limit: readonly Micrometres[];
}

/** One descent of the head. */
export interface PlannedStroke {
  /** Along X from contact with the stop; to the right positive. */
  readonly moved: Micrometres;
  readonly wanted: readonly WantedSpindle[];
}

/**
 * One way to make an operation: how the panel lies, against which hand, and what the spindles do there. All strokes of a way
 * want the same spindles, so that no bit changes between them.
 */
export interface Way {
  readonly down: 'inside' | 'outside';
  /**
   * What lies against the fence, or against the squaring stop: the front edge, or an end of a panel turned by a quarter; the back
   * edge only of a panel with a cut corner.
   */
  readonly edge: EdgeName;
  /** What is at the stop, or pressed against the head: an end, or the front edge of a panel turned by a quarter. */
  readonly end: Exclude<EdgeName, 'back'>;
  /** The hand on which that (on a horizontal head: the front edge) lies, so the hand of the stop. */
  readonly side: Hand;
  /** From the face of the stop to the nearest spindle on its side. */
  readonly position: Micrometres;
  readonly strokes: readonly PlannedStroke[];
  /** What lies along X in contact with the stop: the panel's length, or its width on a horizontal head or turned by a quarter. */
  readonly extent: Micrometres;
  /** What all strokes ask of the spindles. */
  readonly load: Load;
}

/**
 * Bores of one panel that one machine makes in one lay, with the ways to do it, best first. Bores of one operation share
 * the settings that a set-up fixes: fence, height, depth.
 */
export interface Operation {
  readonly carcass: string;
  readonly panel: string;
  readonly blank: Blank;
  readonly machine: BoringMachine;
  readonly fence: readonly Micrometres[];
  readonly height: Micrometres | null;
  readonly depth: Micrometres;
  readonly through: boolean;
  /**
   * The operation that bores the holes which the index pins stand in, where it begins with an index move on pins in the row:
   * it comes first. The holes must have been bored from the same stop: those from the panel's other end stand where its
   * length puts them.
   */
  readonly pinsIn: Operation | null;
  readonly ways: readonly Way[];
}

/** Bores that no way was found for: what is missing, and the parameter of the shop file that would allow it. */
export interface Unreachable {
  readonly panel: string;
  readonly bores: readonly Bore[];
  readonly machine: string | null;
  /** 'fence-offset', 'stops', 'height', 'depth', 'throat' …: the key of the shop file; null where no machine could do it. */
  readonly parameter: string | null;
  /** The length that the parameter would have to allow, where it is one. */
  readonly needed: Micrometres | null;
  /** The fact with its figures, and what to do; whole sentences. */
  readonly reason: Message;
}
