import type { Micrometres } from '../length/units.js';
import { combined } from './combined.js';
import { isLess, sharedPattern, type Pattern, type PatternTask } from './pattern.js';

/** How many pitches a rear rail may stand in front of its rearmost place so as to meet a load. */
const FORWARD = 2;
/** The most spindles behind its first over which a rail's own pattern is tried. */
const WIDEST = 6;

/** Where rails have to meet a load; all in pitches. */
export interface RailTask {
  /** Spindles over a rail behind the first one. */
  readonly span: number;
  /** For each depth that has rails, where the rear one may stand: pitches from the front, best first. */
  readonly rears: readonly (readonly number[])[];
}

/** Spindles over a rail behind the first one. */
export const railSpan = (width: Micrometres, first: Micrometres, pitch: Micrometres): number =>
  Math.max(0, Math.floor((width - first) / pitch));

/** Where a rear rail may stand in a depth, in pitches from the front, rearmost first; empty where two rails do not fit. */
export function rearsOfRail(clear: Micrometres, width: Micrometres, pitch: Micrometres): readonly number[] {
  const furthest = Math.floor((clear - width) / pitch);
  return Array.from({ length: FORWARD + 1 }, (_, back) => furthest - back).filter((rear) => rear * pitch >= width);
}

/** The first of these places at which a rear rail gets the very bores of a front one; null where there is none. */
export function rearOnLoad(load: readonly number[], rears: readonly number[], span: number): number | null {
  const places = Array.from({ length: span + 1 }, (_, k) => k);
  return rears.find((rear) => places.every((k) => load.includes(k) === load.includes(rear + k))) ?? null;
}

/**
 * The best load under which rear rails get the bores of front ones, every pattern of a rail and every place of the rear rails
 * tried. Of equal loads that with the rear rails farther back.
 * @returns null where there are no rails, or no load serves them with all the rooms.
 */
export function patternWithRails(task: PatternTask, { span, rears }: RailTask): Pattern | null {
  if (rears.length === 0 || rears.some((places) => places.length === 0)) return null;
  let best: Pattern | null = null;
  for (const chosen of combined(rears)) {
    for (const rail of railPatterns(Math.min(span, WIDEST))) {
      const pinned = pinnedBy(rail, [0, ...chosen], task.pinned);
      const found = pinned && sharedPattern({ ...task, pinned });
      if (found && isLess(found.cost, best?.cost)) best = found;
    }
  }
  return best;
}

/** Every set of the spindles over a rail that has the first one. */
function railPatterns(span: number): readonly (readonly boolean[])[] {
  return Array.from({ length: 2 ** span }, (_, bits) =>
    Array.from({ length: span + 1 }, (_, k) => k === 0 || Math.floor(bits / 2 ** (k - 1)) % 2 === 1),
  );
}

/** The pattern at each of these places, beside what is pinned before; null where two of them disagree. */
function pinnedBy(
  rail: readonly boolean[],
  rears: readonly number[],
  before: PatternTask['pinned'],
): ReadonlyMap<number, boolean> | null {
  const pinned = new Map(before);
  for (const rear of rears) {
    for (const [k, there] of rail.entries()) {
      if ((pinned.get(rear + k) ?? there) !== there) return null;
      pinned.set(rear + k, there);
    }
  }
  return pinned;
}
