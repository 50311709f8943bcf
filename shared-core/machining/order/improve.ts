import type { Precedence } from './precedence.js';
import { routeCost, type RoundTrip } from './round-trip.js';
import { sequence } from './random.js';

const NEIGHBOURS = 12;
const PATIENCE = 100;

/**
 * Local search by exchanging two neighbouring segments of the route, neither of them turned round (the pure 3-opt move
 * of Lin 1965; a segment of one or a few nodes moved elsewhere is Or-opt, 1976, the special case). Turning a segment
 * round would change every cost inside it, since going from i to j costs another sum than from j to i.
 *
 * With a -> b, c -> d, e -> f in this order along the route, the exchange makes a -> d, e -> b, c -> f. In one of its
 * three rotations every partial sum of what is saved is positive (Lin and Kernighan 1973), so only arcs to near
 * neighbours that keep the sum positive are tried.
 */
export class Improver {
  readonly route: Int32Array;
  cost: number;
  readonly #trip: RoundTrip;
  readonly #near: NearLists;
  readonly #place: Int32Array;
  readonly #spare: Int32Array;
  readonly #queue: number[] = [];
  readonly #queued: Uint8Array;

  constructor(trip: RoundTrip, near: NearLists, route: Int32Array) {
    this.#trip = trip;
    this.#near = near;
    this.route = Int32Array.from(route);
    this.#place = new Int32Array(trip.size);
    this.#spare = new Int32Array(trip.size);
    this.#queued = new Uint8Array(trip.size);
    this.cost = 0;
    this.restore(route);
  }

  /** Go back to a route kept from before. */
  restore(route: Int32Array): void {
    this.route.set(route);
    for (let p = 0; p < this.#trip.size; p += 1) this.#place[this.route[p]!] = p;
    this.cost = routeCost(this.#trip, this.route);
  }

  /** Improve until no exchange within reach saves anything, starting with every node. */
  settle(): void {
    for (const node of this.route) this.#wake(node);
    this.#work();
  }

  /** Exchange two segments at random, then improve around the places that were disturbed. False where not allowed. */
  disturb(draw: (below: number) => number): boolean {
    const { size, precedence } = this.#trip;
    if (size < 5) return false;
    const reach = Math.min(size - 1, 12);
    const i = draw(size - 2);
    const j = i + 1 + draw(Math.min(reach, size - 2 - i));
    const k = j + 1 + draw(Math.min(reach, size - 1 - j));
    if (precedence !== null && !mayExchange(precedence, this.route, i, j, k)) return false;
    this.#exchange(i, j, k);
    this.#work();
    return true;
  }

  #wake(node: number): void {
    if (this.#queued[node] === 1) return;
    this.#queued[node] = 1;
    this.#queue.push(node);
  }

  #work(): void {
    for (let head = 0; head < this.#queue.length; head += 1) {
      const node = this.#queue[head]!;
      this.#queued[node] = 0;
      while (this.#improveFrom(node));
    }
    this.#queue.length = 0;
  }

  #improveFrom(a: number): boolean {
    const { size, cost, precedence } = this.#trip;
    const route = this.route;
    const place = this.#place;
    const near = this.#near;
    const after = (node: number): number => {
      const p = place[node]! + 1;
      return route[p === size ? 0 : p]!;
    };
    const b = after(a);
    const ab = cost[a * size + b]!;
    for (const d of near[a]!) {
      const first = ab - cost[a * size + d]!;
      if (!(first > 0)) break;
      if (d === b) continue;
      const pd = place[d]!;
      const c = route[pd === 0 ? size - 1 : pd - 1]!;
      const second = first + cost[c * size + d]!;
      // Where the arc leaves c is far dearer than all that can be saved, the other nodes need not be asked.
      for (const f of near[c]!) {
        const saved = second - cost[c * size + f]!;
        if (!(saved > 0)) break;
        if (f === d) continue;
        const pf = place[f]!;
        const e = route[pf === 0 ? size - 1 : pf - 1]!;
        if (!(saved + cost[e * size + f]! - cost[e * size + b]! > 0)) continue;
        // The three arcs must lie in the order a, c, e around the route.
        const turnC = (place[c]! - place[a]! + size) % size;
        const turnE = (place[e]! - place[a]! + size) % size;
        if (turnC === 0 || turnE <= turnC) continue;
        const [i, j, k] = [place[a]!, place[c]!, place[e]!].sort((x, y) => x - y) as [number, number, number];
        if (precedence !== null && !mayExchange(precedence, route, i, j, k)) continue;
        this.#exchange(i, j, k);
        for (const node of [a, b, c, d, e, f]) this.#wake(node);
        return true;
      }
    }
    return false;
  }

  /** Swap the segments (i, j] and (j, k]. Home at place 0 never moves. */
  #exchange(i: number, j: number, k: number): void {
    const route = this.route;
    const place = this.#place;
    const spare = this.#spare;
    const { size, cost } = this.#trip;
    const arc = (from: number, to: number): number => cost[route[from]! * size + route[to === size ? 0 : to]!]!;
    this.cost += arc(i, j + 1) + arc(k, i + 1) + arc(j, k + 1) - arc(i, i + 1) - arc(j, j + 1) - arc(k, k + 1);
    const length = j - i;
    spare.set(route.subarray(i + 1, j + 1));
    route.copyWithin(i + 1, j + 1, k + 1);
    route.set(spare.subarray(0, length), k + 1 - length);
    for (let p = i + 1; p <= k; p += 1) place[route[p]!] = p;
    for (const p of [i, i + 1, k - length, k + 1 - length, k, (k + 1) % size]) this.#wake(route[p]!);
  }
}

