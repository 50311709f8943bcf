import type { Changeover } from '../../shop/model.js';
import { LARGEST_TABLE, orderByChangeover, orderInWindows, type ChangeoverOrder } from '../order/index.js';
import type { SetUp } from '../setup-sheet.js';
import { changeoverTime, changesBetween, settingsOf, type Changes, type Settings } from './changeover.js';
import { leastBatches } from './group.js';
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
  /** A bound on their number: the strokes as they are split, under the fences that they are split for, need at least so many. */
  readonly leastSetUps: number;
  /**
   * Seconds of changeover in all, and a bound that no order of these set-ups can beat that goes to each machine once;
   * `proven` where they are equal.
   */
  readonly seconds: number;
  readonly leastSeconds: number;
  readonly proven: boolean;
}

/** What the order of set-ups hangs on; plain data. */
export interface OrderTask {
  readonly setUps: readonly Settings[];
  readonly times: Changeover;
  /** Pairs of set-ups in which the second moves a panel along on holes that the first bores. */
  readonly before: readonly (readonly [number, number])[];
}

/** What has to be known to put the set-ups of a job in order. */
export function orderTask(sheets: readonly Sheet[], times: Changeover): OrderTask {
  const batches = sheets.map(({ batch }) => batch);
  return { setUps: batches.map(settingsOf), times, before: batchesBefore(batches) };
}

/**
 * The order to run with the least changeover time among those that go to each machine once, bare at first, and run all its
 * set-ups before the next. What it costs to come to another machine then depends only on the set-up that is run first there,
 * so each machine's order is a problem of its own: exact for few set-ups, with a proven bound for many. Same task, same
 * order. Takes a second or two for hundreds on one machine.
 */
export function bestOrder({ setUps, times, before }: OrderTask): SetUpOrder {
  const order: number[] = [];
  let seconds = 0;
  let lowerBound = 0;
  for (const group of groupBy(setUps.keys(), (index) => setUps[index]?.body).values()) {
    const place = new Map(group.map((index, inGroup) => [index, inGroup]));
    const found = orderOnOne({
      setUps: group.flatMap((index) => setUps[index] ?? []),
      times,
      before: before.flatMap(([first, then]): [number, number][] => {
        const [i, j] = [place.get(first), place.get(then)];
        return i === undefined || j === undefined ? [] : [[i, j]];
      }),
    });
    seconds += found.cost;
    lowerBound += found.lowerBound;
    order.push(...found.order.map((inGroup) => group[inGroup] ?? 0));
  }
  return { order, cost: seconds, lowerBound, proven: seconds === lowerBound };
}

/** The order of the set-ups on one machine. */
function orderOnOne({ setUps, times, before }: OrderTask): Pick<SetUpOrder, 'order' | 'cost' | 'lowerBound'> {
  const seconds = (from: Settings | null, to: Settings): number => changeoverTime(changesBetween(from, to), times);
  const size = setUps.length;
  const start = (first: number): number => seconds(null, setUps[first]!);
  const cost = (from: number, to: number): number => (from === to ? 0 : seconds(setUps[from]!, setUps[to]!));
  const found =
    size > LARGEST_TABLE
      ? orderInWindows({ size, start, cost, before })
      : orderByChangeover(
          setUps.map((_, from) => setUps.map((_to, to) => cost(from, to))),
          { start: setUps.map((_, first) => start(first)), before },
        );
  if (found !== null && 'order' in found) return found;
  // Times that nothing can be summed with: the set-ups as they come, of which nothing is claimed.
  const order = [...setUps.keys()];
  return {
    order,
    cost: order.reduce((sum, to) => sum + (to === 0 ? start(to) : cost(to - 1, to)), 0),
    lowerBound: 0,
  };
}

/** An order of set-ups as indexes of their list, with its seconds and a bound that no order can beat. */
export type SetUpOrder = Omit<ChangeoverOrder, 'kind'>;

/** Puts the set-ups of a job into the best order by the shop's own times. Same sheets, same plan. */
export function orderSetUps(sheets: readonly Sheet[], times: Changeover): Plan {
  return planInOrder(sheets, times, bestOrder(orderTask(sheets, times)));
}

/** The plan that runs the set-ups in an order. */
export function planInOrder(sheets: readonly Sheet[], times: Changeover, ordered: SetUpOrder): Plan {
  let before: Settings | null = null;
  const setUps: PlannedSetUp[] = [];
  for (const index of ordered.order) {
    const sheet = sheets[index];
    if (!sheet) continue;
    const settings = settingsOf(sheet.batch);
    const changes = changesBetween(before, settings);
    setUps.push({
      setUp: sheet.setUp,
      changes,
      seconds: changeoverTime(changes, times),
      strokes: sheet.setUp.runs.reduce((sum, run) => sum + run.pieces * run.steps.length, 0),
    });
    before = settings;
  }
  return {
    setUps,
    leastSetUps: leastBatches(sheets.map(({ batch }) => batch)),
    seconds: ordered.cost,
    leastSeconds: ordered.lowerBound,
    proven: ordered.proven,
  };
}
