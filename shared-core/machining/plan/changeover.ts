import type { Changeover } from '../../shop/model.js';
import type { Batch } from './batch.js';

/** What is changed on the machines between two set-ups. */
export interface Changes {
  readonly machine: boolean;
  readonly turnHead: boolean;
  /** Names of stops to set. */
  readonly stops: readonly string[];
  readonly fences: number;
  /** Bits to take out and to put in. */
  readonly bits: number;
  readonly depth: boolean;
  readonly extension: boolean;
}

/**
 * What must be changed to go from one set-up to another (from a bare machine where `before` is null). Another machine is
 * taken to be bare too, so this holds for orders that go to each machine once; on the other head of one body the head is
 * turned first, and its stops and fence are set anew.
 */
export function changesBetween(before: Batch | null, after: Batch): Changes {
  const sameMachine = before !== null && before.machine.name === after.machine.name;
  const turnHead = before !== null && !sameMachine && before.machine.body === after.machine.body;
  const stood = sameMachine ? before : null;
  const stops = after.stops
    .filter((stop) => !stood?.stops.some((s) => s.name === stop.name && s.position === stop.position))
    .map((stop) => stop.name);
  const fences =
    after.fence.filter((place, head) => stood?.fence[head] !== place).length +
    Number(after.height !== null && stood?.height !== after.height);
  // A level head carries the same spindles as the upright one, so bits stay in it when it turns.
  const loaded = sameMachine || turnHead ? before.load.wanted : [];
  let bits = 0;
  after.load.wanted.forEach((diameter, place) => {
    const had = loaded[place] ?? 0;
    if (had !== diameter) bits += Number(had > 0) + Number(diameter > 0);
  });
  return {
    machine: !sameMachine && !turnHead,
    turnHead,
    stops,
    fences,
    bits,
    depth: stood?.depth !== after.depth || stood.through !== after.through || stood.thickness !== after.thickness,
    extension: after.extension !== (stood?.extension ?? false),
  };
}

/** Seconds, by the shop's own times. */
export function changeoverTime(changes: Changes, times: Changeover): number {
  return Math.round(
    Number(changes.machine) * times.machine +
      Number(changes.turnHead) * times.turnHead +
      changes.stops.length * times.stop +
      changes.fences * times.fence +
      changes.bits * times.bit +
      Number(changes.depth) * times.depth +
      Number(changes.extension) * times.extension,
  );
}
