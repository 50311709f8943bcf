import type { Changeover } from '../../shop/model.js';
import { orderByChangeover, type ChangeoverOrder } from '../order/index.js';
import type { SetUp } from '../setup-sheet.js';
import { changeoverTime, changesBetween, type Changes } from './changeover.js';
import { groupBy } from './numbers.js';
import { batchesBefore, type Sheet } from './set-ups.js';

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
  /**
   * Seconds of changeover in all, and a bound that no order of these set-ups can beat that goes to each machine once;
   * `proven` where they are equal.
   */
  readonly seconds: number;
  readonly leastSeconds: number;
  readonly proven: boolean;
}

/** What the order of set-ups hangs on; plain data. */
export interface ChangeoverTable {
  /** Seconds from a bare machine to each set-up, and from each to each. */
  readonly start: readonly number[];
  readonly cost: readonly (readonly number[])[];
  /** The machine of each set-up: equal for the heads of one body. */
  readonly machine: readonly string[];
  /** Pairs of set-ups in which the second moves a panel along on holes that the first bores. */
  readonly before: readonly (readonly [number, number])[];
}

/** What it costs, in seconds, to go from each set-up to each other. */
export function changeoverTable(sheets: readonly Sheet[], times: Changeover): ChangeoverTable {
  return {
    start: sheets.map((to) => secondsBetween(null, to, times)),
    cost: sheets.map((from) => sheets.map((to) => (from === to ? 0 : secondsBetween(from, to, times)))),
    machine: sheets.map((sheet) => sheet.batch.machine.body),
    before: batchesBefore(sheets.map(({ batch }) => batch)),
  };
}

function secondsBetween(from: Sheet | null, to: Sheet, times: Changeover): number {
  return changeoverTime(changesBetween(from && from.batch, to.batch), times);
}

/**
 * The order to run with the least changeover time among those that go to each machine once, bare at first, and run all its
 * set-ups before the next. What it costs to come to another machine then depends only on the set-up that is run first there,
 * so each machine's order is a problem of its own: exact for few set-ups, with a proven bound for many. Same table, same
 * order. Takes up to a second for many.
 */
export function bestOrder({ start, cost, machine, before }: ChangeoverTable): SetUpOrder {
  const order: number[] = [];
  let seconds = 0;
  let lowerBound = 0;
  for (const group of groupBy(start.keys(), (index) => machine[index]).values()) {
    const place = new Map(group.map((index, inGroup) => [index, inGroup]));
    const found = orderByChangeover(
      group.map((from) => group.map((to) => cost[from]?.[to] ?? 0)),
      {
        start: group.map((index) => start[index] ?? 0),
        before: before.flatMap(([first, then]): [number, number][] => {
          const [i, j] = [place.get(first), place.get(then)];
          return i === undefined || j === undefined ? [] : [[i, j]];
        }),
      },
    );
    // Past the number of set-ups that can be ordered they run as they come, and only the trivial bound holds.
    const local = found.kind === 'order' ? found.order.map((inGroup) => group[inGroup] ?? 0) : group;
    seconds += local.reduce(
      (sum, to, at) => sum + (at === 0 ? (start[to] ?? 0) : (cost[local[at - 1] ?? 0]?.[to] ?? 0)),
      0,
    );
    lowerBound += found.kind === 'order' ? found.lowerBound : 0;
    order.push(...local);
  }
  return { order, cost: seconds, lowerBound, proven: seconds === lowerBound };
}

/** An order of set-ups as indexes of their list, with its seconds and a bound that no order can beat. */
export type SetUpOrder = Omit<ChangeoverOrder, 'kind'>;

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
