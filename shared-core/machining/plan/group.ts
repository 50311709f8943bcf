import type { Micrometres } from '../../length/units.js';
import type { SetStop } from '../setup-sheet.js';
import { groupBy } from './numbers.js';
import { emptyLoad, mergeLoads, type Load } from './load.js';
import type { Operation, Way } from './operation.js';
import { assignStops, demandOf, liesFree, type StopDemand } from './stops.js';

/** An operation with the way that was chosen for it. */
export interface Chosen {
  readonly operation: Operation;
  readonly way: Way;
}

/** What will become one set-up: operations that can all be run without touching the machine. */
export interface Batch extends Pick<Operation, 'machine' | 'fence' | 'height' | 'depth' | 'through' | 'stage'> {
  /** Thickness of the panels that the depth is set for; null where any will do. */
  readonly thickness: Micrometres | null;
  readonly stops: readonly SetStop[];
  readonly extension: boolean;
  readonly load: Load;
  readonly chosen: readonly Chosen[];
}

/**
 * A depth stop ends the travel of its head. From above that leaves the bit at a level over the table, which is the right depth
 * in one thickness only; from below, and in an end, the panel lies against what the depth is counted from.
 */
function thicknessFor({ machine, through, blank }: Operation): Micrometres | null {
  const fromAbove = machine.kind === 'cup' || (machine.kind !== 'horizontal' && machine.from === 'above');
  return fromAbove && !through ? blank.thickness : null;
}

/**
 * Sorts operations into as few batches as a first-fit by falling size finds. Operations that share machine, fence, height,
 * depth and what it is set for may share a batch when their bits go together and the shop has the stops. A way that meets a
 * stop already set is preferred, so that left and right panels end up on mirrored stops of one set-up. A batch begins with the
 * best way of its first operation, or, where fewer batches come of that, with the last.
 */
export function groupOperations(operations: readonly Operation[]): Batch[] {
  const groups = groupBy(
    operations,
    (o) =>
      `${o.machine.kind}|${o.machine.name}|${o.fence.join()}|${o.height}|${o.through ? 'through' : o.depth}|${thicknessFor(o)}|${o.stage}`,
  );
  const batches: Batch[] = [];
  for (const group of groups.values()) {
    // A job repeats itself: operations that ask the same of the machine go together, so one of them is placed for all.
    const alike = groupBy(group, likeness);
    const size = (o: Operation): number => o.ways[0]?.strokes[0]?.wanted.length ?? 0;
    const ordered = [...alike.values()]
      .flatMap(([operation], index) => (operation ? [{ operation, index }] : []))
      .sort((a, b) => size(b.operation) - size(a.operation) || a.index - b.index);
    const representatives = ordered.map(({ operation }) => operation);
    const usual = firstFit(representatives, 'best');
    // One batch cannot become fewer.
    const other = usual.length > 1 ? firstFit(representatives, 'last') : usual;
    batches.push(...(other.length < usual.length ? other : usual).map((batch) => withAll(batch, alike)));
  }
  return batches;
}

/** @param beginning with which of an operation's ways a new batch begins */
function firstFit(operations: readonly Operation[], beginning: 'best' | 'last'): Batch[] {
  const open: Batch[] = [];
  for (const operation of operations) {
    const placed = best(open, operation);
    if (placed) open[placed.index] = placed.batch;
    else {
      const ways = beginning === 'best' ? operation.ways : operation.ways.toReversed();
      const batch = ways.map((way) => join(emptyBatch(operation), operation, way)).find((b) => b !== null);
      if (batch) open.push(batch);
    }
  }
  return mergeBatches(open);
}

const likenesses = new WeakMap<Operation, string>();

/** Equal for operations that ask the same of the machine's settings, stops and spindles in every one of their ways. */
function likeness(operation: Operation): string {
  const known = likenesses.get(operation);
  if (known !== undefined) return known;
  const made = `${operation.depth}#${operation.ways.map(wayLikeness).join('#')}`;
  likenesses.set(operation, made);
  return made;
}

