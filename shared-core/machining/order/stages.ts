import { completions, type Completions } from './held-karp.js';
import { closePrecedence } from './precedence.js';
import type { RoundTrip } from './round-trip.js';

type Pairs = readonly (readonly [number, number])[];

/**
 * What finishing costs at least where all of one stage (the heads of a body, say) comes before all of the other: two tables, each
 * over the sets of one stage, in place of one over all. Null where a table would be too large. No pair may ask for the reverse.
 * @param first the nodes of the trip that come first; `second` the others, without home
 * @param before pairs of nodes
 */
export function completionsInStages(
  trip: RoundTrip,
  first: readonly number[],
  second: readonly number[],
  before: Pairs,
): Completions | null {
  const isFirst = new Set(first);
  const { size, cost } = trip;
  const later = partOf(trip, second, before, (node) => cost[node * size]!);
  const then = later && completions(later);
  if (!then) return null;
  const local = new Map([...first.entries(), ...second.entries()].map(([index, node]) => [node, index + 1]));
  const place = (node: number): number => local.get(node)!;
  const earlier = partOf(trip, first, before, (node) =>
    second.reduce((least, next) => {
      if (!then.mayCome(0, place(next))) return least;
      return Math.min(least, cost[node * size + next]! + then.rest(1 << (place(next) - 1), place(next)));
    }, Infinity),
  );
  const now = earlier && completions(earlier);
  if (!now) return null;
  const setOf = (set: number, nodes: readonly number[]): number =>
    nodes.reduce((own, node, index) => ((set >> (node - 1)) & 1 ? own | (1 << index) : own), 0);
  const allFirst = 2 ** first.length - 1;
  return {
    nodes: size - 1,
    mayCome: (set, node) =>
      isFirst.has(node)
        ? now.mayCome(setOf(set, first), place(node))
        : setOf(set, first) === allFirst && then.mayCome(setOf(set, second), place(node)),
    rest: (set, last) =>
      isFirst.has(last) ? now.rest(setOf(set, first), place(last)) : then.rest(setOf(set, second), place(last)),
  };
}

/** The trip over some of the nodes, with what it costs to go home from each. */
function partOf(
  trip: RoundTrip,
  nodes: readonly number[],
  before: Pairs,
  home: (node: number) => number,
): RoundTrip | null {
  const size = nodes.length + 1;
  const cost = new Float64Array(size * size).fill(Infinity);
  for (const [i, from] of nodes.entries()) {
    cost[i + 1] = trip.cost[from]!;
    cost[(i + 1) * size] = home(from);
    for (const [j, to] of nodes.entries()) cost[(i + 1) * size + j + 1] = trip.cost[from * trip.size + to]!;
  }
  const place = new Map(nodes.map((node, index) => [node, index + 1]));
  const pairs = before.flatMap(([i, j]): [number, number][] => {
    const [a, b] = [place.get(i), place.get(j)];
    return a === undefined || b === undefined ? [] : [[a, b]];
  });
  const precedence = pairs.length === 0 ? null : closePrecedence(size, pairs);
  return pairs.length > 0 && precedence === null ? null : { size, cost, precedence };
}
