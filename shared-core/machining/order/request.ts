import { banImpossibleArcs, closePrecedence, type Precedence } from './precedence.js';
import type { RoundTrip } from './round-trip.js';

export interface OrderOptions {
  /** `start[i]`: changeover from the machine as it was left to set-up i. */
  readonly start?: readonly number[];
  /** Pairs [i, j]: set-up i must come before set-up j. */
  readonly before?: readonly (readonly [number, number])[];
}

/** Why a request cannot be answered. */
export interface OrderProblem {
  readonly kind: 'problem';
  readonly reason: 'not-square' | 'not-a-cost' | 'start-row' | 'no-such-set-up' | 'order-in-a-circle';
  readonly message: string;
}

/** In milliseconds this is over three weeks; sums over any table then stay exact. */
export const LARGEST_COST = 2 ** 31 - 1;

/** Checks the request for a sequence with two free ends, and brings it into the form of a round trip. */
export function readRequest(
  cost: readonly (readonly number[])[],
  options: OrderOptions,
): { readonly kind: 'trip'; readonly trip: RoundTrip } | OrderProblem {
  const n = cost.length;
  for (let i = 0; i < n; i += 1) {
    const row = cost[i]!;
    if (row.length !== n) {
      return problem(
        'not-square',
        `row ${i} of the changeover table has ${row.length} entries; ${n} set-ups need ${n}`,
      );
    }
    for (let j = 0; j < n; j += 1) {
      if (i !== j && !isCost(row[j]!))
        return problem('not-a-cost', `changeover from ${i} to ${j} is ${row[j]!}; ${COST_RULE}`);
    }
  }
  const { start, before = [] } = options;
  if (start !== undefined) {
    if (start.length !== n) return problem('start-row', `${start.length} start costs for ${n} set-ups`);
    const wrong = start.findIndex((value) => !isCost(value));
    if (wrong >= 0) return problem('not-a-cost', `start cost of ${wrong} is ${start[wrong]!}; ${COST_RULE}`);
  }
  for (const pair of before) {
    const wrong = pair.find((index) => !Number.isInteger(index) || index < 0 || index >= n);
    if (wrong !== undefined || pair.length !== 2) {
      return problem('no-such-set-up', `'${pair.join(' before ')}' names no pair of the ${n} set-ups`);
    }
  }
  return openTrip(cost, start, before);
}

const COST_RULE = `a changeover is a whole number from 0 to ${LARGEST_COST}`;

function isCost(value: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= LARGEST_COST;
}

function problem(reason: OrderProblem['reason'], message: string): OrderProblem {
  return { kind: 'problem', reason, message };
}

function openTrip(
  cost: readonly (readonly number[])[],
  start: readonly number[] | undefined,
  before: readonly (readonly [number, number])[],
): ReturnType<typeof readRequest> {
  const size = cost.length + 1;
  const table = new Float64Array(size * size);
  table[0] = Infinity;
  for (let i = 1; i < size; i += 1) {
    table[i] = start?.[i - 1] ?? 0;
    for (let j = 1; j < size; j += 1) table[i * size + j] = i === j ? Infinity : cost[i - 1]![j - 1]!;
  }
  return finish(
    size,
    table,
    before.map(([i, j]) => [i + 1, j + 1]),
  );
}

function finish(
  size: number,
  cost: Float64Array,
  before: readonly (readonly [number, number])[],
): ReturnType<typeof readRequest> {
  let precedence: Precedence | null = null;
  if (before.length > 0) {
    precedence = closePrecedence(size, before);
    if (precedence === null)
      return problem('order-in-a-circle', 'the order asked for runs in a circle: no set-up could come first');
    banImpossibleArcs(precedence, cost);
  }
  return { kind: 'trip', trip: { size, cost, precedence } };
}
