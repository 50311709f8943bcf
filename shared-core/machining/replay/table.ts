import type { Blank, LoadedSpindle, SetStop, SetUp, Step } from '../set-up.js';
import type { Side } from './solid.js';
import type { Stray } from './stray.js';
import { dot, type Vector } from './vector.js';

/**
 * The machine as it stands, in the table frame: X to the operator's right, Y away from him, Z up from the table. The fence,
 * or the plate of a horizontal head, is the plane Y = 0.
 */

const RIGHT: Vector = [1, 0, 0];
const AWAY: Vector = [0, 1, 0];
const UP: Vector = [0, 0, 1];
const DOWN: Vector = [0, 0, -1];
const LEFT: Vector = [-1, 0, 0];
const TOWARD_OPERATOR: Vector = [0, -1, 0];

/** A side of the panel pushed against a plane of the machine. */
export interface Contact {
  readonly side: Side;
  /** Which way the panel is pushed, and so which way that side then looks. */
  readonly push: Vector;
  /** How far along `push` the plane stands. */
  readonly at: number;
  /** The end is stopped where it meets the edge; or its whole width is pressed on, and the corner that stands out touches. */
  readonly touches: 'all' | 'at-the-edge' | 'where-it-stands-out';
}

/** What the parts of a machine that is set up are called among the strays. */
export interface SettingNames {
  readonly stop: string;
  readonly height: string;
  readonly heads: readonly string[];
}

/** The names of the parts that one stop and one set-up bring into play. */
export const settingNames = (setUp: SetUp, stop: SetStop): SettingNames => ({
  stop: `${setUp.id} stop ${stop.name}`,
  height: `${setUp.id} height`,
  heads: setUp.fence.map((_, head) => `${setUp.id} fence ${head}`),
});

/** A loaded spindle, and what the wander of its bit is called among the strays. */
export interface Spindle extends LoadedSpindle {
  readonly across: string;
  readonly along: string;
}

/** A bit at the bottom of its stroke. */
export interface Bit {
  readonly tip: Vector;
  readonly direction: Vector;
}

/** A cup borer's type says neither: its door lies face down with the edge on a far fence, and the bit comes from above. */
const fenceSide = (machine: SetUp['machine']): Vector =>
  machine.kind === 'cup' || (machine.kind !== 'horizontal' && machine.fence === 'far') ? AWAY : TOWARD_OPERATOR;

const boringDirection = (machine: SetUp['machine']): Vector => {
  if (machine.kind === 'horizontal') return TOWARD_OPERATOR;
  return machine.kind !== 'cup' && machine.from === 'below' ? UP : DOWN;
};

/** Which way from the spindles a stop stands. */
export const stopSide = (stop: SetStop): Vector => (stop.side === 'left' ? LEFT : RIGHT);

/** How far out a stop's face stands from X = 0, on its own side, when it is set to its position. */
export function stopFace(setUp: SetUp, stop: SetStop): number {
  const { machine } = setUp;
  const lastSpindle =
    machine.kind === 'line' || machine.kind === 'horizontal' ? (machine.spindles - 1) * machine.pitch : 0;
  return stop.side === 'left' ? stop.position : lastSpindle + stop.position;
}

/** The three contacts that fix a panel on the table, in the order in which they are made. */
export function contacts(
  setUp: SetUp,
  step: Step,
  stop: SetStop,
  names: SettingNames,
  stray: Stray,
): readonly [Contact, Contact, Contact] {
  const down: Contact = { side: step.down, push: DOWN, at: 0, touches: 'all' };
  const stopAt = stopFace(setUp, stop) + stray('stop', names.stop);
  const { end } = step;
  if (setUp.machine.kind === 'horizontal') {
    return [
      down,
      { side: step.edge, push: stopSide(stop), at: stopAt, touches: 'all' },
      { side: end, push: AWAY, at: 0, touches: 'where-it-stands-out' },
    ];
  }
  return [
    down,
    { side: step.edge, push: fenceSide(setUp.machine), at: 0, touches: 'all' },
    { side: end, push: stopSide(stop), at: stopAt, touches: 'at-the-edge' },
  ];
}

/**
 * A point of a spindle's centre line: on the table under it, or on the plate of a horizontal head.
 * @param set Fence to the spindle's head; on a horizontal head its height over the table.
 */
function centreLine({ machine }: SetUp, spindle: number, set: number): Vector {
  const away = dot(fenceSide(machine), AWAY);
  switch (machine.kind) {
    case 'vertical':
      return [0, -away * (set + spindle * machine.pitch), 0];
    case 'line':
      return [spindle * machine.pitch, -away * set, 0];
    case 'horizontal':
      return [spindle * machine.pitch, 0, set];
    case 'cup':
      return [0, -away * set, 0];
  }
}

/** A spindle of a machine that is set up, loaded or not, and where its centre line meets the table or the plate. */
export interface StandingSpindle {
  readonly head: number;
  readonly spindle: number;
  readonly at: Vector;
}

/** All spindles of the heads that are set, head by head. */
export function standingSpindles(setUp: SetUp): StandingSpindle[] {
  const { machine } = setUp;
  const count = machine.kind === 'cup' ? 1 : machine.spindles;
  const heads = machine.kind === 'horizontal' ? [setUp.height ?? 0] : setUp.fence;
  return heads.flatMap((set, head) =>
    Array.from({ length: count }, (_, spindle) => ({ head, spindle, at: centreLine(setUp, spindle, set) })),
  );
}

/**
 * A loaded spindle at the bottom of its stroke. A depth stop limits the travel of the head, so from above it leaves the bit
 * at a level over the table that is right for the thickness it is set for; where the set-up names none, for the blank as drawn.
 */
export function bitDown(setUp: SetUp, blank: Blank, loaded: Spindle, names: SettingNames, stray: Stray): Bit {
  const { machine, depth } = setUp;
  const direction = boringDirection(machine);
  const set =
    machine.kind === 'horizontal'
      ? (setUp.height ?? 0) + stray('stop', names.height)
      : (setUp.fence[loaded.head] ?? 0) + stray('stop', names.heads[loaded.head] ?? '');
  const [x, y, z] = centreLine(setUp, loaded.spindle, set);
  const along = x + stray('drill', loaded.along);
  const across = stray('drill', loaded.across);
  if (machine.kind === 'horizontal') return { tip: [along, -depth, z + across], direction };
  return {
    tip: [along, y + across, direction === UP ? depth : (setUp.thickness ?? blank.thickness) - depth],
    direction,
  };
}
