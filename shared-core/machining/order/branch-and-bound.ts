import { Heap } from '../heap.js';
import { ascend, routeOf, wholeBound, type Bound } from './ascent.js';
import { firstViolation, type Precedence } from './precedence.js';
import { routeCost, type RoundTrip } from './round-trip.js';

const ROUNDS_PER_NODE = 24;

/** A part of all round trips: those that use none of the arcs that are Infinity in `cost`. */
interface Part {
  readonly cost: Float64Array;
  readonly bound: Bound;
  readonly serial: number;
}

/**
 * Best-first branch and bound over the priced arborescence: the part with the least bound is cut in two by an arc that
 * its arborescence uses although it cannot be right there, once with the arc forced and once with it forbidden. Arcs
 * whose reduced cost would lift the bound to the best known cost are forbidden for good.
 *
 * `root` is the ascent over the whole problem, `known` the best route so far; `work` limits the arborescences computed.
 * Returns the best route, and the bound that now holds for all round trips: equal to the cost where it is proven.
 */
export function branchAndBound(
  trip: RoundTrip,
  scale: number,
  root: Bound,
  known: { route: Int32Array; cost: number },
  work: number,
): { route: Int32Array; cost: number; lowerBound: number } {
  const { size, precedence } = trip;
  let best = known;
  let left = work;
  let serial = 0;
  const open = new Heap<Part>(sooner);

  const take = (cost: Float64Array, start: Bound | null, startPrices: Float64Array): void => {
    if (!settleArcs(size, cost, precedence)) return;
    const rounds = Math.min(ROUNDS_PER_NODE, left);
    left -= rounds + 1;
    const bound = start ?? ascend(size, cost, scale, startPrices, best.cost, rounds);
    if (bound === null || wholeBound(bound.scaled, scale) >= best.cost) return;
    const route = routeOf(size, bound);
    if (route !== null && (precedence === null || firstViolation(precedence, route) === null)) {
      const total = routeCost(trip, route);
      if (total < best.cost) best = { route, cost: total };
      // Every node is left once, so the bound is this route's cost: nothing better is in this part.
      return;
    }
    forbidDear(size, cost, bound, scale, best.cost);
    open.push({ cost, bound, serial });
    serial += 1;
  };

  take(Float64Array.from(trip.cost), root, root.prices);
  while (left > 0) {
    const part = open.pop();
    if (part === undefined) break;
    if (wholeBound(part.bound.scaled, scale) >= best.cost) continue;
    const arc = branchingArc(size, part, precedence);
    if (arc === null) continue;
    const [i, j] = arc;
    const forced = Float64Array.from(part.cost);
    for (let k = 0; k < size; k += 1) {
      if (k !== j) forced[i * size + k] = Infinity;
      if (k !== i) forced[k * size + j] = Infinity;
    }
    take(forced, null, part.bound.prices);
    part.cost[i * size + j] = Infinity;
    take(part.cost, null, part.bound.prices);
  }

  let lowerBound = best.cost;
  for (const part of open.values()) lowerBound = Math.min(lowerBound, wholeBound(part.bound.scaled, scale));
  return { ...best, lowerBound };
}

/** Forbids arcs that cannot be in any round trip cheaper than `upper`: priced, they would lift the bound that far. */
function forbidDear(size: number, cost: Float64Array, bound: Bound, scale: number, upper: number): void {
  const slack = (upper - 1) * scale - bound.scaled;
  const reduced = bound.tree.reducedCosts();
  for (let i = 0; i < size; i += 1) {
    for (let j = 1; j < size; j += 1) if (reduced[i * size + j]! > slack) cost[i * size + j] = Infinity;
    if (bound.priced[i * size]! - bound.priced[bound.lastNode * size]! > slack) cost[i * size] = Infinity;
  }
}

/** An arc of the part's arborescence to decide: undecided, and in a place where the arborescence is no round trip. */
function branchingArc(size: number, part: Part, precedence: Precedence | null): [number, number] | null {
  const { cost, bound } = part;
  const choices = new Int32Array(size);
  const entries = new Int32Array(size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) {
      if (cost[i * size + j] === Infinity) continue;
      choices[i]! += 1;
      entries[j]! += 1;
    }
  }
  const undecided = (i: number, j: number): boolean =>
    cost[i * size + j] !== Infinity && (choices[i]! > 1 || entries[j]! > 1);

  const route = routeOf(size, bound);
  if (route === null) {
    const leaves: number[][] = Array.from({ length: size }, () => []);
    for (let j = 1; j < size; j += 1) leaves[bound.tree.from[j]!]!.push(j);
    leaves[bound.lastNode]!.push(0);
    let chosen: [number, number] | null = null;
    let fewest = Infinity;
    for (let i = 0; i < size; i += 1) {
      if (leaves[i]!.length < 2 || choices[i]! >= fewest) continue;
      const j = leaves[i]!.find((to) => undecided(i, to));
      if (j === undefined) continue;
      fewest = choices[i]!;
      chosen = [i, j];
    }
    return chosen ?? anyUndecided(size, undecided);
  }
  const wrong = precedence === null ? null : firstViolation(precedence, route);
  if (wrong !== null) {
    for (let p = wrong.p; p < wrong.q; p += 1)
      if (undecided(route[p]!, route[p + 1]!)) return [route[p]!, route[p + 1]!];
  }
  return anyUndecided(size, undecided);
}

