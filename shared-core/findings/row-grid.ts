import { chosen } from '../carcass/choices.js';
import type { Located } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import type { ShelfSpec } from '../carcass/spec.js';
import { listed, verb } from '../words/english.js';
import { setLength } from './changes.js';
import type { Change } from './finding.js';
import { bayOf, grouped, onPitch, panelsOfShelf, rowStart, rowsTowards } from './lookups.js';
import type { Row } from '../boring/model.js';
import type { CarcassContext } from './rule.js';

/** The rows on either hand of a shelf, in every bay that it stands in. */
export function rowsBeside(context: CarcassContext, shelf: ShelfSpec): readonly Row[] {
  return panelsOfShelf(context, shelf).flatMap((panel) => {
    const bay = bayOf(context, panel);
    return bay === undefined
      ? []
      : [...rowsTowards(context, bay.left, 'right'), ...rowsTowards(context, bay.right, 'left')];
  });
}

/** The row that the shelf's height does not fit, or undefined where it fits every row beside it. */
export function misfit(context: CarcassContext, shelf: ShelfSpec): Row | undefined {
  return rowsBeside(context, shelf).find(
    (row) => !onPitch(shelf.at.value - rowStart(context, row), row.pitch, context.unit),
  );
}

/** Changes that take the shelves with a pitch grid that moves, so that those on it stay on it. */
export function shelvesFollow(
  context: CarcassContext,
  by: Micrometres,
): { readonly changes: readonly Change[]; readonly keys: readonly string[] } {
  const shelves = [...context.spec.fixedShelves, ...context.spec.looseShelves].filter(
    (shelf) => shelf.at.written && rowsBeside(context, shelf).length > 0 && misfit(context, shelf) === undefined,
  );
  return {
    changes: shelves.map((shelf) => setLength(context, shelf.at.path, shelf.at.value + by)),
    keys: shelves.map((shelf) => shelf.key),
  };
}

/** '; loose-1 and loose-2 move with them': the end of a title that moves shelves with their rows; '' for none. */
export function withThem(shelves: readonly string[]): string {
  return shelves.length === 0 ? '' : `; ${listed(shelves)} ${verb(shelves.length, 'moves', 'move')} with them`;
}

/** The offset that the rows of a panel start at: its own, or the carcass's. */
export function offsetOf(context: CarcassContext, panel: string): Located<Micrometres> {
  return chosen(context.spec, panel, 'rowOffset') ?? context.spec.rowOffset;
}

/** Sets the offset of the rows where these panels take theirs from. */
export function setOffset(context: CarcassContext, panels: readonly string[], offset: Micrometres): readonly Change[] {
  const paths = panels.map((key) => chosen(context.spec, key, 'rowOffset')?.path ?? ['row-offset']);
  return grouped(paths, (path) => path.join(' ')).map((same) => setLength(context, same[0]!, offset));
}
