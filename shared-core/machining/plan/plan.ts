import type { Changeover } from '../../shop/model.js';
import { orderWithState, type StatefulOrder } from '../order/index.js';
import type { Run, SetStop, SetUp } from '../set-up.js';
import {
  changeoverTime,
  changesBetween,
  foundBy,
  left,
  settingsOf,
  type Changes,
  type Settings,
} from './changeover.js';
import { leastBatches } from './group.js';
import { groupBy } from './numbers.js';
import { batchesBefore, lettering, type BatchedSetUp } from './set-ups.js';

/** A set-up in its place in the order to run, with what is changed to come to it. */
export interface PlannedSetUp {
  readonly setUp: SetUp;
  /** See `BatchedSetUp`. */
  readonly refused: readonly Run[];
  readonly changes: Changes;
  /** How its machine stands as one comes to it, on whichever head; null where it is bare, or nobody knows. */
  readonly found: Settings | null;
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
   * Seconds of changeover in all, of what a hand has to do: what stands right from any set-up before is not set again. And a
   * bound that no order of these set-ups can beat that goes to each machine once; `proven` where they are equal.
   */
  readonly seconds: number;
  readonly leastSeconds: number;
  readonly proven: boolean;
  /** True where no order that goes to each head of each machine once takes less. */
  readonly provenOnce: boolean;
}

/** What the order of set-ups hangs on; plain data. */
export interface OrderTask {
  readonly setUps: readonly Settings[];
  readonly times: Changeover;
  /** Pairs of set-ups in which the second moves a panel along on holes that the first bores. */
  readonly before: readonly (readonly [number, number])[];
}

/** What has to be known to put the set-ups of a job in order. */
export function orderTask(batched: readonly BatchedSetUp[], times: Changeover): OrderTask {
  const batches = batched.map(({ batch }) => batch);
  return { setUps: batches.map(settingsOf), times, before: batchesBefore(batches) };
}

/**
 * The order to run with the least changeover time among those that go to each machine once, as it stands when the job begins, and run all its
 * set-ups before the next. What it costs to come to another machine then depends only on the set-up that is run first there,
 * so each machine's order is a problem of its own: exact for few set-ups, with a proven bound for many. Same task, same
 * order. Takes a second or two for hundreds on one machine.
 */
export function bestOrder({ setUps, times, before }: OrderTask): SetUpOrder {
  const order: number[] = [];
  let seconds = 0;
  let lowerBound = 0;
  let provenOnce = true;
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
    provenOnce &&= found.bestInStages;
    order.push(...found.order.map((inGroup) => group[inGroup] ?? 0));
  }
  return { order, cost: seconds, lowerBound, proven: seconds === lowerBound, provenOnce };
}

/** The order of the set-ups on one machine. */
function orderOnOne({ setUps, times, before }: OrderTask): StatefulOrder {
  const seconds = (from: Settings | null, to: Settings): number => changeoverTime(changesBetween(from, to), times);
  const standing = standingPlaces(setUps);
  const shared = sharedPlaces(setUps, standing);
  const mayStand = (key: string): boolean => shared.has(key) || standing.has(key);
  const step = (state: Settings | null, to: number): { cost: number; state: Settings } => ({
    cost: seconds(state, setUps[to]!),
    state: left(state, setUps[to]!),
  });
  const found = orderWithState<Settings>({
    size: setUps.length,
    step,
    key: ({ machine, stops, fence }) =>
      `${machine} ${fence.join()} ${stops
        .map(({ name, position }) => `${name}:${position}`)
        .sort()
        .join()}`,
    least: remembering((from, to) => {
      const changes = changesBetween(
        from === null ? null : hopedBetween(setUps[from]!, setUps[to]!, mayStand),
        setUps[to]!,
      );
      return { cost: changeoverTime(changes, times), dues: duesIn(changes, setUps[to]!, shared) };
    }),
    most: (from, to) => seconds(setUps[from]!, setUps[to]!),
    dues: [...shared.values()].map(({ kind, members }) => ({ cost: Math.floor(times[kind]), members })),
    stage: (index) => setUps[index]!.machine,
    before,
  });
  if (found !== null) return found;
  // Times that nothing can be summed with: the set-ups as they come, of which nothing is claimed.
  return {
    order: [...setUps.keys()],
    cost: secondsAsTheyCome({ setUps, times }),
    lowerBound: 0,
    bestInStages: false,
  };
}

