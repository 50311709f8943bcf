import { iterate } from './improve.js';
import { closePrecedence } from './precedence.js';
import type { RoundTrip } from './round-trip.js';

/** What a sequence too long for one table costs: to come to a first set-up, and from one to another. */
export interface LongSequence {
  readonly size: number;
  start(first: number): number;
  cost(from: number, to: number): number;
  /** Pairs [i, j]: i comes before j. */
  readonly before: readonly (readonly [number, number])[];
}

/** Of more set-ups than this no table of all changeovers is made. */
export const LARGEST_TABLE = 2000;
/** Set-ups whose order is improved at a time, and how often at each place. */
const WINDOW = 400;
const KICKS = 4000;

/**
 * An order of more set-ups than a table of all their changeovers could hold: always on to what costs least, then improved
 * piece by piece, each piece between what stands before it and after it, the pieces overlapping by half. The bound is what it
 * costs at least to come to each set-up. Null where the pairs run in a circle. Time grows with the square of the number.
 */
export function orderInWindows(sequence: LongSequence): { order: number[]; cost: number; lowerBound: number } | null {
  const order = nearest(sequence);
  if (order === null) return null;
  for (let at = 0; at < order.length; at += WINDOW / 2) improveWindow(sequence, order, at);
  let cost = 0;
  for (let p = 0; p < order.length; p += 1) cost += arc(sequence, order[p - 1], order[p]!);
  return { order, cost, lowerBound: leastEntries(sequence) };
}

/** From a set-up, or from the machine as it was left, to another. */
const arc = (sequence: LongSequence, from: number | undefined, to: number): number =>
  from === undefined ? sequence.start(to) : sequence.cost(from, to);

/** Always the cheapest of those that may come next; ties go to the smallest index. */
function nearest(sequence: LongSequence): number[] | null {
  const { size, before } = sequence;
  const waiting = new Int32Array(size);
  const released: number[][] = Array.from({ length: size }, () => []);
  for (const [first, later] of before) {
    waiting[later]! += 1;
    released[first]!.push(later);
  }
  const done = new Uint8Array(size);
  const order: number[] = [];
  while (order.length < size) {
    let next = -1;
    let least = Infinity;
    for (let node = 0; node < size; node += 1) {
      if (done[node] === 1 || waiting[node]! > 0) continue;
      const cost = arc(sequence, order.at(-1), node);
      if (cost >= least) continue;
      next = node;
      least = cost;
    }
    if (next < 0) return null;
    order.push(next);
    done[next] = 1;
    for (const later of released[next]!) waiting[later]! -= 1;
  }
  return order;
}

/** Puts the set-ups from a place on in a better order. What stands outside stays, so no pair across its ends is broken. */
function improveWindow(sequence: LongSequence, order: number[], at: number): void {
  const nodes = order.slice(at, at + WINDOW);
  const after = order[at + nodes.length];
  const size = nodes.length + 1;
  // Home is what stands on both sides of the window.
  const cost = new Float64Array(size * size).fill(Infinity);
  for (const [i, to] of nodes.entries()) {
    cost[i + 1] = arc(sequence, order[at - 1], to);
    cost[(i + 1) * size] = after === undefined ? 0 : sequence.cost(to, after);
    for (const [j, next] of nodes.entries()) if (i !== j) cost[(i + 1) * size + j + 1] = sequence.cost(to, next);
  }
  const place = new Map(nodes.map((node, index) => [node, index + 1]));
  const pairs = sequence.before.flatMap(([first, later]): [number, number][] => {
    const [i, j] = [place.get(first), place.get(later)];
    return i === undefined || j === undefined ? [] : [[i, j]];
  });
  const precedence = pairs.length === 0 ? null : closePrecedence(size, pairs);
  const trip: RoundTrip = { size, cost, precedence };
  const { route } = iterate(
    trip,
    Int32Array.from({ length: size }, (_, node) => node),
    KICKS,
    0,
  );
  for (let p = 1; p < size; p += 1) order[at + p - 1] = nodes[route[p]! - 1]!;
}

/** Every set-up is come to once, from one of the others or from the machine as it was left. */
export function leastEntries(sequence: LongSequence): number {
  let sum = 0;
  for (let to = 0; to < sequence.size; to += 1) {
    let least = sequence.start(to);
    for (let from = 0; from < sequence.size && least > 0; from += 1) {
      if (from !== to) least = Math.min(least, sequence.cost(from, to));
    }
    sum += least;
  }
  return sum;
}
