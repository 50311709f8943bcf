import { edgesWithBand, type EdgeWithBand } from '../../carcass/banded.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Band } from '../../shop/model.js';
import type { BuiltCarcass } from '../built.js';

/** An edge to be banded. */
export interface BandedEdge {
  readonly band: Band;
  readonly carcass: string;
  readonly panel: Panel;
  readonly pieces: number;
  readonly edge: EdgeWithBand['edge'];
  readonly length: Micrometres;
}

/** Every edge that carries a band, panel by panel in the order to band it. */
export function edgesOf(carcasses: readonly BuiltCarcass[]): readonly BandedEdge[] {
  return carcasses.flatMap(({ name, carcass }) =>
    carcass.panels.flatMap((panel) =>
      edgesWithBand(panel).map(({ band, edge, long }): BandedEdge => ({
        band,
        carcass: name,
        panel,
        pieces: carcass.count,
        edge,
        length: long,
      })),
    ),
  );
}
