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
export interface Batch extends Pick<Operation, 'machine' | 'fence' | 'height' | 'depth' | 'through'> {
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
export function thicknessFor({ machine, through, blank }: Operation): Micrometres | null {
  const fromAbove = machine.kind === 'cup' || (machine.kind !== 'horizontal' && machine.from === 'above');
  return fromAbove && !through ? blank.thickness : null;
}

export function emptyBatch(operation: Operation): Batch {
  const { machine, fence, height, depth, through } = operation;
  return {
    machine,
    fence,
    height,
    depth,
    through,
    thickness: thicknessFor(operation),
    stops: [],
    extension: false,
    load: emptyLoad(machine),
    chosen: [],
  };
}

/** The batch with one more operation in it, or null where it does not go. */
export function join(batch: Batch, operation: Operation, way: Way): Batch | null {
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
