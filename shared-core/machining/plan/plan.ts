import type { Changeover } from '../../shop/model.js';
import { orderByChangeover, type ChangeoverOrder } from '../order/index.js';
import type { SetUp } from '../setup-sheet.js';
import { changeoverTime, changesBetween, type Changes } from './changeover.js';
import type { Sheet } from './set-ups.js';

/** A set-up in its place in the order to run, with what is changed to come to it. */
export interface PlannedSetUp {
  readonly setUp: SetUp;
  readonly changes: Changes;
  /** Seconds to come to it. */
  readonly seconds: number;
  readonly strokes: number;
}

/** The whole job on the machines. */
export interface Plan {
  readonly setUps: readonly PlannedSetUp[];
  /** Seconds of changeover in all, and a bound that no order of these set-ups can beat; `proven` where they are equal. */
  readonly seconds: number;
  readonly leastSeconds: number;
  readonly proven: boolean;
}

/** Seconds of changeover: from a bare machine to each set-up, and from each to each. */
export interface ChangeoverTable {
  readonly start: readonly number[];
  readonly cost: readonly (readonly number[])[];
}

export function changeoverTable(sheets: readonly Sheet[], times: Changeover): ChangeoverTable {
  return {
    start: sheets.map((to) => secondsBetween(null, to, times)),
    cost: sheets.map((from) => sheets.map((to) => (from === to ? 0 : secondsBetween(from, to, times)))),
  };
}

function secondsBetween(from: Sheet | null, to: Sheet, times: Changeover): number {
  return changeoverTime(changesBetween(from && from.batch, to.batch), times);
}

/**
 * The order to run with the least changeover time, beginning with bare machines: exact for few set-ups, with a proven bound
 * for many. Same table, same order. Takes a second for many.
 */
export function bestOrder({ start, cost }: ChangeoverTable): SetUpOrder {
  const ordered = orderByChangeover(cost, { start });
  if (ordered.kind === 'order') return ordered;
  // Past the number of set-ups that can be ordered they run as they come, and only the trivial bound holds.
  const order = start.map((_, index) => index);
  const seconds = order.reduce((sum, to) => sum + (to === 0 ? (start[0] ?? 0) : (cost[to - 1]?.[to] ?? 0)), 0);
  return { order, cost: seconds, lowerBound: 0, proven: false };
}

/** An order of set-ups as indexes of their list, with its seconds and a bound that no order can beat. */
export type SetUpOrder = Pick<ChangeoverOrder, 'order' | 'cost' | 'lowerBound' | 'proven'>;

/** Puts the set-ups of a job into the best order by the shop's own times. Same sheets, same plan. */
export function orderSetUps(sheets: readonly Sheet[], times: Changeover): Plan {
  return planInOrder(sheets, times, bestOrder(changeoverTable(sheets, times)));
}

/** The plan that runs the set-ups in an order. */
export function planInOrder(sheets: readonly Sheet[], times: Changeover, ordered: SetUpOrder): Plan {
  let before: Sheet | null = null;
  const setUps: PlannedSetUp[] = [];
  for (const index of ordered.order) {
    const sheet = sheets[index];
    if (!sheet) continue;
    setUps.push({
      setUp: sheet.setUp,
      changes: changesBetween(before && before.batch, sheet.batch),
      seconds: secondsBetween(before, sheet, times),
      strokes: sheet.setUp.runs.reduce((sum, run) => sum + run.steps.length, 0),
    });
    before = sheet;
  }
  return { setUps, seconds: ordered.cost, leastSeconds: ordered.lowerBound, proven: ordered.proven };
}
