import { completions, type Completions } from './held-karp.js';
import { iterate } from './improve.js';
import { nearestNext } from './construct.js';
import { sequence as drawing } from './random.js';
import { readRequest } from './request.js';
import type { RoundTrip } from './round-trip.js';
import { search } from './search.js';
import { completionsInStages } from './stages.js';
import { LARGEST_TABLE, leastEntries, orderInWindows } from './windows.js';

/**
 * A sequence whose steps cost what everything run before has left: a stop that stands right need not be set again, whoever
 * set it. `S` is how the machine stands; null before the first step.
 */
export interface StatefulSequence<S> {
  readonly size: number;
  step(state: S | null, to: number): { readonly cost: number; readonly state: S };
  /** Equal for states after one and the same set-up from which every step costs the same. */
  key(state: S): string;
  /** What a step costs at least, whatever was run before; `from` is null for the first. */
  least(from: number | null, to: number): LeastStep;
  /** What it costs at most. */
  most(from: number, to: number): number;
  /** What several steps may be charged with, and at least one of them is: a place of a stop that several set-ups want. */
  readonly dues: readonly Due[];
  /** What stages there are, such as the heads of a body: where two are dear to change between, each may be proven by itself. */
  stage(index: number): string;
  /** Pairs [i, j]: i comes before j. */
  readonly before: readonly (readonly [number, number])[];
}

export interface LeastStep {
  readonly cost: number;
  /** The dues that are part of this cost, by their places in the list. */
  readonly dues: readonly number[];
}

export interface Due {
  readonly cost: number;
  /** The set-ups that may be charged with it when they are come to. */
  readonly members: readonly number[];
}

/** An order, what it costs, and how good it is known to be. */
export interface StatefulOrder {
  readonly order: readonly number[];
  readonly cost: number;
  /** No order costs less than this. */
  readonly lowerBound: number;
  /** True where no order that goes to each stage once costs less. */
  readonly bestInStages: boolean;
}

/** Steps that may be tried for a proof, and for improving an order where there is none. */
const PROOF_STEPS = 300_000;
const IMPROVING_STEPS = 400_000;
const KICKS = 5000;
/** How often what is asked in advance is put right, and for how many set-ups. */
const ADVANCE_ROUNDS = 8;
const MOST_WITH_ROUNDS = 150;

/**
 * A cheap order of a sequence whose steps depend on what was run before, and a bound that no order can beat: for few set-ups
 * by going deeper and deeper until the first order under the bound is found, so that it is the cheapest, and of several the
 * first in the order of the dictionary; for many by the better of orders for the least and for the greatest costs, with parts
 * of it moved at their true cost, and the bound on tables of least costs. Null where a cost is no whole number, or the pairs
 * run in a circle.
 */
export function orderWithState<S>(sequence: StatefulSequence<S>): StatefulOrder | null {
  const { size, before } = sequence;
  if (size === 0) return { order: [], cost: 0, lowerBound: 0, bestInStages: true };
  if (size > LARGEST_TABLE) {
    const long = {
      size,
      start: (first: number) => sequence.step(null, first).cost,
      cost: (from: number, to: number) => sequence.most(from, to),
      before,
    };
    const found = orderInWindows(long);
    if (found === null) return null;
    const lowerBound = leastEntries({ ...long, cost: (from, to) => sequence.least(from, to).cost });
    return { order: found.order, cost: costOf(sequence, found.order), lowerBound, bestInStages: false };
  }
  const usual = tripOf(sequence, (from, to) =>
    from === null ? sequence.step(null, to).cost : sequence.most(from, to),
  );
  if (usual === null) return null;
  const first = nearestNext(usual, 0);
  if (first === null) return null;
  const start = orderOf(size < 4 ? first : iterate(usual, first, KICKS, 0).route);
  const advance = advanceFor(sequence, start);
  const asked = advance.reduce((sum, one) => sum + one, 0);
  const trip = tripLess(sequence, advance);
  if (trip === null) return null;
  const sets = completions(trip);
  const proof = sets === null ? null : prove(sequence, sets, advance);
  if (proof !== null && proof.order !== null)
    return { order: proof.order, cost: proof.lowerBound, lowerBound: proof.lowerBound, bestInStages: true };
  const searched = search(trip);
  const lowerBound = Math.max(searched.lowerBound + asked, proof?.lowerBound ?? 0);
  const [one, other] = [start, orderOf(searched.route)].map((order) => improve(sequence, order, lowerBound));
  const best = other!.cost < one!.cost ? other! : one!;
  if (best.cost <= lowerBound) return { ...best, lowerBound, bestInStages: true };
  const staged = inTwoStages(sequence, trip, advance);
  if (staged === null || staged.cost > best.cost) return { ...best, lowerBound, bestInStages: false };
  return { ...staged, lowerBound, bestInStages: true };
}

