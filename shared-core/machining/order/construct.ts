import { assign } from './assignment.js';
import type { RoundTrip } from './round-trip.js';

/**
 * Always go on to what costs least of all that may come next, beginning with `first` (or freely, where 0). Ties go to
 * the smallest index. Null where `first` may not be first. Since it obeys the order asked for, it never meets an arc that
 * this order rules out.
 */
export function nearestNext(trip: RoundTrip, first: number): Int32Array | null {
  const { size, cost, precedence } = trip;
  if (first > 0 && (precedence?.earlier[first]?.length ?? 0) > 0) return null;
  const waiting = Int32Array.from({ length: size }, (_, node) => precedence?.earlier[node]?.length ?? 0);
  const done = new Uint8Array(size);
  const route = new Int32Array(size);
  for (let p = 1; p < size; p += 1) {
    const row = route[p - 1]! * size;
    let next = p === 1 && first > 0 ? first : -1;
    if (next < 0) {
      for (let node = 1; node < size; node += 1) {
        if (done[node] === 1 || waiting[node]! > 0) continue;
        if (next < 0 || cost[row + node]! < cost[row + next]!) next = node;
      }
    }
    route[p] = next;
    done[next] = 1;
    if (precedence !== null) {
      for (let node = 1; node < size; node += 1) if (precedence.before[next * size + node] === 1) waiting[node]! -= 1;
    }
  }
  return route;
}

/**
 * Start from the best assignment and patch its circles together two at a time, each time where the join costs least
 * (Karp 1979). Only for a free order: a join looks at no precedence. Null where there is none.
 */
export function patchedCircles(trip: RoundTrip): Int32Array | null {
  const { size, cost, precedence } = trip;
  if (precedence !== null) return null;
  const assignment = assign(size, cost);
  if (assignment === null) return null;
  const next = Int32Array.from(assignment.columnOf);
  const circle = new Int32Array(size).fill(-1);
  const sizes: number[] = [];
  for (let start = 0; start < size; start += 1) {
    if (circle[start]! >= 0) continue;
    let length = 0;
    for (let node = start; circle[node]! < 0; node = next[node]!) {
      circle[node] = sizes.length;
      length += 1;
    }
    sizes.push(length);
  }
  for (let left = sizes.length; left > 1; left -= 1) {
    // The largest circle takes in the one that joins it most cheaply.
    let largest = 0;
    for (let c = 1; c < sizes.length; c += 1) if (sizes[c]! > sizes[largest]!) largest = c;
    let from = -1;
    let to = -1;
    let least = Infinity;
    for (let i = 0; i < size; i += 1) {
      if (circle[i] !== largest) continue;
      for (let j = 0; j < size; j += 1) {
        if (circle[j] === largest) continue;
        const extra =
          cost[i * size + next[j]!]! +
          cost[j * size + next[i]!]! -
          cost[i * size + next[i]!]! -
          cost[j * size + next[j]!]!;
        if (from < 0 || extra < least) {
          least = extra;
          from = i;
          to = j;
        }
      }
    }
    const gone = circle[to]!;
    const after = next[from]!;
    next[from] = next[to]!;
    next[to] = after;
    for (let node = 0; node < size; node += 1) if (circle[node] === gone) circle[node] = largest;
    sizes[largest]! += sizes[gone]!;
    sizes[gone] = 0;
  }
  const route = new Int32Array(size);
  for (let p = 1; p < size; p += 1) route[p] = next[route[p - 1]!]!;
  return route;
}
