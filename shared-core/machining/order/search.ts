import { ascend, fractions, wholeBound, type Bound } from './ascent.js';
import { assign } from './assignment.js';
import { branchAndBound } from './branch-and-bound.js';
import { nearestNext, patchedCircles } from './construct.js';
import { iterate, nearTo } from './improve.js';
import { routeCost, type RoundTrip } from './round-trip.js';

/** What is spent on the search beyond the exact table: a second or two for hundreds, some seconds for a thousand. */
const START_WORK = 1.6e7;
const LEAST_STARTS = 8;
const ROUNDS_TIMES_NODES = 100_000;
const MOST_ROUNDS = 500;
const BRANCH_WORK = 1.8e7;
const MOST_BRANCHES = 12_000;
const LARGEST_BRANCHED = 150;
const LARGEST_PATCHED = 1000;
const KICKS_FOR_UPPER = 1500;
const KICKS_FOR_ROUTE = 150_000;
const KICKS_PER_NODE = 250;

/**
 * A good route and a lower bound for trips of three nodes or more: several constructions improved by segment exchange;
 * the assignment bound raised by priced arborescences; the route improved again under those prices; and branch and bound
 * for what gap is left. `cost` equals `lowerBound` where the route is proven cheapest.
 */
export function search(trip: RoundTrip): { route: Int32Array; cost: number; lowerBound: number } {
  const { size, cost } = trip;
  const assignment = assign(size, cost);
  let lowerBound = assignment?.cost ?? 0;
  let best = firstRoute(trip, lowerBound);
  if (best.cost <= lowerBound) return { ...best, lowerBound };

  const scale = fractions(size, cost);
  const rounds = Math.min(MOST_ROUNDS, Math.ceil(ROUNDS_TIMES_NODES / size));
  const bound = ascend(size, cost, scale, firstPrices(trip, scale, assignment), best.cost, rounds);
  if (bound === null) return { ...best, lowerBound };
  lowerBound = Math.max(lowerBound, wholeBound(bound.scaled, scale));
  if (best.cost <= lowerBound) return { ...best, lowerBound };

  const again = improvePriced(trip, bound, scale, best.route, lowerBound);
  if (again.cost < best.cost) best = again;
  if (best.cost <= lowerBound || size > LARGEST_BRANCHED) return { ...best, lowerBound };
  const branched = branchAndBound(
    trip,
    scale,
    bound,
    best,
    Math.min(MOST_BRANCHES, Math.floor(BRANCH_WORK / (size * size))),
  );
  return { ...branched, lowerBound: Math.max(lowerBound, branched.lowerBound) };
}

/**
 * Prices to begin with: none, or the row prices of the assignment, with which the first bound is at least as good as the
 * assignment's own; whichever bounds better.
 */
function firstPrices(trip: RoundTrip, scale: number, assignment: ReturnType<typeof assign>): Float64Array {
  const { size, cost } = trip;
  const none = new Float64Array(size);
  if (assignment === null) return none;
  const rows = assignment.rowPrice.map((price) => (price === 0 ? 0 : -price * scale));
  const bare = ascend(size, cost, scale, none, Infinity, 0);
  const priced = ascend(size, cost, scale, rows, Infinity, 0);
  return bare !== null && priced !== null && bare.scaled > priced.scaled ? none : rows;
}

/** The best of several constructions, each improved, and the best of them improved further. */
function firstRoute(trip: RoundTrip, enough: number): { route: Int32Array; cost: number } {
  const starts: { route: Int32Array; cost: number }[] = [];
  const add = (route: Int32Array | null): void => {
    if (route !== null) starts.push({ route, cost: routeCost(trip, route) });
  };
  const { size } = trip;
  if (size <= LARGEST_PATCHED) add(patchedCircles(trip));
  const asked = Math.min(size, Math.max(LEAST_STARTS, Math.floor(START_WORK / (size * size))));
  for (let nth = 0; nth < asked; nth += 1) add(nearestNext(trip, Math.floor((nth * size) / asked)));
  starts.sort((a, b) => a.cost - b.cost);
  const near = nearTo(trip);
  const improved = starts.slice(0, 8).map(({ route }) => iterate(trip, route, 0, enough, near));
  improved.sort((a, b) => a.cost - b.cost);
  return iterate(trip, improved[0]!.route, KICKS_FOR_UPPER, enough, near);
}

/**
 * Improve at length on the table with the bound's prices: what leaving and entering each node costs at least is taken
 * off, which changes every round trip by the same sum, and lays bare which arcs are really cheap.
 */
function improvePriced(
  trip: RoundTrip,
  bound: Bound,
  scale: number,
  route: Int32Array,
  lowerBound: number,
): { route: Int32Array; cost: number } {
  const { size } = trip;
  const cost = Float64Array.from(bound.priced);
  let taken = 0;
  for (let j = 0; j < size; j += 1) {
    let least = Infinity;
    for (let i = 0; i < size; i += 1) least = Math.min(least, cost[i * size + j]!);
    for (let i = 0; i < size; i += 1) cost[i * size + j]! -= least;
    taken += least - bound.prices[j]!;
  }
  const found = iterate(
    { ...trip, cost },
    route,
    Math.min(KICKS_FOR_ROUTE, KICKS_PER_NODE * size),
    lowerBound * scale - taken,
  );
  return { route: found.route, cost: routeCost(trip, found.route) };
}