/** Of more set-ups than this the order in which they come has to do: an editor asks at every key. */
const MOST_ORDERED = 8;

/**
 * Seconds of changeover of a few set-ups in their best order, of more as they come.
 * @param among the most that they are compared with, so that both are taken alike
 */
export function secondsToChange(
  batched: readonly BatchedSetUp[],
  times: Changeover,
  among: number = batched.length,
): number {
  const task = orderTask(batched, times);
  return Math.max(batched.length, among) > MOST_ORDERED ? secondsAsTheyCome(task) : bestOrder(task).cost;
}

/** Seconds of changeover where set-ups are run in the order in which they come. */
function secondsAsTheyCome({ setUps, times }: Pick<OrderTask, 'setUps' | 'times'>): number {
  let stands: Settings | null = null;
  let seconds = 0;
  for (const setUp of setUps) {
    seconds += changeoverTime(changesBetween(stands, setUp), times);
    stands = left(stands, setUp);
  }
  return seconds;
}

/**
 * A place of a stop or a head that several set-ups on one head want, and that a set-up which leaves that stop or head alone may
 * keep from one to the next.
 */
interface SharedPlace {
  readonly index: number;
  readonly kind: 'stop' | 'fence';
  readonly members: readonly number[];
}

const stopKey = ({ machine }: Settings, { name, position }: SetStop): string => `stop|${machine}|${name}|${position}`;
const headKey = ({ machine, fence }: Settings, head: number): string => `fence|${machine}|${head}|${fence[head]}`;

/** The places that stops and heads have when the job begins: any set-up may find them so, and nobody pays for them. */
function standingPlaces(setUps: readonly Settings[]): ReadonlySet<string> {
  return new Set(
    setUps.flatMap(({ stands }) =>
      stands === null
        ? []
        : [
            ...stands.stops.map((stop) => stopKey(stands, stop)),
            ...[...stands.fence.keys()].map((head) => headKey(stands, head)),
          ],
    ),
  );
}

function sharedPlaces(setUps: readonly Settings[], standing: ReadonlySet<string>): ReadonlyMap<string, SharedPlace> {
  const onHead = new Map<string, number>();
  const wanted = new Map<string, { kind: SharedPlace['kind']; thing: string; machine: string; members: number[] }>();
  const things = new Map<string, number>();
  const count = (key: string, counts: Map<string, number>): void => void counts.set(key, (counts.get(key) ?? 0) + 1);
  setUps.forEach((setUp, index) => {
    const { machine } = setUp;
    count(machine, onHead);
    const want = (kind: SharedPlace['kind'], key: string, name: string | number): void => {
      const thing = `${kind}|${machine}|${name}`;
      count(thing, things);
      const known = wanted.get(key);
      if (known) known.members.push(index);
      else wanted.set(key, { kind, thing, machine, members: [index] });
    };
    for (const stop of setUp.stops) want('stop', stopKey(setUp, stop), stop.name);
    for (const head of setUp.fence.keys()) want('fence', headKey(setUp, head), head);
  });
  const several = [...wanted].filter(
    ([key, { thing, machine, members }]) =>
      members.length > 1 && things.get(thing)! < onHead.get(machine)! && !standing.has(key),
  );
  return new Map(several.map(([key, { kind, members }], index) => [key, { index, kind, members }]));
}

