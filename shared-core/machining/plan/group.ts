import type { Derived } from '../../derived/derived.js';
import type { Steps } from '../../derived/steps.js';
import type { Stop } from '../../shop/model.js';
import { fewest } from './fewest.js';
import { emptyBatch, join, stopsWith, thicknessFor, type Batch, type Chosen } from './batch.js';
import type { Operation, Way } from './operation.js';
import { canRun, precedentsOf, type Precedents } from './pins.js';

/**
 * Sorts operations into few batches. Operations that share machine, fence, height, depth and what it is set for may share a
 * batch when their bits go together and the shop has the stops. First-fit by falling size, a way that meets a stop already set
 * preferred, so that left and right panels end up on mirrored stops of one set-up; a batch begins with the best way of its
 * first operation, or, where fewer batches come of that, with the last. Where a bound leaves room for fewer, they are searched
 * for, to the end where there are few operations. No batches wait for each other's holes.
 */
export function* groupOperations(operations: readonly Operation[], derived: Derived): Steps<Batch[]> {
  const likeness = (operation: Operation): string => derived.get(asked, operation).likeness;
  const batches: Batch[] = [];
  for (const { group, alike } of yield* sortedByWork(operations, derived)) {
    const size = (o: Operation): number => o.ways[0]?.strokes[0]?.wanted.length ?? 0;
    const ordered = [...alike.values()]
      .flatMap(([operation], index) => (operation ? [{ operation, index }] : []))
      .sort((a, b) => size(b.operation) - size(a.operation) || a.index - b.index);
    const representatives = ordered.map(({ operation }) => operation);
    const precedents = precedentsOf(group, (operation) => alike.get(likeness(operation))?.[0] ?? operation);
    const { batches: found, least } = yield* sortedAsBefore(
      { operations: representatives, precedents },
      likeness,
      derived,
    );
    const among = { least };
    batches.push(...found.map((batch) => withAll({ ...batch, among }, likeness, alike)));
    yield;
  }
  return batches;
}

/** Operations that may share set-ups as far as the settings go, in the order of the job. */
interface Settled {
  readonly group: Operation[];
  /** By likeness: a job repeats itself, so that one operation is placed for all that are like it. */
  readonly alike: Map<string, Operation[]>;
}

/** So many operations are looked at in a step. */
const AT_A_TIME = 500;

function* sortedByWork(operations: readonly Operation[], derived: Derived): Steps<Iterable<Settled>> {
  const found = new Map<string, Settled>();
  for (const [index, operation] of operations.entries()) {
    const { settings, likeness } = derived.get(asked, operation);
    let settled = found.get(settings);
    if (settled === undefined) {
      settled = { group: [], alike: new Map() };
      found.set(settings, settled);
    }
    settled.group.push(operation);
    const like = settled.alike.get(likeness);
    if (like === undefined) settled.alike.set(likeness, [operation]);
    else like.push(operation);
    if (index % AT_A_TIME === 0) yield;
  }
  return found.values();
}

/** What an operation asks of its machine, as text. */
const asked = (operation: Operation): { readonly settings: string; readonly likeness: string } => ({
  settings: settingsOf(operation),
  likeness: likenessOf(operation),
});

/** Equal for operations that may share a set-up, as far as its settings go. */
const settingsOf = (one: Operation): string =>
  `${one.machine.kind}|${one.machine.name}|${one.fence.join()}|${one.height}|${one.through ? 'through' : one.depth}|${thicknessFor(one)}`;

/**
 * How few set-ups the work of these batches needs, by the bounds of the groups that they are sorted from.
 * @param others batches that are not run, which those groups had besides
 */
export function leastBatches(batches: readonly Batch[], others: readonly Batch[] = []): number {
  const groups = new Set(batches.map(({ among }) => among));
  return [...groups].reduce(
    (sum, group) => sum + Math.max(1, group.least - others.filter(({ among }) => among === group).length),
    0,
  );
}

/** What is to be sorted, and what must wait for what. */
interface ToSort {
  readonly operations: readonly Operation[];
  readonly precedents: Precedents;
}

interface Sorted {
  readonly batches: readonly Batch[];
  readonly least: number;
}

function* sorted({ operations, precedents }: ToSort): Steps<Sorted> {
  const usual = yield* firstFit(operations, 'best', precedents);
  // One batch cannot become fewer.
  if (usual.length === 1) return { batches: usual, least: 1 };
  const other = yield* firstFit(operations, 'last', precedents);
  const known = other.length < usual.length ? other : usual;
  const few = yield* fewest(operations, known, (batches) => canRun(batches, precedents));
  return { batches: few.batches ?? known, least: few.least };
}