/**
 * The cheapest order that changes once between two stages; null where there are not two, or too many set-ups to prove it.
 */
function inTwoStages<S>(
  sequence: StatefulSequence<S>,
  trip: RoundTrip,
  advance: readonly number[],
): { order: number[]; cost: number } | null {
  const stages = new Map<string, number[]>();
  for (let node = 1; node < trip.size; node += 1) {
    const stage = sequence.stage(node - 1);
    stages.set(stage, [...(stages.get(stage) ?? []), node]);
  }
  const [one, other, ...more] = stages.values();
  if (one === undefined || other === undefined || more.length > 0) return null;
  const pairs = sequence.before.map(([i, j]) => [i + 1, j + 1] as const);
  let best: { order: number[]; cost: number } | null = null;
  for (const [first, second] of [
    [one, other],
    [other, one],
  ] as const) {
    if (pairs.some(([i, j]) => first.includes(j) && second.includes(i))) continue;
    const table = completionsInStages(trip, first, second, pairs);
    const proof = table && prove(sequence, table, advance);
    if (proof === null || proof.order === null) return null;
    if (best === null || proof.lowerBound < best.cost) best = { order: proof.order, cost: proof.lowerBound };
  }
  return best;
}

const orderOf = (route: Int32Array): number[] => Array.from(route.subarray(1), (node) => node - 1);

function tripOf<S>(
  { size, before }: StatefulSequence<S>,
  cost: (from: number | null, to: number) => number,
): RoundTrip | null {
  const nodes = Array.from({ length: size }, (_, node) => node);
  const request = readRequest(
    nodes.map((from) => nodes.map((to) => (from === to ? 0 : cost(from, to)))),
    { start: nodes.map((to) => cost(null, to)), before },
  );
  return request.kind === 'trip' ? request.trip : null;
}

/** The trip at its least costs, less what of each due is asked in advance. */
function tripLess<S>(sequence: StatefulSequence<S>, advance: readonly number[]): RoundTrip | null {
  return tripOf(sequence, (from, to) => {
    const { cost, dues } = sequence.least(from, to);
    return dues.reduce((sum, due) => sum - advance[due]!, cost);
  });
}

/**
 * How much of each due to ask once in advance, and to take off wherever a step is charged with it for certain. As at least one
 * step is charged with it in every order, what is asked and what is then left of the steps is never more than the order costs:
 * a Lagrangian relaxation (Held and Karp 1971) of that demand. It bounds best where a due is charged once in the cheapest
 * order: asked in full where a good order is charged once or less for certain, not at all where more often, and put right by
 * what orders that the bound takes for cheap are charged with.
 */
