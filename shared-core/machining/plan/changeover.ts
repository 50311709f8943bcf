import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';
import type { Changeover, Hand } from '../../shop/model.js';
import type { SetStop, SetUp } from '../set-up.js';
import type { Batch } from './batch.js';
import { emptyLoad, placeAt } from './load.js';
import type { BoringMachine } from './operation.js';
import { coveredBy, outward } from './stops.js';

/** All that is set on a machine for a set-up, and of what is run on it only where a stop would be in the way; plain data. */
export interface Settings extends Pick<
  SetUp,
  'fence' | 'height' | 'stops' | 'extension' | 'depth' | 'thickness' | 'through'
> {
  readonly machine: string;
  /** Heads with the same body are one machine. */
  readonly body: string;
  /** For each head the diameter in every spindle of it; 0 where there is no bit. */
  readonly bits: readonly (readonly Micrometres[])[];
  /** The stops of the machine, those of each hand from the spindles outward. */
  readonly rail: readonly RailStop[];
  /** Where panels come to lie: a stop of the hand that stands between two such positions and does not lower is in the way. */
  readonly covered: Readonly<Record<Hand, readonly (readonly [Micrometres, Micrometres])[]>>;
  /** From head to head on the fence; null where there is one. */
  readonly headDistance: Span | null;
  /** How the machine stands when a job begins; null where nobody says, and it is taken to be bare. */
  readonly stands: Settings | null;
}

/** A stop of a machine, on its rail. */
export interface RailStop {
  readonly name: string;
  readonly side: Hand;
  readonly lowers: boolean;
  /** As far out as it can be set without the extension. */
  readonly furthest: Micrometres;
}

const HANDS = ['left', 'right'] as const;

/** What a batch sets. */
export function settingsOf(batch: Batch): Settings {
  const { machine, load, fence, height, stops, extension, depth, thickness, through, chosen } = batch;
  const rail = HANDS.flatMap((side) => outward(machine, side)).map(({ name, side, lowers, range }) => ({
    name,
    side,
    lowers,
    furthest: range.max,
  }));
  const inTheWay = (side: Hand): [Micrometres, Micrometres][] =>
    rail.some((stop) => stop.side === side && !stop.lowers)
      ? joined(chosen.map(({ way }) => coveredBy(machine, way, side)))
      : [];
  return {
    machine: machine.name,
    body: machine.body,
    bits: byHead(machine, load.wanted),
    fence,
    height,
    stops,
    extension,
    depth,
    thickness,
    through,
    rail,
    covered: { left: inTheWay('left'), right: inTheWay('right') },
    headDistance: machine.kind === 'line' ? (machine.headDistance ?? ANY_DISTANCE) : null,
    stands: standingOf(machine, rail),
  };
}

/** What is in the spindles of a machine, told head by head. */
function byHead(machine: BoringMachine, loaded: readonly Micrometres[]): Micrometres[][] {
  const heads: Micrometres[][] = [];
  loaded.forEach((diameter, index) => {
    const { head } = placeAt(machine, index);
    (heads[head] ??= []).push(diameter);
  });
  return heads;
}

/** What is not known to be set: no setting of a set-up is this. */
const UNSET = -1;

const NOTHING_STANDS = { bit: null, spindles: null, fence: null, height: null, depth: null, thickness: null } as const;

/** How a machine stands by the shop file when a job begins; null where that says nothing of it. */
function standingOf(machine: BoringMachine, rail: readonly RailStop[]): Settings | null {
  const { name, body, stands } = machine;
  const stops = machine.stops.flatMap(({ name: stop, side, stands: position }): SetStop[] =>
    position === null ? [] : [{ name: stop, side, position }],
  );
  if (stands === null && stops.length === 0) return null;
  const { bit, spindles, fence, height, depth, thickness } = { ...NOTHING_STANDS, ...stands };
  const isLoaded = (index: number): boolean =>
    spindles === null || spindles.length === 0 || spindles.includes(placeAt(machine, index).spindle + 1);
  return {
    machine: name,
    body,
    bits: byHead(
      machine,
      emptyLoad(machine).wanted.map((_, index) => (bit !== null && isLoaded(index) ? bit : 0)),
    ),
    fence: fence ?? [],
    height: height ?? UNSET,
    stops,
    extension: false,
    depth: depth ?? UNSET,
    thickness,
    through: false,
    rail,
    covered: { left: [], right: [] },
    headDistance: null,
    stands: null,
  };
}