/** How operations were sorted, by their places in the list and those of their ways: it holds for others that ask the same. */
interface SortedByPlace {
  readonly batches: readonly (readonly (readonly [operation: number, way: number])[])[];
  readonly least: number;
}

function* sortedByPlace(toSort: ToSort): Steps<SortedByPlace> {
  const { batches, least } = yield* sorted(toSort);
  const places = new Map(toSort.operations.map((operation, index) => [operation, index]));
  return {
    batches: batches.map(({ chosen }) =>
      chosen.map(({ operation, way }) => [places.get(operation) ?? 0, operation.ways.indexOf(way)] as const),
    ),
    least,
  };
}

type Likeness = (operation: Operation) => string;

/** Sorted once for operations that ask the same of machines with the same stops: an edit changes few groups of a job. */
function* sortedAsBefore(toSort: ToSort, likeness: Likeness, derived: Derived): Steps<Sorted> {
  const { operations } = toSort;
  const { batches, least } = yield* derived.answerInSteps(sortedByPlace, toSort, questionOf(toSort, likeness));
  const joined = batches.map((chosen) =>
    chosen.reduce<Batch | null>((batch, [index, nth]) => {
      const operation = operations[index];
      const way = operation?.ways[nth];
      return operation && way ? join(batch ?? emptyBatch(operation), operation, way) : batch;
    }, null),
  );
  return { batches: joined.filter((batch) => batch !== null), least };
}

/** Equal where the answer is: what the operations ask, what must wait for what, and what the machine has to give. */
function questionOf({ operations, precedents }: ToSort, likeness: Likeness): string {
  const machine = operations[0]?.machine;
  const places = new Map(operations.map((operation, index) => [operation, index]));
  return JSON.stringify([
    machine && { ...machine, name: '', place: null, body: '', stops: machine.stops.map(stopLikeness), clamps: [] },
    operations.map((operation) => [thicknessFor(operation), likeness(operation)]),
    [...precedents].map(([later, earlier]) => [places.get(later), [...earlier].map((one) => places.get(one))]),
  ]);
}

const stopLikeness = ({ side, range, lowers }: Stop): readonly unknown[] => [side, range.min, range.max, lowers];

/** @param beginning with which of an operation's ways a new batch begins */
function* firstFit(
  operations: readonly Operation[],
  beginning: 'best' | 'last',
  precedents: Precedents,
): Steps<Batch[]> {
  const open: Batch[] = [];
  for (const operation of operations) {
    yield;
    const placed = best(open, operation, precedents);
    if (placed) open[placed.index] = placed.batch;
    else {
      const ways = beginning === 'best' ? operation.ways : operation.ways.toReversed();
      const batch = ways.map((way) => join(emptyBatch(operation), operation, way)).find((b) => b !== null);
      if (batch) open.push(batch);
    }
  }
  return open;
}

/** Equal for operations that ask the same of the machine's settings, stops and spindles in every one of their ways. */
function likenessOf({ depth, ways }: Operation): string {
  return `${depth}#${ways.map(wayLikeness).join('#')}`;
}

const wayLikeness = ({ down, edge, end, side, position, extent, load, strokes }: Way): string =>
  `${down}|${edge}|${end}|${side}|${position}|${extent}|${load.wanted.join()}|${load.limit.join()}|${strokes.map(({ moved }) => moved).join()}`;

/** A batch of operations, one of each likeness, with all that are like them. */
function withAll(batch: Batch, likeness: Likeness, alike: ReadonlyMap<string, readonly Operation[]>): Batch {
  const chosen: Chosen[] = [];
  for (const { operation, way } of batch.chosen) {
    const index = operation.ways.indexOf(way);
    for (const like of alike.get(likeness(operation)) ?? []) {
      const same = like.ways[index];
      if (same) chosen.push({ operation: like, way: same });
    }
  }
  return { ...batch, chosen };
}

/** The open batch, and the way, that takes an operation with the fewest further stops and no extension. */
function best(
  open: readonly Batch[],
  operation: Operation,
  precedents: Precedents,
): { index: number; batch: Batch } | null {
  let found: { index: number; batch: Batch } | null = null;
  let least = Infinity;
  for (const [index, batch] of open.entries()) {
    for (const way of operation.ways) {
      const plan = stopsWith(batch, way);
      if (plan === null) continue;
      const price =
        (plan.stops.length - batch.stops.length) * 2 +
        Number(plan.extension !== batch.extension) * 8 +
        Number(way !== operation.ways[0]);
      const joined = price < least ? join(batch, operation, way) : null;
      if (joined && canRun(open.with(index, joined), precedents)) {
        least = price;
        found = { index, batch: joined };
      }
      if (least === 0) return found;
    }
  }
  return found;
}
