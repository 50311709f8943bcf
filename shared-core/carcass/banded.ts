import type { EdgeName } from '../job/model.js';
import type { Micrometres } from '../length/units.js';
import type { Band } from '../shop/model.js';
import { cutLong } from './footprint.js';
import type { Panel } from './model.js';

/** An edge that carries a band. */
export interface EdgeWithBand {
  /** `cut`: that of a corner which is sawn off when the panel is bored. */
  readonly edge: EdgeName | 'cut';
  readonly band: Band;
  /** From end to end of the edge, and of the panel square to it; finished. */
  readonly long: Micrometres;
  readonly across: Micrometres;
}

/** Ends first and the front edge last, so that its band runs through and covers the others; a cut corner when it is bored and sawn. Common practice, no source. */
export const BANDING_ORDER: readonly EdgeWithBand['edge'][] = ['reference-end', 'far-end', 'back', 'front', 'cut'];

/** Every edge of a panel that carries a band, in the order to band it. */
export function edgesWithBand(panel: Panel): readonly EdgeWithBand[] {
  const { bands, corner, length, width } = panel;
  return BANDING_ORDER.flatMap((edge): readonly EdgeWithBand[] => {
    const band = edge === 'cut' ? (corner?.band ?? null) : bands[edge];
    if (band === null) return [];
    if (edge === 'cut') return [{ edge, band, long: cutLong(corner!), across: acrossCut(panel, corner!) }];
    const runsAlong = edge === 'front' || edge === 'back';
    return [{ edge, band, long: runsAlong ? length : width, across: runsAlong ? width : length }];
  });
}

/** How far the corner opposite to one that is cut off lies from the cut. */
function acrossCut({ length, width }: Panel, { u, v }: NonNullable<Panel['corner']>): Micrometres {
  return Math.round((width * v + length * u - u * v) / Math.hypot(u, v));
}
