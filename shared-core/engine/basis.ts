import type { Place } from '../document/place.js';
import type { ReadHead } from '../job/head.js';
import type { Defaults } from '../job/head.js';
import type { JobHead } from '../job/model.js';

/**
 * All that a carcass takes from the rest of its file. Places of the defaults are counted from `base`, so that a carcass's
 * result stays valid when the head changes elsewhere.
 */
export interface Basis {
  readonly head: JobHead;
  readonly defaults: Defaults;
  /** Equal exactly where two bases are. */
  readonly key: string;
  /** Offset, in its part, from which the places of the defaults are counted. */
  readonly base: number;
}

/** What of a head bears on the carcasses under it. */
export function basisOf({ head: { unit, unitUnknown }, defaults }: ReadHead): Basis {
  const base = firstPlace(defaults) ?? 0;
  const moved = shifted(defaults, -base) as Defaults;
  // Of the head only its unit bears on a carcass; the rest is withheld so that it cannot.
  const head: JobHead = { title: '', unit, unitUnknown, shopRef: null, place: { part: 'head', start: 0, end: 0 } };
  return { head, defaults: moved, key: JSON.stringify([unit, unitUnknown, moved]), base };
}

/** Nothing else in the defaults is of a part. */
const isPlace = (value: object): value is Place => 'part' in value;

function firstPlace(value: unknown): number | null {
  if (typeof value !== 'object' || value === null) return null;
  if (isPlace(value)) return value.start;
  const starts = Object.values(value)
    .map(firstPlace)
    .filter((start) => start !== null);
  return starts.length === 0 ? null : Math.min(...starts);
}

/** The same value with every place in it moved. */
function shifted(value: unknown, by: number): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (isPlace(value)) return { ...value, start: value.start + by, end: value.end + by };
  if (Array.isArray(value)) return value.map((one) => shifted(one, by));
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, shifted(one, by)]));
}
