import { Derived } from '../../derived/derived.js';
import { inOneGo, type Steps } from '../../derived/steps.js';
import type { LoadedSpindle, PlannedHole, Run, SetUp, Step } from '../set-up.js';
import type { Batch, Chosen } from './batch.js';
import { groupOperations } from './group.js';
import { placeAt } from './load.js';
import type { Operation, PlannedStroke, Way } from './operation.js';
import type { CarcassOperations } from './operations.js';
import { groupsBefore, orderByPairs, precedentsOf } from './pins.js';
import { stopOf } from './stops.js';

/** A set-up with the batch that it was made of. */
export interface BatchedSetUp {
  readonly setUp: SetUp;
  readonly batch: Batch;
  /** What would be run in it too, were it not of panels that must not be bored. */
  readonly refused: readonly Run[];
}

/**
 * The set-ups of a job, in an order that can be run but is not yet the cheapest: named after their machine and lettered in
 * that order, until a plan letters them as they are run.
 * @param derived keeps what an edit of one carcass leaves as it is
 */
export function setUpsOf(carcasses: readonly CarcassOperations[], derived = new Derived()): BatchedSetUp[] {
  return inOneGo(setUpsInSteps(carcasses, derived));
}

/** The same a step at a time: of hundreds of carcasses it takes a while. */
export function* setUpsInSteps(carcasses: readonly CarcassOperations[], derived: Derived): Steps<BatchedSetUp[]> {
  const operations = carcasses.flatMap((carcass) => carcass.operations);
  const batches = inJobOrder(carcasses, yield* groupOperations(operations, derived));
  yield;
  const nameOf = lettering();
  const before = batchesBefore(batches.map(({ batch }) => batch));
  const order = orderByPairs(batches.length, before);
  const setUps: BatchedSetUp[] = [];
  for (const { batch, inOrder } of order.flatMap((index) => batches[index] ?? [])) {
    yield;
    const { machine, fence, height, stops, extension, depth, thickness, through } = batch;
    const runs = runsOf(batch, inOrder, derived);
    const id = nameOf(machine.name);
    const setUp = { id, machine, fence, height, stops, extension, depth, thickness, through, runs };
    setUps.push({ setUp, batch, refused: [] });
  }
  return setUps;
}

/** The same set-up for the other panels alone, without the stops that none of them comes to; itself where none is refused. */
export function refusing(one: BatchedSetUp, isRefused: (run: Run) => boolean): BatchedSetUp {
  const refused = one.setUp.runs.filter(isRefused);
  if (refused.length === 0) return one;
  const runs = one.setUp.runs.filter((run) => !isRefused(run));
  const used = new Set(runs.flatMap(({ steps }) => steps.map(({ stop }) => stop)));
  const stops = one.batch.stops.filter(({ name }) => used.has(name));
  return { setUp: { ...one.setUp, stops, runs }, batch: { ...one.batch, stops }, refused };
}

/** A batch with what it holds in the order of the job, and how many pieces of each. */
interface InOrder {
  readonly batch: Batch;
  readonly inOrder: readonly (Chosen & { readonly pieces: number })[];
}

/** Batches in the order in which the carcasses first need them. */
function inJobOrder(carcasses: readonly CarcassOperations[], batches: readonly Batch[]): readonly InOrder[] {
  const placed = new Map<Operation, { readonly batch: Batch; readonly way: Way }>();
  for (const batch of batches) for (const { operation, way } of batch.chosen) placed.set(operation, { batch, way });
  const inOrder = new Map<Batch, InOrder['inOrder'][number][]>();
  for (const { operations, count } of carcasses) {
    for (const operation of operations) {
      const place = placed.get(operation);
      if (place === undefined) continue;
      const chosen = inOrder.get(place.batch);
      const one = { operation, way: place.way, pieces: count };
      if (chosen === undefined) inOrder.set(place.batch, [one]);
      else chosen.push(one);
    }
  }
  return [...inOrder].map(([batch, chosen]) => ({ batch, inOrder: chosen }));
}

/** Pairs of batches, by their indexes, in which the second moves a panel along on holes that the first bores. */
export function batchesBefore(batches: readonly Batch[]): [number, number][] {
  const operations = batches.flatMap(({ chosen }) => chosen.map(({ operation }) => operation));
  return groupsBefore(
    batches,
    precedentsOf(operations, (operation) => operation),
  );
}

/** Names set-ups after their machines, those of each lettered in the order in which it is asked. */
export function lettering(): (machine: string) => string {
  const counted = new Map<string, number>();
  return (machine) => {
    const number = (counted.get(machine) ?? 0) + 1;
    counted.set(machine, number);
    return `${machine}-${letters(number)}`;
  };
}

/** A, B … Z, AA, AB … */
function letters(number: number): string {
  const last = String.fromCharCode(65 + ((number - 1) % 26));
  return number > 26 ? `${letters(Math.floor((number - 1) / 26))}${last}` : last;
}

/** The panels of a batch in the order of the job, each with its steps. */
function runsOf(batch: Batch, inOrder: InOrder['inOrder'], derived: Derived): Run[] {
  const loaded: LoadedSpindle[] = [];
  batch.load.wanted.forEach((diameter, index) => {
    if (diameter > 0) loaded.push({ ...placeAt(batch.machine, index), diameter });
  });
  const runs: (Run & { readonly steps: Step[] })[] = [];
  for (const { operation, way, pieces } of inOrder) {
    const { carcass, panel } = operation;
    const steps = stepsOf(batch, way, loaded, derived);
    const last = runs.at(-1);
    // The operations of a panel follow each other in its carcass.
    if (last?.panel === panel && last.carcass === carcass) last.steps.push(...steps);
    else runs.push({ carcass, panel, pieces, steps });
  }
  return runs;
}

function stepsOf(batch: Batch, way: Way, spindles: readonly LoadedSpindle[], derived: Derived): Step[] {
  const stop = stopOf(batch.stops, way);
  return way.strokes.map((stroke) => ({
    down: way.down,
    edge: way.edge,
    end: way.end,
    stop: stop?.name ?? '',
    moved: stroke.moved,
    spindles,
    // Strokes outlive the edits of other carcasses, and a job has tens of thousands of holes.
    holes: derived.get(holesOf, stroke),
  }));
}

function holesOf({ wanted }: PlannedStroke): readonly PlannedHole[] {
  return wanted.map(({ bore: { id, face, u, v, diameter, depth, through } }) => ({
    bore: id,
    face,
    u,
    v,
    diameter,
    depth,
    through,
  }));
}