function anyUndecided(size: number, undecided: (i: number, j: number) => boolean): [number, number] | null {
  for (let i = 0; i < size; i += 1) for (let j = 0; j < size; j += 1) if (undecided(i, j)) return [i, j];
  return null;
}

/**
 * Draws the conclusions from forbidden arcs: a node with one way out takes it, a node with one way in is entered by it,
 * and a chain of decided arcs neither closes before it holds every node nor joins a chain that must come earlier.
 * False where no round trip is left.
 */
function settleArcs(size: number, cost: Float64Array, precedence: Precedence | null): boolean {
  for (let changed = true; changed;) {
    changed = false;
    const forbid = (i: number, j: number): void => {
      if (cost[i * size + j] === Infinity) return;
      cost[i * size + j] = Infinity;
      changed = true;
    };
    const next = new Int32Array(size).fill(-1);
    const previous = new Int32Array(size).fill(-1);
    for (let i = 0; i < size; i += 1) {
      const out = only(size, (j) => cost[i * size + j] !== Infinity);
      const into = only(size, (j) => cost[j * size + i] !== Infinity);
      if (out === -1 || into === -1) return false;
      if (out >= 0) for (let k = 0; k < size; k += 1) if (k !== i) forbid(k, out);
      if (into >= 0) for (let k = 0; k < size; k += 1) if (k !== i) forbid(into, k);
    }
    if (changed) continue;
    for (let i = 0; i < size; i += 1) {
      const out = only(size, (j) => cost[i * size + j] !== Infinity);
      if (out < 0) continue;
      next[i] = out;
      previous[out] = i;
    }
    const chains: number[][] = [];
    for (let start = 0; start < size; start += 1) {
      if (previous[start] !== -1) continue;
      const chain = [start];
      for (let node = next[start]!; node >= 0; node = next[node]!) chain.push(node);
      chains.push(chain);
      if (chain.length > 1 && chain.length < size) forbid(chain[chain.length - 1]!, start);
    }
    // Without a free start every arc is decided: one circle through all nodes, or no round trip.
    if (chains.length === 0) {
      let length = 1;
      for (let node = next[0]!; node !== 0; node = next[node]!) length += 1;
      if (length < size) return false;
    } else if (chains.reduce((sum, chain) => sum + chain.length, 0) < size) {
      return false;
    }
    if (precedence !== null && !orderChains(size, chains, precedence, forbid)) return false;
  }
  return true;
}

/** Forbids joins of two chains that would put a node before one that it must follow. False where a chain does so inside. */
function orderChains(
  size: number,
  chains: readonly (readonly number[])[],
  precedence: Precedence,
  forbid: (i: number, j: number) => void,
): boolean {
  // Home ends one round and begins the next: what stands before it in a chain is last of all.
  const parts = chains.flatMap((chain) => {
    const home = chain.indexOf(0);
    return home <= 0 ? [chain] : [chain.slice(0, home), chain.slice(home)];
  });
  const { before } = precedence;
  for (const part of parts) {
    for (let q = 1; q < part.length; q += 1) {
      for (let p = 0; p < q; p += 1) if (before[part[q]! * size + part[p]!] === 1) return false;
    }
  }
  for (const first of parts) {
    for (const second of parts) {
      if (first === second || second[0] === 0 || first.length + second.length < 3) continue;
      if (first.some((a) => second.some((b) => before[b * size + a] === 1)))
        forbid(first[first.length - 1]!, second[0]!);
    }
  }
  return true;
}

/** The only index for which `holds`; -1 where there is none, -2 where there are several. */
function only(size: number, holds: (index: number) => boolean): number {
  let found = -1;
  for (let index = 0; index < size; index += 1) {
    if (!holds(index)) continue;
    if (found >= 0) return -2;
    found = index;
  }
  return found;
}

function sooner(a: Part, b: Part): boolean {
  return a.bound.scaled < b.bound.scaled || (a.bound.scaled === b.bound.scaled && a.serial > b.serial);
}
