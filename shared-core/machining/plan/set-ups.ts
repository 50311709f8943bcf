import { Derived } from '../../derived/derived.js';
import type { LoadedSpindle, PlannedHole, Run, SetUp, Step } from '../set-up.js';
import type { Batch, Chosen } from './batch.js';
import { groupOperations } from './group.js';
import { placeAt } from './load.js';
import { groupBy } from './numbers.js';
import type { Operation, PlannedStroke } from './operation.js';
import type { CarcassOperations } from './operations.js';
import { groupsBefore, orderByPairs, precedentsOf } from './pins.js';
import { stopOf } from './stops.js';

/** A set-up with the batch that it was made of. */
export interface BatchedSetUp {
  readonly setUp: SetUp;
  readonly batch: Batch;
}

/**
 * The set-ups of a job, in an order that can be run but is not yet the cheapest: named after their machine and lettered
 * in the order in which the carcasses first need them, so that a name stays while its cause stays.
 * @param derived keeps what an edit of one carcass leaves as it is
 */
export function setUpsOf(carcasses: readonly CarcassOperations[], derived = new Derived()): BatchedSetUp[] {
  const operations = carcasses.flatMap((carcass) => carcass.operations);
  const rank = new Map(operations.map((operation, index) => [operation, index]));
  const pieces = new Map(carcasses.flatMap((carcass) => carcass.operations.map((one) => [one, carcass.count])));
  const rankOf = (batch: Batch): number => Math.min(...batch.chosen.map((one) => rank.get(one.operation) ?? 0));
  const counted = new Map<string, number>();
  const batches = groupOperations(operations, derived).sort((a, b) => rankOf(a) - rankOf(b));
  return orderByPairs(batches.length, batchesBefore(batches))
    .flatMap((index) => batches[index] ?? [])
    .map((batch) => {
      const { machine, fence, height, stops, extension, depth, thickness, through } = batch;
      const number = (counted.get(machine.name) ?? 0) + 1;
      counted.set(machine.name, number);
      const runs = runsOf(batch, rank, pieces, derived);
      const id = `${machine.name}-${letters(number)}`;
      return { setUp: { id, machine, fence, height, stops, extension, depth, thickness, through, runs }, batch };
    });
}

/** Pairs of batches, by their indexes, in which the second moves a panel along on holes that the first bores. */
export function batchesBefore(batches: readonly Batch[]): [number, number][] {
  const operations = batches.flatMap(({ chosen }) => chosen.map(({ operation }) => operation));
  return groupsBefore(
    batches,
    precedentsOf(operations, (operation) => operation),
  );
}

/** A, B … Z, AA, AB …: the order to run has the numbers. */
function letters(number: number): string {
  const last = String.fromCharCode(65 + ((number - 1) % 26));
  return number > 26 ? `${letters(Math.floor((number - 1) / 26))}${last}` : last;
}

/** The panels of a batch in the order of the job, each with its steps. */
function runsOf(
  batch: Batch,
  rank: ReadonlyMap<Operation, number>,
  pieces: ReadonlyMap<Operation, number>,
  derived: Derived,
): Run[] {
  const loaded: LoadedSpindle[] = [];
  batch.load.wanted.forEach((diameter, index) => {
    if (diameter > 0) loaded.push({ ...placeAt(batch.machine, index), diameter });
  });
  const inOrder = [...batch.chosen].sort((a, b) => (rank.get(a.operation) ?? 0) - (rank.get(b.operation) ?? 0));
  const panels = groupBy(inOrder, ({ operation }) => `${operation.carcass}\n${operation.panel}`);
  return [...panels.values()].flatMap((chosen) => {
    const [first] = chosen;
    if (!first) return [];
    const { carcass, panel } = first.operation;
    return [
      {
        carcass,
        panel,
        pieces: pieces.get(first.operation) ?? 1,
        steps: chosen.flatMap((one) => stepsOf(batch, one, loaded, derived)),
      },
    ];
  });
}

function stepsOf(batch: Batch, { way }: Chosen, spindles: readonly LoadedSpindle[], derived: Derived): Step[] {
  const stop = stopOf(batch.stops, way);
  return way.strokes.map((stroke) => ({
    down: way.down,
    edge: 'front',
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