const wayLikeness = ({ down, end, side, position, extent, load, strokes }: Way): string =>
  `${down}|${end}|${side}|${position}|${extent}|${load.wanted.join()}|${load.limit.join()}|${strokes.map(({ moved }) => moved).join()}`;

/** A batch of operations, one of each likeness, with all that are like them. */
function withAll(batch: Batch, alike: ReadonlyMap<string, readonly Operation[]>): Batch {
  const chosen = batch.chosen.flatMap(({ operation, way }) => {
    const index = operation.ways.indexOf(way);
    return (alike.get(likeness(operation)) ?? []).flatMap((like) => {
      const same = like.ways[index];
      return same ? [{ operation: like, way: same }] : [];
    });
  });
  return { ...batch, chosen };
}

function emptyBatch(operation: Operation): Batch {
  const { machine, fence, height, depth, through, stage } = operation;
  return {
    machine,
    fence,
    height,
    depth,
    through,
    stage,
    thickness: thicknessFor(operation),
    stops: [],
    extension: false,
    load: emptyLoad(machine),
    chosen: [],
  };
}

/** The open batch, and the way, that takes an operation with the fewest further stops and no extension. */
function best(open: readonly Batch[], operation: Operation): { index: number; batch: Batch } | null {
  let found: { index: number; batch: Batch } | null = null;
  let least = Infinity;
  for (const [index, batch] of open.entries()) {
    for (const way of operation.ways) {
      const joined = join(batch, operation, way);
      if (!joined) continue;
      const price =
        (joined.stops.length - batch.stops.length) * 2 +
        Number(joined.extension !== batch.extension) * 8 +
        Number(way !== operation.ways[0]);
      if (price < least) {
        least = price;
        found = { index, batch: joined };
      }
    }
  }
  return found;
}

/** The batch with one more operation in it, or null where it does not go. */
function join(batch: Batch, operation: Operation, way: Way): Batch | null {
  const load = mergeLoads(batch.load, way.load);
  if (!load) return null;
  const chosen = [...batch.chosen, { operation, way }];
  let stops = batch.stops;
  let extension = batch.extension;
  if (!stops.some((stop) => stop.side === way.side && stop.position === way.position)) {
    const plan = assignStops(batch.machine, demandsOf(chosen));
    if (!plan) return null;
    stops = plan.stops;
    extension = plan.extension;
    if (!chosen.every((c) => liesFree(batch.machine, c.way, stops))) return null;
  } else if (!liesFree(batch.machine, way, stops)) return null;
  const depth = Math.max(batch.depth, operation.depth);
  return { ...batch, depth, stops, extension, load, chosen };
}

/** One demand a place; it must lower if any way that lies there needs it to. */
function demandsOf(chosen: readonly Chosen[]): StopDemand[] {
  const demands = groupBy(
    chosen.map(({ way }) => demandOf(way)),
    ({ side, position }) => `${side}|${position}`,
  );
  return [...demands.values()].flatMap((same) => {
    const [first] = same;
    return first ? [{ ...first, lowers: same.some((demand) => demand.lowers) }] : [];
  });
}

/** Whether an operation can be run at all, with no other in its set-up. */
export const standsAlone = (operation: Operation): boolean =>
  operation.ways.some((way) => join(emptyBatch(operation), operation, way) !== null);

/** Takes batches together, smallest into largest, as long as any two go together. */
function mergeBatches(batches: readonly Batch[]): Batch[] {
  const left = [...batches];
  for (let from = left.length - 1; from > 0; from--) {
    for (let into = 0; into < from; into++) {
      const source = left[from];
      const target = left[into];
      if (!source || !target) continue;
      const merged = source.chosen.reduce<Batch | null>(
        (sum, { operation, way }) => sum && join(sum, operation, way),
        target,
      );
      if (merged) {
        left[into] = merged;
        left.splice(from, 1);
        break;
      }
    }
  }
  return left;
}
