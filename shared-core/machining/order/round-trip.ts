import type { Precedence } from './precedence.js';

/**
 * The one form that every solver in this folder works on: leave home (node 0), visit every other node once, come home.
 *
 * An open sequence of n set-ups is a round trip over n + 1 nodes whose home costs nothing to reach from anywhere; a
 * closed tour is a round trip whose home is set-up 0. `cost[i * size + j]` is what it costs to go from i to j, and
 * Infinity where no solution can go: from a node to itself, and along any arc that an order asked for rules out.
 */
export interface RoundTrip {
  readonly size: number;
  readonly cost: Float64Array;
  readonly precedence: Precedence | null;
}

/** What a whole route costs. `route` is home first, then every other node once; the way home is added. */
export function routeCost(trip: RoundTrip, route: ArrayLike<number>): number {
  const { size, cost } = trip;
  let total = 0;
  for (let p = 0; p < size; p += 1) total += cost[route[p]! * size + route[p + 1 === size ? 0 : p + 1]!]!;
  return size < 2 ? 0 : total;
}
