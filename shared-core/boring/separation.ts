import { gapBetween, type Interval } from '../carcass/interval.js';
import type { Micrometres } from '../length/units.js';
import type { Cylinder } from './axis.js';

/**
 * How far two solids in one panel stand apart. All bores run along t or v, so with few exceptions the distance is
 * √(max(0, √squared - radius)² + gap²), and whether it is less than a wall can be decided in whole numbers.
 * Figures are in half micrometres: the radius of an odd diameter is a whole number of them.
 */
export type Separation =
  | { readonly kind: 'round'; readonly squared: number; readonly radius: number; readonly gap: number }
  | { readonly kind: 'corner'; readonly distance: number };

/** A block with square edges in the panel's frame, such as a groove. */
export interface Block {
  readonly u: Interval;
  readonly v: Interval;
  readonly t: Interval;
}

const round = (squared: number, radius: number, gap: number): Separation => ({ kind: 'round', squared, radius, gap });

/** How far two bores of one panel stand apart. */
export function betweenCylinders(a: Cylinder, b: Cylinder): Separation {
  if (a.along === b.along) {
    const [du, across] = [2 * (a.u - b.u), 2 * (a.across - b.across)];
    return round(du ** 2 + across ** 2, a.diameter + b.diameter, 2 * gapBetween(a.span, b.span));
  }
  const du = 2 * Math.abs(a.u - b.u);
  // How far the axis of each passes beyond the end of the other.
  const pastB = 2 * gapBetween(point(a.across), b.span);
  const pastA = 2 * gapBetween(point(b.across), a.span);
  // Neither axis runs past the other's end: only u parts them. One does: a disc against the straight edge of a rim.
  if (pastA === 0 && pastB === 0) return round(du ** 2, a.diameter + b.diameter, 0);
  if (pastA === 0) return round(Math.max(0, du - b.diameter) ** 2 + pastB ** 2, a.diameter, 0);
  if (pastB === 0) return round(Math.max(0, du - a.diameter) ** 2 + pastA ** 2, b.diameter, 0);
  return {
    kind: 'corner',
    distance: cornerDistance(du, { past: pastB, radius: a.diameter }, { past: pastA, radius: b.diameter }),
  };
}

/** How far a bore stands from a groove of the same panel. */
export function betweenCylinderAndBlock(bore: Cylinder, block: Block): Separation {
  const [across, along] = bore.along === 't' ? [block.v, block.t] : [block.t, block.v];
  const du = 2 * gapBetween(point(bore.u), block.u);
  const da = 2 * gapBetween(point(bore.across), across);
  return round(du ** 2 + da ** 2, bore.diameter, 2 * gapBetween(bore.span, along));
}

/**
 * True where less than `wall` stands between the two, and always where they touch. Exact for all but corners; of a corner
 * less than half a micrometre beyond the wall it is true as well, so an error is on the safe side.
 */
export function isNearerThan(separation: Separation, wall: Micrometres): boolean {
  const least = Math.max(1, 2 * wall);
  if (separation.kind === 'corner') return separation.distance < least + 1;
  const { squared, radius, gap } = separation;
  if (gap >= least) return false;
  if (gap === 0) return squared < (radius + least) ** 2;
  // √squared < radius + √rest, squared twice; the second squares pass 2^53.
  const rest = least ** 2 - gap ** 2;
  const over = squared - radius ** 2 - rest;
  return over < 0 || BigInt(over) ** 2n < 4n * BigInt(radius) ** 2n * BigInt(rest);
}

/** What stands between the two, in whole micrometres, rounded down; 0 where they touch or cut in. For messages only. */
export function wallBetween(separation: Separation): Micrometres {
  if (separation.kind === 'corner') return Math.floor(separation.distance / 2);
  const { squared, radius, gap } = separation;
  return Math.floor(Math.hypot(Math.max(0, Math.sqrt(squared) - radius), gap) / 2);
}

interface Rim {
  /** How far the axis passes beyond the other cylinder's end. */
  readonly past: number;
  readonly radius: number;
}

/** Halvings of the search below: each leaves two thirds, so these leave less than 1e-9 of a radius. */
const STEPS = 52;

/**
 * Distance between two rims that look at each other askew. For a point of rim A that lies `s` toward B the distance to B
 * has a closed form, and it is convex in s because both solids are; so a search by thirds finds its least value.
 */
function cornerDistance(du: number, a: Rim, b: Rim): number {
  const squaredAt = (s: number): number =>
    Math.max(0, Math.hypot(du - s, b.past) - b.radius) ** 2 +
    Math.max(0, a.past - Math.sqrt(a.radius ** 2 - s ** 2)) ** 2;
  let [low, high] = [0, Math.min(a.radius, du)];
  for (let step = 0; step < STEPS; step++) {
    const third = (high - low) / 3;
    if (squaredAt(low + third) <= squaredAt(high - third)) high -= third;
    else low += third;
  }
  return Math.sqrt(squaredAt((low + high) / 2));
}

function point(at: Micrometres): Interval {
  return { from: at, to: at };
}
