import { cheapestArborescence, type Arborescence } from './arborescence.js';

/** Prices are whole fractions of a cost unit, so that every bound is exact: this many to the unit at most. */
const FINEST = 1024;
/** Whole numbers stay exact in a double up to here. */
const EXACT = 2 ** 52;

/** What the ascent reached: the best prices on leaving a node, and the arborescence that they make. */
export interface Bound {
  /** Lower bound on every round trip, in fractions of a cost unit. */
  readonly scaled: number;
  readonly prices: Float64Array;
  readonly tree: Arborescence;
  /** The node from which home is reached most cheaply under these prices. */
  readonly lastNode: number;
  /** The table of costs with prices added, in fractions. */
  readonly priced: Float64Array;
}

/** How many fractions a cost unit is cut into, so that no sum over the table leaves the exact whole numbers. */
export function fractions(size: number, cost: Float64Array): number {
  let largest = 1;
  for (const value of cost) if (value !== Infinity && value > largest) largest = value;
  let scale = FINEST;
  while (scale > 1 && largest * scale * 4 * (size + 1) > EXACT) scale /= 2;
  return scale;
}

/** The smallest whole cost that a bound in fractions proves. */
export function wholeBound(scaled: number, scale: number): number {
  return Math.ceil(scaled / scale);
}

/**
 * Lower bound on the round trip by pricing (Held and Karp 1970, 1971; for arborescences Fischetti and Toth 1992).
 *
 * A round trip is an arborescence from home, plus one arc back, in which every node is left exactly once. Charge a price
 * for each leaving and refund it once per node: a round trip costs the same as before, while the cheapest
 * arborescence-plus-arc never costs more than the cheapest round trip. Raising the price where a node is left too often
 * and lowering it where it is never left pushes that bound up. Prices are whole numbers of fractions, so the bound is
 * exact arithmetic, whatever the step sizes are.
 *
 * Stops after `rounds`, or when the bound proves that nothing below `upper` exists. Null where there is no round trip.
 */
export function ascend(
  size: number,
  cost: Float64Array,
  scale: number,
  start: Float64Array,
  upper: number,
  rounds: number,
): Bound | null {
  const prices = Float64Array.from(start);
  const direction = new Float64Array(size);
  const leaves = new Int32Array(size);
  let best: Bound | null = null;
  let stride = 1;
  let stale = 0;
  // Few rounds must come to small steps sooner.
  const patience = Math.min(10, Math.max(3, Math.floor(rounds / 8)));

  for (let round = 0; ; round += 1) {
    const priced = new Float64Array(size * size);
    let refund = 0;
    for (let i = 0; i < size; i += 1) {
      const price = prices[i]!;
      refund += price;
      for (let j = 0; j < size; j += 1) priced[i * size + j] = cost[i * size + j]! * scale + price;
    }
    const tree = cheapestArborescence(size, priced);
    if (tree === null) return null;
    let lastNode = -1;
    for (let i = 1; i < size; i += 1) {
      if (lastNode < 0 || priced[i * size]! < priced[lastNode * size]!) lastNode = i;
    }
    if (lastNode < 0 || priced[lastNode * size] === Infinity) return null;
    const scaled = tree.cost + priced[lastNode * size]! - refund;
    if (best === null || scaled > best.scaled) {
      best = { scaled, prices: Float64Array.from(prices), tree, lastNode, priced };
      stale = 0;
    } else {
      stale += 1;
      if (stale >= patience) {
        stride /= 2;
        stale = 0;
      }
    }
    if (round >= rounds || stride < 0.002 || wholeBound(best.scaled, scale) >= upper) return best;

    leaves.fill(-1);
    for (let j = 1; j < size; j += 1) leaves[tree.from[j]!]! += 1;
    leaves[lastNode]! += 1;
    // Every node is left once: the arborescence is a round trip.
    if (leaves.every((excess) => excess === 0)) return best;
    let length = 0;
    for (let i = 0; i < size; i += 1) {
      direction[i] = round === 0 ? leaves[i]! : 0.7 * leaves[i]! + 0.3 * direction[i]!;
      length += direction[i]! * direction[i]!;
    }
    if (length === 0) return best;
    const step = (stride * (upper * scale - scaled)) / length;
    for (let i = 0; i < size; i += 1) prices[i]! += Math.round(step * direction[i]!);
  }
}

/** The route in which the bound's arborescence leaves every node once, or null where it does not. */
export function routeOf(size: number, bound: Bound): Int32Array | null {
  const next = new Int32Array(size).fill(-1);
  for (let j = 1; j < size; j += 1) {
    const i = bound.tree.from[j]!;
    if (next[i] !== -1) return null;
    next[i] = j;
  }
  if (next[bound.lastNode] !== -1) return null;
  const route = new Int32Array(size);
  for (let p = 1; p < size; p += 1) route[p] = next[route[p - 1]!]!;
  return route;
}
