import { completions } from '../../../../shared-core/machining/order/held-karp.js';
import { banImpossibleArcs, closePrecedence } from '../../../../shared-core/machining/order/precedence.js';
import {
  readRequest,
  type OrderOptions as OpenOptions,
  type OrderProblem,
} from '../../../../shared-core/machining/order/request.js';
import { routeCost, type RoundTrip } from '../../../../shared-core/machining/order/round-trip.js';
import { search } from '../../../../shared-core/machining/order/search.js';

export interface OrderOptions extends OpenOptions {
  /** A closed tour, beginning and ending at set-up 0. Otherwise a sequence with two free ends. */
  readonly closed?: boolean;
}

/** An order of the set-ups, and how good it is known to be. */
export interface ChangeoverOrder {
  readonly kind: 'order';
  /** Every index of the cost table once, in the order to run. A closed tour begins with 0. */
  readonly order: number[];
  /** Sum of the changeovers along `order`, with the start cost and, for a closed tour, the way back. */
  readonly cost: number;
  /** No order costs less than this. */
  readonly lowerBound: number;
  /** True where `cost` equals `lowerBound`: no order is better. */
  readonly proven: boolean;
}

/**
 * The order of n set-ups that makes the sum of changeovers least.
 *
 * `cost[i][j]` is the changeover from i to j: whole, not negative, in any unit (seconds, say); it need not equal
 * `cost[j][i]`, and the diagonal is not looked at. Without options the sequence is open with both ends free. `start`
 * adds the changeover from the machine as it was left to the first set-up; `closed` makes it a tour back to set-up 0;
 * `before` lists pairs [i, j] where i must come before j.
 *
 * Exact for up to 16 set-ups, and beyond where the order asked for leaves few sets, by dynamic programming; among
 * equally cheap orders it returns the first in the order of the dictionary. Beyond that: construction, segment exchange
 * and iterated local search for the order; assignment and priced arborescence for the bound; and branch and bound with
 * bounded work, which proves most orders of a few dozen set-ups. `lowerBound` always holds, and the gap is
 * `cost - lowerBound`. All of it is whole-number arithmetic with fixed seeds and counted work: the same request gives
 * the same order on every machine.
 *
 * Bad input gives an `OrderProblem` that says what is wrong; nothing is thrown.
 *
 * It is made of the core's own parts, so it is what the tests look at, and no check of anything.
 */
export function orderByChangeover(
  cost: readonly (readonly number[])[],
  options: OrderOptions = {},
): ChangeoverOrder | OrderProblem {
  const request = tripFor(cost, options);
  if (request.kind === 'problem') return request;
  const { trip } = request;
  if (trip.size <= 1) {
    return {
      kind: 'order',
      order: options.closed === true && cost.length === 1 ? [0] : [],
      cost: 0,
      lowerBound: 0,
      proven: true,
    };
  }
  const exact = heldKarp(trip);
  const solved = exact === null ? search(trip) : { ...exact, lowerBound: exact.cost };
  const order = options.closed === true ? [...solved.route] : Array.from(solved.route.subarray(1), (node) => node - 1);
  return {
    kind: 'order',
    order,
    cost: solved.cost,
    lowerBound: solved.lowerBound,
    proven: solved.cost === solved.lowerBound,
  };
}

/** The round trip for a sequence or a tour. */
export function tripFor(
  cost: readonly (readonly number[])[],
  { closed = false, start, before = [] }: OrderOptions,
): ReturnType<typeof readRequest> {
  const open = readRequest(cost, { ...(start !== undefined && { start }), before });
  if (!closed) return open;
  const bad = (reason: OrderProblem['reason'], message: string): OrderProblem => ({ kind: 'problem', reason, message });
  if (start !== undefined) return bad('start-row', 'a closed tour has no start costs');
  if (open.kind === 'problem') return open;
  if (before.some(([, j]) => j === 0)) return bad('order-in-a-circle', 'a closed tour begins with 0');
  const size = cost.length;
  const table = Float64Array.from(cost.flatMap((row, i) => row.map((one, j) => (i === j ? Infinity : one))));
  const own = before.filter(([i]) => i !== 0);
  const precedence = own.length === 0 ? null : closePrecedence(size, own);
  if (precedence !== null) banImpossibleArcs(precedence, table);
  return { kind: 'trip', trip: { size, cost: table, precedence } };
}

/**
 * Exact by the table: read forwards taking the smallest index at each tie, so that among all cheapest routes this is the first
 * in the order of the dictionary. Null where the table would be too large.
 */
function heldKarp(trip: RoundTrip): { route: Int32Array; cost: number } | null {
  const table = completions(trip);
  if (table === null) return null;
  const { size, cost } = trip;
  const route = new Int32Array(size);
  let set = 0;
  for (let p = 1; p < size; p += 1) {
    let chosen = -1;
    let least = Infinity;
    for (let next = 1; next < size; next += 1) {
      if (!table.mayCome(set, next)) continue;
      const total = cost[route[p - 1]! * size + next]! + table.rest(set | (1 << (next - 1)), next);
      if (chosen < 0 || total < least) {
        least = total;
        chosen = next;
      }
    }
    route[p] = chosen;
    set |= 1 << (chosen - 1);
  }
  return { route, cost: routeCost(trip, route) };
}
