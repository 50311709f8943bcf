import type { Located } from '../document/place.js';
import { keyOf } from '../job/panel-key.js';
import { half } from '../length/units.js';
import type { Box } from './box.js';
import { boardFor } from './choices.js';
import { stacksAsked } from './fronts/asked.js';
import { frontHeights, stackedDown } from './fronts/heights.js';
import { heightOf } from './fronts/places.js';
import { extent, overlaps } from './interval.js';
import { FIXED } from './shelf-kinds.js';
import type { CarcassSpec, ShelfSpec } from './spec.js';

/**
 * The fixed shelves that appliances stand on: the upper face of each where the front is open from, in its bay. None where one of the
 * job stands there, or where the appliance stands on the bottom. They are counted on from those of the job.
 */
export function underAppliances(spec: CarcassSpec, box: Box, asked: readonly ShelfSpec[]): readonly ShelfSpec[] {
  const found = stacksAsked(spec).flatMap(({ bay, fronts }) => {
    if (bay === null || fronts.every(({ kind }) => kind !== 'appliance')) return [];
    const whole = heightOf(box, fronts);
    const heights = frontHeights(spec, box.shop, fronts, extent(whole));
    // Building tells that they find no room.
    if (heights.as === 'too-high') return [];
    const rooms = stackedDown(heights.each, whole.to, spec.doors.gap.value);
    return fronts.flatMap(({ kind, cause }, i) => {
      const floor = rooms[i]!.from;
      return kind === 'appliance' && floor > box.clearZ.from ? [{ bay, floor, cause }] : [];
    });
  });
  const shelves: ShelfSpec[] = [];
  for (const { bay, floor, cause } of found) {
    const key = keyOf('shelf', asked.length + shelves.length + 1);
    const { thickness } = boardFor(spec, box.shop, key, spec.board);
    const stands = asked.some((shelf) => {
      if (shelf.bay !== null && shelf.bay.value !== bay + 1) return false;
      const own = boardFor(spec, box.shop, shelf.key, shelf.board).thickness;
      const from = box.sideZ.from + shelf.at.value - FIXED.below(own);
      return overlaps({ from, to: from + own }, { from: floor - thickness, to: floor });
    });
    if (!stands)
      shelves.push(shelfUnder(spec, key, bay, floor - box.sideZ.from - (thickness - half(thickness)), cause));
  }
  return shelves;
}

function shelfUnder(spec: CarcassSpec, key: string, bay: number, at: number, cause: Located<unknown>): ShelfSpec {
  const unwritten = <T>(value: T): Located<T> => ({ value, place: cause.place, path: cause.path, written: false });
  return {
    key,
    at: unwritten(at),
    bay: spec.dividers.length === 0 ? null : unwritten(bay + 1),
    board: spec.board,
    setback: unwritten(0),
  };
}
