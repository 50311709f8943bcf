import type { Micrometres } from '../length/units.js';
import type { Band, EdgeBander, Shop } from './model.js';

/** The edge banders of a shop that mill an edge before they band it. */
export function millingBanders({ machines }: Pick<Shop, 'machines'>): readonly EdgeBander[] {
  return bandersOf({ machines }).filter(({ preMilling }) => preMilling > 0);
}

/**
 * What is milled off an edge before its band is glued on, by the first edge bander of the shop that takes this band on a panel
 * of this thickness; 0 where none does.
 */
export function preMillingFor(shop: Pick<Shop, 'machines'>, band: Band, thickness: Micrometres): Micrometres {
  const takes = (range: EdgeBander['band'], size: Micrometres): boolean =>
    range === null || (range.min <= size && size <= range.max);
  const bander = bandersOf(shop).find((one) => takes(one.band, band.thickness) && takes(one.thickness, thickness));
  return bander?.preMilling ?? 0;
}

function bandersOf({ machines }: Pick<Shop, 'machines'>): readonly EdgeBander[] {
  return [...machines.values()].filter((machine) => machine.kind === 'bander');
}
