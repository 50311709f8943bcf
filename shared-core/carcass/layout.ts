import { layBays, type PlacedDivider } from './bays.js';
import type { Box } from './box.js';
import { placeDoors, type PlacedDoor } from './doors.js';
import type { Bay } from './model.js';
import type { Problems } from './problems.js';
import { placeShelves, type PlacedShelf } from './shelves.js';
import type { SpindleLine } from './spindle-line.js';

/** The box and what stands in it, each thing in its place; the panels are made from it. */
export interface Layout {
  readonly box: Box;
  /** What its construction bores are placed on. */
  readonly line: SpindleLine;
  /** From left to right. */
  readonly dividers: readonly PlacedDivider[];
  readonly bays: readonly Bay[];
  /** From the bottom up. */
  readonly shelves: { readonly fixed: readonly PlacedShelf[]; readonly loose: readonly PlacedShelf[] };
  /** From left to right. */
  readonly doors: readonly PlacedDoor[];
  /** For what does not find its place. */
  readonly problems: Problems;
}

/** Finds a place for everything in the box; what has none is left out and told. */
export function layOut(box: Box, line: SpindleLine, problems: Problems): Layout {
  const { dividers, bays } = layBays(box, problems);
  const shelves = placeShelves(box, bays, problems);
  return { box, line, dividers, bays, shelves, doors: placeDoors(box, bays, problems), problems };
}