function advanceFor<S>(sequence: StatefulSequence<S>, order: readonly number[]): number[] {
  const { dues, size } = sequence;
  const chargedIn = (one: readonly number[]): number[] => {
    const times = dues.map(() => 0);
    one.forEach((to, p) => {
      for (const due of sequence.least(p === 0 ? null : one[p - 1]!, to).dues) times[due]! += 1;
    });
    return times;
  };
  let advance = chargedIn(order).map((times, due) => (times <= 1 ? dues[due]!.cost : 0));
  if (dues.length === 0 || size < 4 || size > MOST_WITH_ROUNDS) return advance;
  let best = { advance, bound: -1 };
  for (let round = 0; round < ADVANCE_ROUNDS; round += 1) {
    const trip = tripLess(sequence, advance);
    if (trip === null) break;
    const found = iterate(trip, Int32Array.of(0, ...order.map((node) => node + 1)), KICKS / 5, 0);
    const bound = found.cost + advance.reduce((sum, one) => sum + one, 0);
    if (bound > best.bound) best = { advance, bound };
    const share = 2 ** -(1 + round / 2);
    advance = chargedIn(orderOf(found.route)).map((times, due) => {
      const { cost } = dues[due]!;
      return Math.max(0, Math.min(cost, advance[due]! + Math.round(cost * share * Math.sign(1 - times))));
    });
  }
  return best.advance;
}

/** What an order costs, step by step. */
function costOf<S>(sequence: StatefulSequence<S>, order: readonly number[]): number {
  let state: S | null = null;
  let sum = 0;
  for (const to of order) {
    const step = sequence.step(state, to);
    sum += step.cost;
    state = step.state;
  }
  return sum;
}

/**
 * The first of the cheapest orders, by deepening (Korf 1985): all orders that may come out at the least cost still possible are
 * followed; where none does, at the next. What was followed in vain from one state is not followed again at no less. `order` is
 * null where the steps ran out; the bound holds all the same.
 */
function prove<S>(
  sequence: StatefulSequence<S>,
  sets: Completions,
  advance: readonly number[],
): { order: number[] | null; lowerBound: number } {
  let left = PROOF_STEPS;
  let next = Infinity;
  let vain = new Map<string, number>();
  const order: number[] = [];
  const all = 2 ** sets.nodes - 1;
  const asked = sequence.dues.map(({ members }, due) => ({
    members: members.reduce((set, member) => set | (1 << member), 0),
    cost: advance[due]!,
  }));
  // What is asked in advance is still to come for dues that no set-up run so far could be charged with.
  const stillAsked = (set: number): number =>
    asked.reduce((sum, { members, cost }) => ((members & set) === 0 ? sum + cost : sum), 0);

  const follow = (set: number, state: S | null, cost: number, limit: number): boolean => {
    if (set === all) return true;
    if (state !== null) {
      const key = `${set} ${order.at(-1)} ${sequence.key(state)}`;
      if ((vain.get(key) ?? Infinity) <= cost) return false;
      vain.set(key, cost);
    }
    for (let to = 0; to < sets.nodes; to += 1) {
      if (!sets.mayCome(set, to + 1)) continue;
      const done = set | (1 << to);
      const from = order.at(-1) ?? null;
      const rest = sets.rest(done, to + 1) + stillAsked(done);
      // Before the step is made, that it costs the least is soon asked.
      const hoped = cost + sequence.least(from, to).cost + rest;
      if (hoped > limit) {
        next = Math.min(next, hoped);
        continue;
      }
      left -= 1;
      if (left < 0) return false;
      const step = sequence.step(state, to);
      const total = cost + step.cost + rest;
      if (total > limit) {
        next = Math.min(next, total);
        continue;
      }
      order.push(to);
      if (follow(done, step.state, cost + step.cost, limit)) return true;
      order.pop();
    }
    return false;
  };

  let limit = 0;
  for (;;) {
    next = Infinity;
    vain = new Map();
    if (follow(0, null, 0, limit)) return { order, lowerBound: limit };
    if (left < 0 || next === Infinity) return { order: null, lowerBound: limit };
    limit = next;
  }
}

/** An order that is improved at the true cost of all that comes after each change. */
class TrueOrder<S> {
  readonly order: number[];
  /** Steps made so far: what the work is counted in. */
  steps = 0;
  readonly #states: S[] = [];
  readonly #costs: number[] = [];
  readonly #later = new Map<number, Set<number>>();