/**
 * The best that can stand after one set-up where another comes next: besides what the one sets, all that the other wants and
 * that some third set-up may have left.
 */
function hopedBetween(one: Settings, other: Settings, mayStand: (key: string) => boolean): Settings {
  if (one.machine !== other.machine) return one;
  const leftAlone = other.stops.filter(
    (stop) => mayStand(stopKey(other, stop)) && one.stops.every(({ name }) => name !== stop.name),
  );
  const hoped = leftAlone.length === 0 ? one : left({ ...one, stops: leftAlone }, one);
  // Heads beyond those that are set may stand anywhere, whatever room there is: that can only make it cheaper.
  const fence = other.fence.map((place, head) => one.fence[head] ?? (mayStand(headKey(other, head)) ? place : NOWHERE));
  return { ...hoped, fence };
}

/** The shared places that some changes set. */
function duesIn(changes: Changes, setUp: Settings, shared: ReadonlyMap<string, SharedPlace>): number[] {
  const keys = [
    ...setUp.stops.flatMap((stop) => (changes.stops.includes(stop.name) ? [stopKey(setUp, stop)] : [])),
    ...changes.fences.map((head) => headKey(setUp, head)),
  ];
  return keys.flatMap((key) => shared.get(key)?.index ?? []);
}

/** As many steps are remembered: the search asks for those between a few set-ups over and over. */
const MOST_REMEMBERED = 200;

function remembering<T>(
  ask: (from: number | null, to: number) => T,
  size = MOST_REMEMBERED,
): (from: number | null, to: number) => T {
  const known = new Map<number, T>();
  return (from, to) => {
    if (to >= size || (from ?? 0) >= size) return ask(from, to);
    const key = ((from ?? -1) + 1) * size + to;
    const before = known.get(key);
    if (before !== undefined) return before;
    const answer = ask(from, to);
    known.set(key, answer);
    return answer;
  };
}

/** The place of a head that nobody has set. */
const NOWHERE = -1;

/** An order of set-ups, with its seconds and a bound that no order can beat. */
export interface SetUpOrder {
  /** Each index of their list once, in the order to run. */
  readonly order: readonly number[];
  readonly cost: number;
  readonly lowerBound: number;
  /** True where no order costs less. */
  readonly proven: boolean;
  /** True where no order that goes to each head once, too, costs less. */
  readonly provenOnce: boolean;
}

/** Puts the set-ups of a job into the best order by the shop's own times. Same set-ups, same plan. */
export function orderSetUps(batched: readonly BatchedSetUp[], times: Changeover): Plan {
  return planInOrder(batched, times, bestOrder(orderTask(batched, times)));
}

/** The plan that runs the set-ups in an order, those of each machine lettered anew in it. */
export function planInOrder(
  batched: readonly BatchedSetUp[],
  times: Changeover,
  ordered: SetUpOrder,
  notRun: readonly BatchedSetUp[] = [],
): Plan {
  let stands: Settings | null = null;
  const setUps: PlannedSetUp[] = [];
  const nameOf = lettering();
  for (const index of ordered.order) {
    const own = batched[index];
    if (!own) continue;
    const settings = settingsOf(own.batch);
    const changes = changesBetween(stands, settings);
    setUps.push({
      setUp: { ...own.setUp, id: nameOf(own.setUp.machine.name) },
      refused: own.refused,
      changes,
      found: foundBy(stands, settings),
      seconds: changeoverTime(changes, times),
      strokes: own.setUp.runs.reduce((sum, run) => sum + run.pieces * run.steps.length, 0),
    });
    stands = left(stands, settings);
  }
  return {
    setUps,
    leastSetUps: leastBatches(
      batched.map(({ batch }) => batch),
      notRun.map(({ batch }) => batch),
    ),
    seconds: ordered.cost,
    leastSeconds: ordered.lowerBound,
    proven: ordered.proven,
    provenOnce: ordered.provenOnce,
  };
}
