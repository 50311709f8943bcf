import { normalPoints, type Points } from './points.js';
import type { OneSheet, Rectangle } from './problem.js';

/** What parts of the sheet can be worth at the most, on the grid of points where cuts can stand. */
export interface Bounds {
  readonly along: Points;
  readonly across: Points;
  /** A rectangle from the origin to (along[i], across[j]) on its own. */
  readonly inside: (i: number, j: number) => number;
  /** All of the sheet that lies outside such a rectangle in its corner. */
  readonly outside: (i: number, j: number) => number;
}

/** The rectangles by worth per area, best first. */
export function byDensity(rectangles: readonly Rectangle[]): readonly Rectangle[] {
  const density = ({ value, length, width }: Rectangle): number => value / (length * width);
  return [...rectangles].sort((a, b) => density(b) - density(a));
}

/** What an area is worth if pieces could be poured into it, with the number of copies heeded. Not under the true worth. */
export function poured(area: number, dense: readonly Rectangle[], fits: (one: Rectangle) => boolean): number {
  let left = area;
  let worth = 0;
  for (const one of dense) {
    if (!fits(one)) continue;
    const size = one.length * one.width;
    const copies = Math.min(one.most, left / size);
    worth += copies * one.value;
    left -= copies * size;
    if (left <= 0) break;
  }
  // Values are whole numbers, so a fraction is worth nothing; the margin takes up rounding in the quotient.
  return Math.floor(worth + 1e-6);
}

/**
 * The recursion of Gilmore and Gomory (1966) over normal points, each part capped by what its area could hold; and from it
 * the bound of Viswanathan and Bagchi (1993) for what is left around a rectangle in the corner.
 */
export function boundsOf({ length, width, rectangles }: OneSheet): Bounds {
  const fit = rectangles.filter((one) => one.most > 0 && one.length <= length && one.width <= width);
  const along = normalPoints(
    fit.map((one) => one.length),
    fit.map((one) => one.most),
    length,
  );
  const across = normalPoints(
    fit.map((one) => one.width),
    fit.map((one) => one.most),
    width,
  );
  const rows = across.at.length;
  const inside = insideTable(fit, along, across);
  const outside = new Float64Array(along.at.length * rows);
  for (let i = along.at.length - 1; i >= 0; i -= 1)
    for (let j = rows - 1; j >= 0; j -= 1) {
      let best = 0;
      for (let k = i + 1; k < along.at.length; k += 1)
        best = Math.max(best, outside[k * rows + j]! + inside[along.below(along.at[k]! - along.at[i]!) * rows + j]!);
      for (let k = j + 1; k < rows; k += 1)
        best = Math.max(best, outside[i * rows + k]! + inside[i * rows + across.below(across.at[k]! - across.at[j]!)]!);
      outside[i * rows + j] = best;
    }
  return { along, across, inside: (i, j) => inside[i * rows + j]!, outside: (i, j) => outside[i * rows + j]! };
}

function insideTable(fit: readonly Rectangle[], along: Points, across: Points): Float64Array {
  const rows = across.at.length;
  const dense = byDensity(fit);
  const table = new Float64Array(along.at.length * rows);
  for (const [i, x] of along.at.entries())
    for (const [j, y] of across.at.entries()) {
      let best = 0;
      for (const one of fit) if (one.length <= x && one.width <= y && one.value > best) best = one.value;
      for (let k = 1; along.at[k]! * 2 <= x; k += 1)
        best = Math.max(best, table[k * rows + j]! + table[along.below(x - along.at[k]!) * rows + j]!);
      for (let k = 1; across.at[k]! * 2 <= y; k += 1)
        best = Math.max(best, table[i * rows + k]! + table[i * rows + across.below(y - across.at[k]!)]!);
      const cap = poured(x * y, dense, (one) => one.length <= x && one.width <= y);
      table[i * rows + j] = Math.min(best, cap);
    }
  return table;
}