  readonly #sequence: StatefulSequence<S>;

  constructor(sequence: StatefulSequence<S>, order: readonly number[]) {
    this.#sequence = sequence;
    this.order = [...order];
    for (const [i, j] of sequence.before) this.#later.set(i, (this.#later.get(i) ?? new Set()).add(j));
    this.#price(0);
  }

  get cost(): number {
    return this.#costs.at(-1) ?? 0;
  }

  /** Exchanges the runs at [i, j) and [j, k) where that is allowed and `accept` takes the saving. */
  exchange(i: number, j: number, k: number, accept: (saving: number) => boolean): boolean {
    const [first, second] = [this.order.slice(i, j), this.order.slice(j, k)];
    if (!first.every((one) => second.every((other) => this.#later.get(one)?.has(other) !== true))) return false;
    const instead = [...second, ...first];
    if (!accept(this.#saving(i, instead))) return false;
    this.order.splice(i, instead.length, ...instead);
    this.#price(i);
    return true;
  }

  /** Moves runs of one to three set-ups to other places as long as that saves. */
  settle(most: number): void {
    const size = this.order.length;
    for (let improved = true; improved && this.steps < most;) {
      improved = false;
      for (let length = 1; length <= 3; length += 1) {
        for (let at = 0; at + length <= size; at += 1) {
          for (let to = 0; to + length <= size && this.steps < most; to += 1) {
            if (to === at) continue;
            const [i, j, k] = to < at ? [to, at, at + length] : [at, at + length, to + length];
            if (this.exchange(i, j, k, (saving) => saving > 0)) improved = true;
          }
        }
      }
    }
  }

  #price(from: number): void {
    const { order } = this;
    const sequence = this.#sequence;
    const states = this.#states;
    const costs = this.#costs;
    for (let p = from; p < order.length; p += 1) {
      const step = sequence.step(p === 0 ? null : states[p - 1]!, order[p]!);
      states[p] = step.state;
      costs[p] = (p === 0 ? 0 : costs[p - 1]!) + step.cost;
    }
    this.steps += order.length - from;
  }

  /** What is saved where the places from `low` on hold these set-ups instead. */
  #saving(low: number, instead: readonly number[]): number {
    const { order } = this;
    const sequence = this.#sequence;
    const states = this.#states;
    const costs = this.#costs;
    let state: S | null = low === 0 ? null : states[low - 1]!;
    let cost = low === 0 ? 0 : costs[low - 1]!;
    for (let p = low; p < order.length; p += 1) {
      const to = p - low < instead.length ? instead[p - low]! : order[p]!;
      const step = sequence.step(state, to);
      this.steps += 1;
      state = step.state;
      cost += step.cost;
      const isBack = p - low >= instead.length - 1 && to === order[p];
      if (isBack && sequence.key(step.state) === sequence.key(states[p]!)) return costs[p]! - cost;
    }
    return this.cost - cost;
  }
}

/** Improves an order, then disturbs and improves again from a fixed sequence (iterated local search), down to `enough`. */
function improve<S>(
  sequence: StatefulSequence<S>,
  from: readonly number[],
  enough: number,
): { order: number[]; cost: number } {
  const draw = drawing(0x5eed);
  const { size } = sequence;
  let best = new TrueOrder(sequence, from);
  best.settle(IMPROVING_STEPS);
  let steps = best.steps;
  while (size > 3 && steps < IMPROVING_STEPS && best.cost > enough) {
    const next = new TrueOrder(sequence, best.order);
    for (let kick = 0; kick < 2; kick += 1) {
      const i = draw(size - 2);
      const j = i + 1 + draw(Math.min(8, size - 1 - i));
      const k = j + 1 + draw(Math.min(8, size - j));
      if (k <= size) next.exchange(i, j, k, () => true);
    }
    next.settle(IMPROVING_STEPS - steps);
    steps += next.steps;
    if (next.cost <= best.cost) best = next;
  }
  return { order: best.order, cost: best.cost };
}