/** Whether nothing in (j, k] must wait for anything in (i, j]. */
function mayExchange(precedence: Precedence, route: Int32Array, i: number, j: number, k: number): boolean {
  const { size, before } = precedence;
  for (let p = i + 1; p <= j; p += 1) {
    const row = route[p]! * size;
    for (let q = j + 1; q <= k; q += 1) if (before[row + route[q]!] === 1) return false;
  }
  return true;
}

/** For each node the nodes that are cheapest to go to, cheapest first, ties by index. */
export type NearLists = readonly Int32Array[];

export function nearTo({ size, cost }: RoundTrip): NearLists {
  const wanted = size <= 60 ? size : NEIGHBOURS;
  return Array.from({ length: size }, (_, i) => {
    const others = Array.from({ length: size }, (_, j) => j).filter((j) => cost[i * size + j] !== Infinity);
    others.sort((x, y) => cost[i * size + x]! - cost[i * size + y]! || x - y);
    return Int32Array.from(others.slice(0, wanted));
  });
}

/**
 * Disturb and improve again, `kicks` times (iterated local search): goes on from what is not dearer than where it stands,
 * and after PATIENCE kicks in vain from wherever it got, so that it leaves a dead end. Returns the best ever met. Stops
 * early at `enough`, a proven lower bound. The sequence of disturbances is fixed, so the result is too.
 * @param near `nearTo` of the trip, for those who begin at several routes
 */
export function iterate(
  trip: RoundTrip,
  start: Int32Array,
  kicks: number,
  enough: number,
  near: NearLists = nearTo(trip),
): { route: Int32Array; cost: number } {
  const improver = new Improver(trip, near, start);
  improver.settle();
  const best = { route: Int32Array.from(improver.route), cost: improver.cost };
  const here = { route: Int32Array.from(improver.route), cost: improver.cost };
  const draw = sequence(0x5eed);
  let vain = 0;
  for (let kick = 0; kick < kicks && best.cost > enough; kick += 1) {
    if (!improver.disturb(draw)) continue;
    vain = improver.cost < here.cost ? 0 : vain + 1;
    if (improver.cost <= here.cost || vain > PATIENCE) {
      if (improver.cost > here.cost) vain = 0;
      here.cost = improver.cost;
      here.route.set(improver.route);
      if (here.cost < best.cost) {
        best.cost = here.cost;
        best.route.set(here.route);
      }
    } else {
      improver.restore(here.route);
    }
  }
  return best;
}
