import { beyond } from '../carcass/footprint.js';
import type { Interval } from '../carcass/interval.js';
import type { Spot } from '../carcass/turn.js';
import type { Micrometres } from '../length/units.js';

/** A place for a loose shelf behind a front that is partly closed for good, as it is clear. */
export interface ShelfRoom {
  /** From upright to upright, x from the left one. */
  readonly width: Micrometres;
  /** From what closes the front to the back. */
  readonly y: Interval;
  /** The outer face of what closes the front, and the front edge of the uprights. */
  readonly outer: Micrometres;
  readonly edge: Micrometres;
  readonly height: Micrometres;
  /** What of the front is open. */
  readonly open: Interval;
}

export interface ShelfSize {
  readonly length: Micrometres;
  readonly width: Micrometres;
  readonly thickness: Micrometres;
}

/** A shelf on its way out: turned so far about an upright line, degrees, its rear left corner at a place seen from above. */
export interface Turned extends Spot {
  readonly yaw: number;
}

/** How a shelf comes out; it goes in the other way round. */
export type WayOut =
  /** One end is lifted by so many degrees, and it comes straight to the front. */
  | { readonly how: 'end-up'; readonly pitch: number }
  /**
   * Its front edge is lifted by so many degrees; it is turned with its right end to the front, or as in a mirror with its left one,
   * and from the last place it slides out endways.
   */
  | { readonly how: 'edge-up'; readonly roll: number; readonly mirrored: boolean; readonly steps: readonly Turned[] };

const QUARTER = 90;
const STEP = 0.5;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * A way for a loose shelf out of its place, flat or lifted at one edge or one end; null where none of these is one. Turned in the room
 * its size must pass at every angle; each step is checked against the one before, as what is clear at both.
 */
export function wayOut(shelf: ShelfSize, room: ShelfRoom): WayOut | null {
  const { length, width, thickness } = shelf;
  const deep = room.y.to - room.y.from;
  if (length > room.width || width > deep) return null;
  const { open, height } = room;
  const opening = open.to - open.from;
  // Laid down again within the room, it is at its longest where its diagonal is level.
  const pitch = Math.hypot(length, thickness) > room.width ? 0 : lifted(length, thickness, height);
  if (acrossOf(length, thickness, pitch) <= opening) return { how: 'end-up', pitch };
  const roll = Math.hypot(width, thickness) > deep ? 0 : lifted(width, thickness, height);
  const rod = { length, across: acrossOf(width, thickness, roll) };
  for (const mirrored of [false, true]) {
    const steps = turnedOut(rod, mirrored ? mirrorOf(room) : room);
    if (steps !== null) return { how: 'edge-up', roll, mirrored, steps };
  }
  return null;
}

/** What a board that is lifted so far covers seen from above, square to the edge that it is lifted about. */
const acrossOf = (size: number, thickness: number, degrees: number): number =>
  size * Math.cos(radians(degrees)) + thickness * Math.sin(radians(degrees));

/** How far it can be lifted under a height, all the way; in steps of half a degree. */
function lifted(size: number, thickness: number, height: number): number {
  let degrees = 0;
  const high = (at: number): number => size * Math.sin(radians(at)) + thickness * Math.cos(radians(at));
  while (degrees < QUARTER && high(degrees + STEP) <= height) degrees += STEP;
  return degrees;
}

function mirrorOf(room: ShelfRoom): ShelfRoom {
  const { width, open } = room;
  return { ...room, open: { from: width - open.to, to: width - open.from } };
}

interface Rod {
  readonly length: number;
  readonly across: number;
}

/** x times the first and y times the second and the third together are not negative. */
type Bound = readonly [x: number, y: number, rest: number];

/** Where the rod may be: wholly in the room; its front corner out; its right end in the opening; or that out, so that it slides on. */
type Phase = 0 | 1 | 2 | 3;
const PHASES: readonly Phase[] = [0, 1, 2, 3];
const LAST: Phase = 3;

/** The steps from where it lies along the back to where it slides out to the right, or null. */
function turnedOut(rod: Rod, room: ShelfRoom): readonly Turned[] | null {
  const yaws = Array.from({ length: QUARTER / STEP + 1 }, (_, i) => i * STEP);
  let reached: readonly Steps[] = PHASES.map((phase) => (phase === 0 ? [] : null));
  let before = PHASES.map((phase) => boundsAt(rod, room, 0, phase));
  for (const yaw of yaws) {
    const bounds = PHASES.map((phase) => boundsAt(rod, room, yaw, phase));
    const now = PHASES.map((phase) => onward(reached[phase]!, room, yaw, [...before[phase]!, ...bounds[phase]!]));
    // At one angle it may also go from one phase to the next.
    const pass = (from: number, to: number): void => {
      now[to] ??= onward(now[from]!, room, yaw, [...bounds[from]!, ...bounds[to]!]);
    };
    for (const phase of PHASES.slice(1)) pass(phase - 1, phase);
    if (now[LAST] !== null) return now[LAST]!;
    reached = now;
    before = bounds;
  }
  return null;
}

type Steps = readonly Turned[] | null;

/** Steps and one more, to a place within the bounds; null where there is none. */
function onward(steps: Steps, { width, y }: ShelfRoom, yaw: number, bounds: readonly Bound[]): Steps {
  if (steps === null) return null;
  let shape: readonly Spot[] = [
    { x: 0, y: y.from },
    { x: width, y: y.from },
    { x: width, y: y.to },
    { x: 0, y: y.to },
  ];
  for (const [a, b, rest] of bounds) {
    shape = beyond(shape, (spot) => a * spot.x + b * spot.y + rest);
    if (shape.length === 0) return null;
  }
  const mean = (axis: 'x' | 'y'): number => shape.reduce((sum, spot) => sum + spot[axis], 0) / shape.length;
  return [...steps, { x: mean('x'), y: mean('y'), yaw }];
}

/**
 * Of the place of its rear left corner, in one phase: the left end right of the upright there; then all of it in the room, or the
 * inner edge of what closes the front before it; the right end left of what stands there, or the front edge of that behind it.
 */
function boundsAt({ length, across }: Rod, room: ShelfRoom, yaw: number, phase: Phase): readonly Bound[] {
  const [cos, sin] = [Math.cos(radians(yaw)), Math.sin(radians(yaw))];
  const { width, y, open, outer, edge } = room;
  const rightOfUpright: Bound = [1, 0, -across * sin];
  const leftOfUpright: Bound = [-1, 0, width - length * cos];
  const behindFront: Bound = [sin, cos, -across - open.from * sin - y.from * cos];
  if (phase === 0) return [rightOfUpright, leftOfUpright, [0, 1, -across * cos - length * sin - y.from]];
  const isClosedBeside = open.to < width;
  const out = isClosedBeside ? outer : edge;
  // Its right end before the inner edge of what closes the front there; that of an upright it cannot meet.
  const beforeFront: Bound = [-cos, sin, open.to * cos - y.from * sin - length];
  if (phase === 1)
    return isClosedBeside
      ? [rightOfUpright, leftOfUpright, behindFront, beforeFront, [0, 1, -length * sin - y.from]]
      : [rightOfUpright, leftOfUpright, behindFront, [0, 1, -length * sin - edge]];
  if (phase === 2) return [rightOfUpright, behindFront, [-1, 0, open.to - length * cos], [0, 1, -length * sin - out]];
  // Clear of all else it is as it comes from the phase before.
  return [[-sin, -cos, open.to * sin + out * cos]];
}
