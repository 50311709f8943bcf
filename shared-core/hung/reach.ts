import type { Micrometres } from '../length/units.js';
import { within } from '../schema/in-span.js';
import type { Span } from '../schema/schema.js';
import type { Hinge } from '../shop/model.js';
import type { Reach } from './model.js';

/**
 * With a door hung, the cup's centre stands arm and plate inside the face under the plate, and the distance inside the hinge
 * edge of the door: so the edge lies `distance - arm - plate` beyond that face.
 */
export const overlayOf = ({ arm, plate, distance }: Reach): Micrometres => distance - arm - plate;

/** Every arm with every plate, and the distance that the cup then needs for an overlay. */
function combinations({ arms, plates }: Hinge, overlay: Micrometres): readonly Reach[] {
  return arms.flatMap((arm) => plates.map((plate) => ({ arm, plate, distance: overlay + arm + plate })));
}

/**
 * Arm, plate and distance that give an overlay, the distance within the hinge's range: of several the one that the cup borer
 * can be set to, then the one nearest to the usual distance, then the lowest plate. null where there is none.
 * @param borer the distances that the cup borer can be set to; null where the shop has none
 */
export function reachFor(hinge: Hinge, overlay: Micrometres, borer: Span | null): Reach | null {
  const rank = (reach: Reach): readonly number[] => [
    borer === null || within(reach.distance, borer) ? 0 : 1,
    Math.abs(reach.distance - hinge.usualDistance),
    reach.plate,
    reach.arm,
  ];
  const able = combinations(hinge, overlay).filter(({ distance }) => within(distance, hinge.distance));
  return able.toSorted((a, b) => inOrder(rank(a), rank(b)))[0] ?? null;
}

function inOrder(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}

/** What would do where a hinge does not reach an overlay. */
export type WouldDo =
  | { readonly by: 'plate'; readonly arm: Micrometres; readonly plates: Span }
  | { readonly by: 'distance'; readonly reach: Reach };

/**
 * A height of plate that would do with the hinge's arm that comes nearest, else the distance of the cup that would do with
 * what there is.
 */
export function whatWouldDo(hinge: Hinge, overlay: Micrometres): WouldDo {
  const byPlate = hinge.arms
    .map((arm) => ({
      arm,
      plates: { min: Math.max(0, hinge.distance.min - overlay - arm), max: hinge.distance.max - overlay - arm },
    }))
    .filter(({ plates }) => plates.min <= plates.max)
    .map((one) => ({ ...one, off: Math.min(...hinge.plates.map((plate) => off(plate, one.plates))) }))
    .toSorted((a, b) => a.off - b.off);
  const [nearest] = byPlate;
  if (nearest !== undefined) return { by: 'plate', arm: nearest.arm, plates: nearest.plates };
  const reach = combinations(hinge, overlay).toSorted(
    (a, b) => off(a.distance, hinge.distance) - off(b.distance, hinge.distance),
  )[0]!;
  return { by: 'distance', reach };
}

/** How far a value lies outside a span. */
function off(value: Micrometres, { min, max }: Span): Micrometres {
  return Math.max(0, min - value, value - max);
}

/** The overlays that a hinge reaches, from the least to the greatest; there may be gaps between. */
export function overlaysOf({ arms, plates, distance }: Hinge): Span {
  return {
    min: distance.min - Math.max(...arms) - Math.max(...plates),
    max: distance.max - Math.min(...arms) - Math.min(...plates),
  };
}
