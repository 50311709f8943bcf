import type { Place } from '../document/place.js';

/** How the places of a text with another name stand in that with its own. */
export interface StandIn {
  /** Where the name begins. */
  readonly at: number;
  /** How much further on all that follows it stands. */
  readonly by: number;
}

/** An offset of a text with another name, in that with its own. */
export const withOwnName = ({ at, by }: StandIn, offset: number): number => (offset > at ? offset + by : offset);

/** A place of a text with its own name, as it is known where another name stands there. */
export function withoutOwnName(place: Place, standIn: StandIn | null): Place {
  if (standIn === null || place.part !== 'self') return place;
  const { at, by } = standIn;
  const moved = (offset: number): number => (offset > at ? Math.max(at + 1, offset - by) : offset);
  return { ...place, start: moved(place.start), end: moved(place.end) };
}
