import { indicesWhere, type Gauge, type Reading } from './spread.js';

/** How far the bores of the face of a joint are from those of the end, tie by tie, in micrometres. */
export interface Misses {
  /** Where each tie stands along the joint. */
  readonly stations: readonly number[];
  readonly along: readonly number[];
  readonly across: readonly number[];
}

/** The play that the dowels of a joint need for it to go together. */
export const PLAY: Gauge<Misses> = { isEitherWay: true, greatest: neededPlay, readings, changed };

/**
 * The least play that will do. Along the joint the panel can be slid, which leaves half of what the misses differ by. Across
 * it, it can be slid and turned, which leaves half of the height that the misses take up about the best straight line through
 * their stations: the greatest height of their convex hull.
 */
function neededPlay({ stations, along, across }: Misses): number {
  if (along.length === 0) return 0;
  return Math.max((Math.max(...along) - Math.min(...along)) / 2, hullHeight(stations, across) / 2);
}

/**
 * The same as readings of which each depends on two or three ties alone, so that how each spreads can be told: half the
 * difference of any two misses along the joint, and half of what any three across it depart from a straight line. The
 * greatest of them is the play needed (the alternation theorem of Chebyshev for a straight line).
 */
function* readings({ stations }: Misses): Generator<Reading<Misses>> {
  const order = [...stations.keys()].sort((i, j) => stations[i]! - stations[j]!);
  for (const [i, a] of order.entries()) {
    for (const b of order.slice(0, i)) {
      yield { parts: [a, b], read: ({ along }) => (along[a]! - along[b]!) / 2 };
      // No turn brings two ties together that stand in one place.
      if (stations[a] === stations[b]) yield { parts: [a, b], read: ({ across }) => (across[a]! - across[b]!) / 2 };
    }
  }
  for (const [i, a] of order.entries()) {
    for (let k = i + 2; k < order.length; k += 1) {
      const c = order[k]!;
      for (let j = i + 1; j < k; j += 1) {
        const b = order[j]!;
        yield { parts: [a, b, c], read: (misses) => bend(misses, a, b, c) / 2 };
      }
    }
  }
}

/** How far the middle one of three misses is off the straight line through the outer ones. */
function bend({ stations, across }: Misses, a: number, b: number, c: number): number {
  const length = stations[c]! - stations[a]!;
  const part = length === 0 ? 0 : (stations[b]! - stations[a]!) / length;
  return across[b]! - across[a]! - part * (across[c]! - across[a]!);
}

function changed(a: Misses, b: Misses): readonly number[] {
  return indicesWhere(
    a.stations.length,
    (i) => a.stations[i] !== b.stations[i] || a.along[i] !== b.along[i] || a.across[i] !== b.across[i],
  );
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The greatest height of the convex hull of points, which it has over one of its corners. */
function hullHeight(xs: readonly number[], ys: readonly number[]): number {
  const points = xs.map((x, i): Point => ({ x, y: ys[i]! })).sort((a, b) => a.x - b.x || a.y - b.y);
  const [below, above] = [chain(points, 1), chain(points, -1)];
  return Math.max(
    0,
    ...above.map(({ x, y }) => y - heightAt(below, x)),
    ...below.map(({ x, y }) => heightAt(above, x) - y),
  );
}

/** The lower side of the convex hull (`side` 1) or the upper one (-1), from left to right: A. M. Andrew's monotone chain (1979). */
function chain(points: readonly Point[], side: 1 | -1): readonly Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    while (kept.length >= 2 && side * cross(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
    kept.push(point);
  }
  return kept;
}

function cross(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** Where a chain passes x, which lies between its ends. */
function heightAt(points: readonly Point[], x: number): number {
  const next = points.findIndex((point) => point.x >= x);
  const right = points[next]!;
  const left = points[next - 1];
  if (right.x === x || left === undefined) return right.y;
  return left.y + ((x - left.x) / (right.x - left.x)) * (right.y - left.y);
}
