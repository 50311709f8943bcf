import { lineTo, type GridLine } from '../length/grid.js';
import { half, type Micrometres } from '../length/units.js';
import type { Board, Shop } from '../shop/model.js';
import { chosen } from './choices.js';
import type { Carcass, Panel } from './model.js';
import { setsGrid } from './roles.js';
import type { CarcassSpec } from './spec.js';

/**
 * Places of the holes that a row of an upright has or would have, from its bottom end: of a side those of its own rows, of a
 * divider the same heights unless the job says otherwise.
 */
export function gridOn(spec: CarcassSpec, carcass: Carcass, shop: Shop, upright: Panel): GridLine {
  return setsGrid(upright)
    ? lineIn(upright.length, offsetOfSide(spec, upright.key), thinnerSide(carcass), shop)
    : lineIn(upright.length, offsetOfDivider(spec, carcass, shop, upright), upright.board, shop);
}

/** Heights of the holes that a row of the leading side has or would have, from the bottom end of the sides. */
export function gridOfSides(spec: CarcassSpec, carcass: Carcass, shop: Shop): GridLine {
  return gridOn(spec, carcass, shop, leadingSide(spec, carcass));
}

export function offsetOfSide(spec: CarcassSpec, key: string): Micrometres {
  return (chosen(spec, key, 'rowOffset') ?? spec.rowOffset).value;
}

function leadingSide({ leading }: CarcassSpec, { panels }: Carcass): Panel {
  return panels.find(({ key }) => key === leading)!;
}

export function thinnerSide({ panels }: Carcass): Board {
  const sides = panels.filter(setsGrid);
  return sides.map(({ board }) => board).reduce((a, b) => (b.nominal < a.nominal ? b : a));
}

/** First hole of a divider's rows, from its bottom end. */
export function offsetOfDivider(spec: CarcassSpec, carcass: Carcass, shop: Shop, divider: Panel): Micrometres {
  return chosen(spec, divider.key, 'rowOffset')?.value ?? offsetOnGrid(spec, carcass, shop, divider);
}

/** The lowest hole of the leading side's grid that is at least half a thickness above the divider's end. */
function offsetOnGrid(spec: CarcassSpec, carcass: Carcass, shop: Shop, divider: Panel): Micrometres {
  const side = leadingSide(spec, carcass);
  const { pitch } = shop.habits;
  const grid = side.pose.origin.z + offsetOfSide(spec, side.key) - divider.pose.origin.z;
  const least = half(divider.thickness);
  return grid + Math.ceil((least - grid) / pitch) * pitch;
}

/** The holes that find room in a length: the last keeps from the far end what the first keeps, or what is usual, if less. */
export function lineIn(length: Micrometres, offset: Micrometres, board: Board, { habits }: Shop): GridLine {
  const margin = Math.min(offset, habits.rowOffset ?? half(board.nominal));
  return lineTo({ offset, pitch: habits.pitch }, length - margin);
}
