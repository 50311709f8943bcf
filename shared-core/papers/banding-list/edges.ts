import { cutLong } from '../../carcass/footprint.js';
import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Band } from '../../shop/model.js';
import type { BuiltCarcass } from '../built.js';

/** An edge to be banded. */
export interface BandedEdge {
  readonly band: Band;
  readonly carcass: string;
  readonly panel: Panel;
  readonly pieces: number;
  /** `cut`: that of a corner which is sawn off when the panel is bored. */
  readonly edge: EdgeName | 'cut';
  readonly length: Micrometres;
}

/** Ends first and the front edge last, so that its band runs through and covers the others; a cut corner when it is bored and sawn. Common practice, no source. */
export const BANDING_ORDER: readonly BandedEdge['edge'][] = ['reference-end', 'far-end', 'back', 'front', 'cut'];

/** Every edge that carries a band, panel by panel in the order to band it. */
export function edgesOf(carcasses: readonly BuiltCarcass[]): readonly BandedEdge[] {
  return carcasses.flatMap(({ name, carcass }) =>
    carcass.panels.flatMap((panel) =>
      BANDING_ORDER.flatMap((edge): readonly BandedEdge[] => {
        const band = edge === 'cut' ? (panel.corner?.band ?? null) : panel.bands[edge];
        return band === null
          ? []
          : [{ band, carcass: name, panel, pieces: carcass.count, edge, length: lengthOf(panel, edge) }];
      }),
    ),
  );
}

function lengthOf({ length, width, corner }: Panel, edge: BandedEdge['edge']): Micrometres {
  if (edge === 'cut') return corner === undefined ? 0 : cutLong(corner);
  return edge === 'front' || edge === 'back' ? length : width;
}
