import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';

/** The remainder in [0, b), for a of any sign. */
export const modulo = (a: number, b: number): number => ((a % b) + b) % b;

/**
 * Where a line of spindles can be set so that all `places` come under spindles 0 .. count - 1 at `pitch`: every offset in
 * `range` from the first spindle, ascending. Empty where the places are not on one pitch or out of the line's reach.
 */
export function offsetsFor(
  places: readonly Micrometres[],
  pitch: Micrometres,
  count: number,
  range: Span,
): Micrometres[] {
  const first = Math.min(...places);
  const last = Math.max(...places);
  const rest = modulo(first, pitch);
  if (places.some((place) => modulo(place, pitch) !== rest)) return [];
  const offsets: Micrometres[] = [];
  for (
    let offset = range.min + modulo(rest - range.min, pitch);
    offset <= Math.min(range.max, first);
    offset += pitch
  ) {
    if ((last - offset) / pitch <= count - 1) offsets.push(offset);
  }
  return offsets;
}

/** Groups of `items` with equal keys, in the order in which the keys first come. */
export function groupBy<T, K>(items: Iterable<T>, keyOf: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

/** How far a bit's centre lies outside [0, extent]; 0 inside. */
export const outside = (place: Micrometres, extent: Micrometres): Micrometres => Math.max(0, -place, place - extent);
