import { evenPlaces } from './even.js';
import type { Pattern } from './pattern.js';
import type { LoadTask, LoadTimes, UsualDepth } from './usual.js';

/** One load of a choice: the depths it serves, and whether their rear rails meet it. */
export interface Part {
  readonly depths: readonly UsualDepth[];
  readonly pattern: Pattern;
  /** True too where there are no rails that could. */
  readonly railsMeet: boolean;
}

/**
 * Seconds that a batch takes with loads, by the shop's own times, of what differs between one choice and another: a dowel for
 * each bore in an end, and the bits changed on either head, going from each load to the one nearest to it.
 */
export function secondsOf(parts: readonly Part[], task: LoadTask, times: LoadTimes): number {
  const bored = parts.flatMap(({ depths, pattern: { load }, railsMeet }) =>
    depths.map((depth): Bored => {
      const within = (room: number): readonly number[] => load.filter((k) => k <= room);
      const [full, rail] = [within(depth.room), within(task.railRoom)];
      return { depth, full, rail, rails: railsMeet ? full : railLine(depth, rail) };
    }),
  );
  return secondsFor(bored, task, times);
}

/** The same where each joint takes its own places. */
export function secondsOfOwn(task: LoadTask, times: LoadTimes): number {
  const rail = evenPlaces(0, Math.max(0, task.railRoom), task.longest);
  const bored = inBatch(task).map((depth): Bored => {
    return { depth, full: evenPlaces(0, depth.room, task.longest), rail, rails: railLine(depth, rail) };
  });
  return secondsFor(bored, task, times);
}

/** Depths of which a batch has some. */
export const inBatch = ({ depths }: LoadTask): readonly UsualDepth[] => depths.filter(({ ends }) => ends.full > 0);

/** What is bored in carcasses of a depth. */
interface Bored {
  readonly depth: UsualDepth;
  /** Places of panels as deep as the carcass, and of one rail. */
  readonly full: readonly number[];
  readonly rail: readonly number[];
  /** Places in a side for both rails. */
  readonly rails: readonly number[];
}

/** The places of a front rail, and of a rear one that gets the same bores. */
const railLine = ({ rearmost }: UsualDepth, rail: readonly number[]): readonly number[] =>
  rearmost === null ? rail : [...rail, ...rail.map((k) => rearmost + k)];

function secondsFor(all: readonly Bored[], task: LoadTask, { bit, fitting }: LoadTimes): number {
  const bored = all.filter(({ depth }) => depth.ends.full > 0);
  const dowels = bored.map(
    ({ depth, depth: { ends }, full, rail }) =>
      ends.full * full.length + (hasRails(depth) ? ends.rails * rail.length : 0),
  );
  const faces = bored.flatMap(({ depth, full, rails }) =>
    [full, ...(hasRails(depth) ? [rails] : [])].map((places) => bitsFor(places, woodOf(depth), task)),
  );
  const ends = bored.flatMap(({ depth, full, rail }) => [
    ...inBothEnds(bitsFor(full, woodOf(depth), task)),
    ...(hasRails(depth) ? inBothEnds(bitsFor(rail, [task.railRoom], task)) : []),
  ]);
  return sum(dowels) * fitting + (changed(together(faces)) + changed(together(ends))) * bit;
}

/** Where two rails do not fit a carcass has none. */
const hasRails = ({ hasRails: usually, rearmost }: UsualDepth): boolean => usually && rearmost !== null;

const woodOf = ({ room, behind }: UsualDepth): readonly number[] => [room, ...behind];

/** By spindle: whether it carries a bit; null where it stands over air, and either will do. */
type Bits = readonly (boolean | null)[];

/** @param wood spindles over wood: the last of those that go on from the front edge, and others */
function bitsFor(places: readonly number[], [last = -1, ...others]: readonly number[], { spindles }: LoadTask): Bits {
  return Array.from({ length: spindles }, (_, k) => (k <= last || others.includes(k) ? places.includes(k) : null));
}

/** With the front edge at the stop of one hand, and at that of the other. */
const inBothEnds = (bits: Bits): readonly Bits[] => [bits, bits.toReversed()];

/** Loads made one where no spindle would have to carry a bit for the one and none for the other. */
function together(loads: readonly Bits[]): readonly Bits[] {
  const made: Bits[] = [];
  for (const load of loads) {
    const index = made.findIndex((other) =>
      other.every((there, k) => (there ?? load[k] ?? null) === (load[k] ?? there)),
    );
    if (index < 0) made.push(load);
    else made[index] = made[index]!.map((there, k) => there ?? load[k] ?? null);
  }
  return made;
}

/** Bits that go in or out, going from each load to the one nearest to it; the first is found in place. */
function changed(loads: readonly Bits[]): number {
  const [first, ...left] = loads;
  let stands: Bits = first ?? [];
  let bits = 0;
  while (left.length > 0) {
    left.sort((a, b) => difference(stands, a) - difference(stands, b));
    const next = left.shift()!;
    bits += difference(stands, next);
    stands = next;
  }
  return bits;
}

/** A set-up names the bits that bore in it, and all others are out. */
const difference = (stands: Bits, load: Bits): number =>
  load.filter((there, k) => (there ?? false) !== (stands[k] ?? false)).length;

const sum = (figures: readonly number[]): number => figures.reduce((whole, figure) => whole + figure, 0);
