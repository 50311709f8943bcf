import type { Changeover } from '../../shop/model.js';
import { orderByChangeover, type ChangeoverOrder } from '../order/index.js';
import type { LoadedSpindle, Run, SetUp, Step } from '../setup-sheet.js';
import { changeoverTime, changesBetween, type Changes } from './changeover.js';
import { groupOperations, type Batch, type Chosen } from './group.js';
import { placeAt } from './load.js';
import { groupBy } from './numbers.js';
import type { Operation, Unreachable } from './operation.js';
import type { CarcassOperations } from './operations.js';
import { stopOf } from './stops.js';

/** A set-up in its place in the order, with what is changed to come to it. */
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
  readonly unreachable: readonly (Unreachable & { readonly carcass: number })[];
}

/**
 * Puts the operations of all carcasses of a job into set-ups and the set-ups into the order with the least changeover time:
 * exact for few set-ups, with a proven bound for many. Same operations, same plan.
 */
export function planJob(carcasses: readonly CarcassOperations[], times: Changeover): Plan {
  const batches = groupOperations(carcasses.flatMap((c) => c.operations));
  const cost = batches.map((from) =>
    batches.map((to) => (from === to ? 0 : changeoverTime(changesBetween(from, to), times))),
  );
  const start = batches.map((to) => changeoverTime(changesBetween(null, to), times));
  const ordered = inOrder(cost, start);
  const rank = new Map<string, number>();
  carcasses.flatMap((c) => c.operations).forEach((operation) => {
    const key = runKey(operation);
    if (!rank.has(key)) rank.set(key, rank.size);
  });
  const numbers = new Map<string, number>();
  const setUps: PlannedSetUp[] = [];
  let before: Batch | null = null;
  for (const index of ordered.order) {
    const batch = batches[index];
    if (!batch) continue;
    const number = (numbers.get(batch.machine.name) ?? 0) + 1;
    numbers.set(batch.machine.name, number);
    const changes = changesBetween(before, batch);
    const runs = runsOf(batch, rank);
    setUps.push({
      setUp: {
        id: `${batch.machine.name}-${number}`,
        machine: batch.machine,
        fence: batch.fence,
        height: batch.height,
        stops: batch.stops,
        extension: batch.extension,
        depth: batch.depth,
        through: batch.through,
        runs,
      },
      changes,
      seconds: changeoverTime(changes, times),
      strokes: runs.reduce((sum, run) => sum + run.steps.length, 0),
    });
    before = batch;
  }
  return {
    setUps,
    seconds: ordered.cost,
    leastSeconds: ordered.lowerBound,
    proven: ordered.proven,
    unreachable: carcasses.flatMap((c, carcass) => c.unreachable.map((u) => ({ ...u, carcass }))),
  };
}

/** Past the number of set-ups that can be ordered, they run as they come, and only the trivial bound holds. */
function inOrder(cost: readonly (readonly number[])[], start: readonly number[]): Omit<ChangeoverOrder, 'kind'> {
  const ordered = orderByChangeover(cost, { start });
  if (ordered.kind === 'order') return ordered;
  const order = start.map((_, index) => index);
  const seconds = order.reduce((sum, to) => sum + (to === 0 ? (start[0] ?? 0) : (cost[to - 1]?.[to] ?? 0)), 0);
  return { order, cost: seconds, lowerBound: 0, proven: false };
}

const runKey = (operation: Operation): string => `${operation.carcass}\n${operation.panel}`;

function runsOf(batch: Batch, rank: ReadonlyMap<string, number>): Run[] {
  const loaded: LoadedSpindle[] = [];
  batch.load.wanted.forEach((diameter, index) => {
    if (diameter > 0) loaded.push({ ...placeAt(batch.machine, index), diameter });
  });
  const panels = groupBy(batch.chosen, ({ operation }) => runKey(operation));
  return [...panels]
    .sort(([a], [b]) => (rank.get(a) ?? 0) - (rank.get(b) ?? 0))
    .flatMap(([, chosen]) => {
      const first = chosen[0]?.operation;
      return first ? [{ carcass: first.carcass, panel: first.panel, steps: chosen.flatMap((c) => stepsOf(batch, c, loaded)) }] : [];
    });
}

function stepsOf(batch: Batch, { way }: Chosen, spindles: readonly LoadedSpindle[]): Step[] {
  const stop = stopOf(batch.stops, way);
  return way.strokes.map((stroke) => ({
    down: way.down,
    edge: 'front',
    end: way.end,
    stop: stop?.name ?? '',
    moved: stroke.moved,
    spindles,
    holes: stroke.wanted.map(({ bore }) => ({
      bore: bore.id,
      face: bore.face,
      u: bore.u,
      v: bore.v,
      diameter: bore.diameter,
      depth: bore.depth,
      through: bore.through,
    })),
  }));
}
