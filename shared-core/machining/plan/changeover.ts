import type { Micrometres } from '../../length/units.js';
import type { Changeover } from '../../shop/model.js';
import type { SetUp } from '../setup-sheet.js';
import type { Batch } from './batch.js';

/** All that is set on a machine for a set-up, and nothing of what is run on it; plain data. */
export interface Settings extends Pick<
  SetUp,
  'fence' | 'height' | 'stops' | 'extension' | 'depth' | 'thickness' | 'through'
> {
  readonly machine: string;
  /** Heads with the same body are one machine. */
  readonly body: string;
  /** The diameter in every spindle, head by head; 0 where there is no bit. */
  readonly bits: readonly Micrometres[];
}

/** What a batch sets. */
export function settingsOf({
  machine,
  load,
  fence,
  height,
  stops,
  extension,
  depth,
  thickness,
  through,
}: Batch): Settings {
  const { name, body } = machine;
  return { machine: name, body, bits: load.wanted, fence, height, stops, extension, depth, thickness, through };
}

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
export function changesBetween(before: Settings | null, after: Settings): Changes {
  const sameMachine = before !== null && before.machine === after.machine;
  const turnHead = before !== null && !sameMachine && before.body === after.body;
  const stood = sameMachine ? before : null;
  const stops = after.stops
    .filter((stop) => !stood?.stops.some((s) => s.name === stop.name && s.position === stop.position))
    .map((stop) => stop.name);
  const fences =
    after.fence.filter((place, head) => stood?.fence[head] !== place).length +
    Number(after.height !== null && stood?.height !== after.height);
  // A level head carries the same spindles as the upright one, so bits stay in it when it turns.
  const loaded = sameMachine || turnHead ? before.bits : [];
  let bits = 0;
  after.bits.forEach((diameter, place) => {
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
