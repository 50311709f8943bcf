import { ascend, fractions, wholeBound, type Bound } from './ascent.js';
import { assign } from './assignment.js';
import { branchAndBound } from './branch-and-bound.js';
import { nearestNext, patchedCircles } from './construct.js';
import { iterate } from './improve.js';
import { routeCost, type RoundTrip } from './round-trip.js';

/** Elementary steps spent on the search beyond the exact table: under a second on one slow core. */
const BOUND_WORK = 1e7;
const BRANCH_WORK = 1.8e7;
const MOST_BRANCHES = 12_000;
const LARGEST_BRANCHED = 150;
const KICKS_FOR_UPPER = 1500;
const KICKS_FOR_ROUTE = 20_000;
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
  // The row prices of the assignment make the first bound at least as good as the assignment's own.
  const prices = new Float64Array(size);
  if (assignment !== null) for (let i = 0; i < size; i += 1) prices[i] = -assignment.rowPrice[i]! * scale;
  const rounds = Math.min(500, Math.max(20, Math.floor(BOUND_WORK / (size * size))));
  const bound = ascend(size, cost, scale, prices, best.cost, rounds);
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

/** The best of several constructions, each improved, and the best of them improved further. */
function firstRoute(trip: RoundTrip, enough: number): { route: Int32Array; cost: number } {
  const starts: { route: Int32Array; cost: number }[] = [];
  const add = (route: Int32Array | null): void => {
    if (route !== null) starts.push({ route, cost: routeCost(trip, route) });
  };
  add(patchedCircles(trip));
  for (let first = 0; first < trip.size; first += 1) add(nearestNext(trip, first));
  starts.sort((a, b) => a.cost - b.cost);
  const improved = starts.slice(0, 8).map(({ route }) => iterate(trip, route, 0, enough));
  improved.sort((a, b) => a.cost - b.cost);
  return iterate(trip, improved[0]!.route, KICKS_FOR_UPPER, enough);
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
