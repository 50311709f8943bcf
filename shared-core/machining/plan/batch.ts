import type { Micrometres } from '../../length/units.js';
import type { SetStop } from '../set-up.js';
import { emptyLoad, goTogether, mergeLoads } from './load.js';
import type { Load, Operation, Way } from './operation.js';
import { assignStops, liesOver, type StopPlace } from './stops.js';

/** An operation with the way that was chosen for it. */
export interface Chosen {
  readonly operation: Operation;
  readonly way: Way;
}

/** What will become one set-up: operations that can all be run without touching the machine. */
export interface Batch extends Pick<Operation, 'machine' | 'fence' | 'height' | 'depth' | 'through'> {
  /** Thickness of the panels that the depth is set for; null where any will do. */
  readonly thickness: Micrometres | null;
  /** Where stops must stand, and which of them must lower. */
  readonly places: readonly StopPlace[];
  readonly stops: readonly SetStop[];
  readonly extension: boolean;
  readonly load: Load;
  readonly chosen: readonly Chosen[];
  /** What is known of the batches that could hold the same work: no way to sort it needs fewer. One object for all of them. */
  readonly among: { readonly least: number };
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
    places: [],
    stops: [],
    extension: false,
    load: emptyLoad(machine),
    chosen: [],
    among: { least: 1 },
  };
}

/** The stops of a batch with one more way in it, or null where it does not go. */
export function stopsWith(batch: Batch, way: Way): Pick<Batch, 'places' | 'stops' | 'extension'> | null {
  if (!goTogether(batch.load, way.load)) return null;
  const places = placesWith(batch, way);
  if (places === batch.places) return batch;
  const plan = assignStops(batch.machine, places);
  return plan && { places, ...plan };
}

/** The batch with one more operation in it, or null where it does not go. */
export function join(batch: Batch, operation: Operation, way: Way): Batch | null {
  const plan = stopsWith(batch, way);
  if (plan === null) return null;
  const { places, stops, extension } = plan;
  const load = mergeLoads(batch.load, way.load);
  const depth = Math.max(batch.depth, operation.depth);
  return { ...batch, depth, load, chosen: [...batch.chosen, { operation, way }], places, stops, extension };
}

/** The places of a batch's stops with one more way lying among them; the same object where nothing changes. */
function placesWith({ machine, places, chosen }: Batch, way: Way): readonly StopPlace[] {
  const own = places.find(({ side, position }) => side === way.side && position === way.position);
  const changes = own === undefined || places.some((place) => !place.lowers && liesOver(machine, way, place));
  if (!changes) return places;
  const lain = places.map((place) => ({ ...place, lowers: place.lowers || liesOver(machine, way, place) }));
  if (own !== undefined) return lain;
  const { side, position } = way;
  const lowers = [...chosen.map((one) => one.way), way].some((one) => liesOver(machine, one, { side, position }));
  return [...lain, { side, position, lowers }];
}

/** Whether an operation can be run at all, with no other in its set-up. */
export const standsAlone = (operation: Operation): boolean =>
  operation.ways.some((way) => stopsWith(emptyBatch(operation), way) !== null);
