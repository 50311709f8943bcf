import type { RoundTrip } from './round-trip.js';

/** More sets than this and the table is not built: 2^17 sets over 17 nodes take about 18 MB. */
const MOST_SETS = 1 << 17;
const MOST_NODES = 24;

/** For sets of nodes done (node i is bit i - 1): what may come next, and what finishing the round trip costs at least. */
export interface Completions {
  /** The nodes but home. */
  readonly nodes: number;
  /** Whether a node that is not in the set may come next after it. */
  mayCome(set: number, node: number): boolean;
  /** Least cost of finishing once `set` is done and the machine stands at `last`, which is in it. */
  rest(set: number, last: number): number;
}

/**
 * The table of dynamic programming over sets (Bellman 1962; Held and Karp 1962), filled from the whole set backwards. Only sets
 * that obey the order asked for are kept, so a strongly ordered problem may be larger than a free one. Null where the table
 * would be too large, which is decided before any of it is filled.
 */
export function completions(trip: RoundTrip): Completions | null {
  const { size, cost } = trip;
  const nodes = size - 1;
  if (nodes > MOST_NODES) return null;
  const needs = neededSets(trip);
  const sets = feasibleSets(nodes, needs);
  if (sets === null) return null;
  const { rank, count } = sets;
  const mayCome = (set: number, node: number): boolean =>
    (set & (1 << (node - 1))) === 0 && (needs[node - 1]! & ~set) === 0;

  const all = 2 ** nodes - 1;
  const best = new Float64Array(count * nodes).fill(Infinity);
  for (let last = 0; last < nodes; last += 1) best[rank[all]! * nodes + last] = cost[(last + 1) * size]!;
  for (let set = all - 1; set > 0; set -= 1) {
    const row = rank[set]!;
    if (row < 0) continue;
    for (let last = 0; last < nodes; last += 1) {
      if ((set & (1 << last)) === 0) continue;
      const from = (last + 1) * size + 1;
      let least = Infinity;
      for (let next = 0; next < nodes; next += 1) {
        const bit = 1 << next;
        if ((set & bit) !== 0 || (needs[next]! & ~set) !== 0) continue;
        const total = cost[from + next]! + best[rank[set | bit]! * nodes + next]!;
        if (total < least) least = total;
      }
      best[row * nodes + last] = least;
    }
  }
  return { nodes, mayCome, rest: (set, last) => best[rank[set]! * nodes + last - 1]! };
}

/** For each node but home, the nodes that must be done first, as a set of bits (node i is bit i - 1). */
function neededSets(trip: RoundTrip): Int32Array {
  const needs = new Int32Array(trip.size - 1);
  for (let j = 1; j < trip.size; j += 1) {
    for (const i of trip.precedence?.earlier[j] ?? []) needs[j - 1]! |= 1 << (i - 1);
  }
  return needs;
}

/** Numbers the sets that hold, with each node, all that must come before it. Null where they are too many. */
function feasibleSets(nodes: number, needs: Int32Array): { rank: Int32Array; count: number } | null {
  const total = 2 ** nodes;
  if (total > MOST_SETS && needs.every((need) => need === 0)) return null;
  const rank = new Int32Array(total).fill(-1);
  const needed = new Int32Array(total);
  let count = 0;
  for (let set = 0; set < total; set += 1) {
    const low = 31 - Math.clz32(set & -set);
    if (set > 0) needed[set] = needed[set & (set - 1)]! | needs[low]!;
    if ((needed[set]! & ~set) !== 0) continue;
    rank[set] = count;
    count += 1;
    if (count > MOST_SETS) return null;
  }
  return { rank, count };
}
