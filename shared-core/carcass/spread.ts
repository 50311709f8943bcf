import { placeAt, type Grid } from '../length/grid.js';
import type { Micrometres } from '../length/units.js';
import type { Interval } from './interval.js';
import type { ShelfBody } from './shelf-kinds.js';

/** The clear openings that are left of one opening when fixed shelves (as spans of height) stand in it. */
export function openingsBetween(whole: Interval, shelves: readonly Interval[]): readonly Interval[] {
  const openings: Interval[] = [];
  let from = whole.from;
  for (const shelf of shelves.toSorted((a, b) => a.from - b.from)) {
    if (shelf.from > from) openings.push({ from, to: Math.min(shelf.from, whole.to) });
    from = Math.max(from, shelf.to);
  }
  if (whole.to > from) openings.push({ from, to: whole.to });
  return openings.filter((opening) => opening.to > opening.from);
}

/**
 * Heights for `count` shelves, evenly spread: each goes to the opening whose spaces are the tallest (the lower one of equals),
 * then every opening's shelves part it evenly and move to the nearest place on the grid (down, of two as near). Lowest
 * first. Where fewer fit, with their whole thickness clear of each other, only so many come back.
 */
export function spreadShelves(
  count: number,
  openings: readonly Interval[],
  body: ShelfBody,
  grid: Grid,
): readonly Micrometres[] {
  const slots = openings.map((opening) => slotsOf(opening, body, grid));
  const counts = openings.map(() => 0);
  for (let placed = 0; placed < count; placed += 1) {
    let best = -1;
    for (let i = 0; i < openings.length; i += 1) {
      if (counts[i]! >= slots[i]!.most) continue;
      if (best === -1 || tallerSpace(openings[i]!, counts[i]!, openings[best]!, counts[best]!, body)) best = i;
    }
    if (best === -1) break;
    counts[best]! += 1;
  }
  return openings
    .flatMap((opening, i) => placeIn(opening, counts[i]!, slots[i]!, body, grid))
    .toSorted((a, b) => a - b);
}

interface Slots {
  /** First and last usable k of the grid. */
  readonly first: number;
  readonly last: number;
  /** Least difference of k between two shelves. */
  readonly step: number;
  readonly most: number;
}

function slotsOf(opening: Interval, body: ShelfBody, grid: Grid): Slots {
  const first = Math.ceil((opening.from + body.reach - grid.offset) / grid.pitch);
  const last = Math.floor((opening.to - body.above - grid.offset) / grid.pitch);
  const step = Math.floor((body.reach + body.above) / grid.pitch) + 1;
  return { first, last, step, most: last < first ? 0 : Math.floor((last - first) / step) + 1 };
}

/** True where the spaces that a's shelves leave are taller than b's; exact. */
function tallerSpace(a: Interval, countA: number, b: Interval, countB: number, body: ShelfBody): boolean {
  const thickness = body.below + body.above;
  const clear = (opening: Interval, count: number): number => opening.to - opening.from - count * thickness;
  return clear(a, countA) * (countB + 1) > clear(b, countB) * (countA + 1);
}

function placeIn(opening: Interval, count: number, slots: Slots, body: ShelfBody, grid: Grid): Micrometres[] {
  const thickness = body.below + body.above;
  const clear = opening.to - opening.from - count * thickness;
  const places: number[] = [];
  for (let i = 1; i <= count; i += 1) {
    const ideal = opening.from + Math.floor((i * clear) / (count + 1)) + (i - 1) * thickness + body.below;
    const nearest = Math.ceil((ideal - grid.offset) / grid.pitch - 0.5);
    const least = i === 1 ? slots.first : places[i - 2]! + slots.step;
    const most = slots.last - (count - i) * slots.step;
    places.push(Math.min(Math.max(nearest, least), most));
  }
  return places.map((k) => placeAt(grid, k));
}

/** A tenth of a millimetre: no stop is set more finely. */
const STEP = 100;

/**
 * Centre lines of `count` dividers that part the clear width [from, to] evenly, their faces a whole number of tenths of a
 * millimetre from it, whole micrometres; null where they leave no clear bay.
 */
export function spreadDividers(
  count: number,
  from: Micrometres,
  to: Micrometres,
  thickness: Micrometres,
  halfThickness: Micrometres,
): readonly Micrometres[] | null {
  const clear = to - from - count * thickness;
  if (clear < (count + 1) * STEP) return null;
  return Array.from(
    { length: count },
    (_, i) => from + Math.round(((i + 1) * clear) / (count + 1) / STEP) * STEP + i * thickness + halfThickness,
  );
}