/** How the machine of a set-up stands as one comes to it: as it was left, or as it stands when a job begins; null where it is bare. */
export function foundBy(before: Settings | null, after: Settings): Settings | null {
  return before !== null && before.body === after.body ? before : after.stands;
}

const ANY_DISTANCE: Span = { min: 1, max: Infinity };

/** Open spans with those that overlap made one, ascending. */
function joined(spans: readonly (readonly [Micrometres, Micrometres])[]): [Micrometres, Micrometres][] {
  const made: [Micrometres, Micrometres][] = [];
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    const last = made.at(-1);
    if (last && from < last[1]) last[1] = Math.max(last[1], to);
    else made.push([from, to]);
  }
  return made;
}

/**
 * How a machine stands when a set-up has been run: as the set-up has it, and besides, as it stood before, the stops that it
 * does not name and the heads that it does not set. A stop leaves its place when one of its hand has to pass it, when the
 * extension that it stands on is taken off, and when it stands in the way of a panel and does not lower; a head, when there is
 * no room for it beside those that are set. Turning the head undoes all of it: the stops of the other head stand in their place.
 */
export function left(before: Settings | null, after: Settings): Settings {
  const found = foundBy(before, after);
  if (found === null || found.machine !== after.machine) return after;
  const stay = found.stops.filter((stop) => stays(stop, after));
  const fence = [...after.fence];
  const { headDistance } = after;
  for (const place of headDistance === null ? [] : found.fence.slice(fence.length)) {
    const apart = place - fence.at(-1)!;
    if (apart < headDistance!.min || apart > headDistance!.max) break;
    fence.push(place);
  }
  return stay.length === 0 && fence.length === after.fence.length
    ? after
    : { ...after, stops: [...after.stops, ...stay], fence };
}

/** Whether a stop that stood before stands there still, neither named nor moved aside. */
function stays({ name, side, position }: SetStop, { stops, extension, rail, covered }: Settings): boolean {
  const own = rail.findIndex((stop) => stop.name === name);
  const stop = rail[own];
  if (stop === undefined || stops.some((set) => set.name === name)) return false;
  if (position > stop.furthest && !extension) return false;
  const isPassed = stops.some((set) => {
    const isOuter = own > rail.findIndex((one) => one.name === set.name);
    return set.side === side && (isOuter ? position <= set.position : position >= set.position);
  });
  return !isPassed && (stop.lowers || !covered[side].some(([from, to]) => position > from && position < to));
}

/** What is changed on the machines between two set-ups. */
export interface Changes {
  readonly machine: boolean;
  readonly turnHead: boolean;
  /** Names of stops to set. */
  readonly stops: readonly string[];
  /** Heads whose distance from the fence is set; 0 where a machine has one. */
  readonly fences: readonly number[];
  readonly height: boolean;
  /** Bits to take out and to put in. */
  readonly bits: number;
  readonly depth: boolean;
  readonly extension: boolean;
}

/**
 * What must be changed to come to a set-up from a machine as it stands (where `before` is null, as it stands when a job begins;
 * after one set-up alone, as that has it). So is another machine taken to stand, so this holds for orders that go to each
 * machine once; on the other head of one body the head is turned first, and its stops and fence are set anew.
 */
export function changesBetween(before: Settings | null, after: Settings): Changes {
  const isThere = before !== null && before.body === after.body;
  const found = foundBy(before, after);
  const stood = found?.machine === after.machine ? found : null;
  const turnHead = isThere && stood === null;
  const stops = after.stops
    .filter((stop) => !stood?.stops.some((s) => s.name === stop.name && s.position === stop.position))
    .map((stop) => stop.name);
  const fences = after.fence.flatMap((place, head) => (stood?.fence[head] === place ? [] : [head]));
  // A level head carries the same spindles as the upright one, so bits stay in it when it turns; those that the one has more
  // than the other do not count.
  let bits = 0;
  after.bits.forEach((spindles, head) =>
    spindles.forEach((diameter, spindle) => {
      const had = found?.bits[head]?.[spindle] ?? 0;
      if (had !== diameter) bits += Number(had > 0) + Number(diameter > 0);
    }),
  );
  return {
    machine: !isThere,
    turnHead,
    stops,
    fences,
    height: after.height !== null && stood?.height !== after.height,
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
      (changes.fences.length + Number(changes.height)) * times.fence +
      changes.bits * times.bit +
      Number(changes.depth) * times.depth +
      Number(changes.extension) * times.extension,
  );
}
