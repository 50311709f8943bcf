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

/**
 * Puts the set-ups of a job into the order with the least changeover time by the shop's own times, beginning with bare
 * machines: exact for few set-ups, with a proven bound for many. Same sheets, same plan.
 */
export function orderSetUps(sheets: readonly Sheet[], times: Changeover): Plan {
  const seconds = (from: Sheet | null, to: Sheet): number =>
    from === to ? 0 : changeoverTime(changesBetween(from && from.batch, to.batch), times);
  const start = sheets.map((to) => seconds(null, to));
  const ordered = inOrder(
    sheets.map((from) => sheets.map((to) => seconds(from, to))),
    start,
  );
  let before: Sheet | null = null;
  const setUps: PlannedSetUp[] = [];
  for (const index of ordered.order) {
    const sheet = sheets[index];
    if (!sheet) continue;
    setUps.push({
      setUp: sheet.setUp,
      changes: changesBetween(before && before.batch, sheet.batch),
      seconds: seconds(before, sheet),
      strokes: sheet.setUp.runs.reduce((sum, run) => sum + run.steps.length, 0),
    });
    before = sheet;
  }
  return { setUps, seconds: ordered.cost, leastSeconds: ordered.lowerBound, proven: ordered.proven };
}

/** Past the number of set-ups that can be ordered, they run as they come, and only the trivial bound holds. */
function inOrder(cost: readonly (readonly number[])[], start: readonly number[]): Omit<ChangeoverOrder, 'kind'> {
  const ordered = orderByChangeover(cost, { start });
  if (ordered.kind === 'order') return ordered;
  const order = start.map((_, index) => index);
  const seconds = order.reduce((sum, to) => sum + (to === 0 ? (start[0] ?? 0) : (cost[to - 1]?.[to] ?? 0)), 0);
  return { order, cost: seconds, lowerBound: 0, proven: false };
}
