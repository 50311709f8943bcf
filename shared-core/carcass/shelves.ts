import type { Located } from '../document/place.js';
import { keyInBay } from '../job/panel-key.js';
import type { Micrometres } from '../length/units.js';
import type { Board } from '../shop/model.js';
import type { Box } from './box.js';
import { boardFor } from './choices.js';
import { extent, overlaps, within, type Interval } from './interval.js';
import { say } from './messages.js';
import type { Bay, Point3 } from './model.js';
import type { Problems } from './problems.js';
import { FIXED, looseOn, type ShelfKind } from './shelf-kinds.js';
import type { ShelfSpec } from './spec.js';

/** One panel of a shelf, in its bay. */
export interface PlacedShelf {
  readonly key: string;
  readonly board: Board;
  /** The text that gives its height. */
  readonly cause: Located<Micrometres>;
  readonly length: Micrometres;
  readonly width: Micrometres;
  /** Its left, front, lower corner. */
  readonly origin: Point3;
}

/** Fixed shelves, then loose ones among them, each from the bottom up. One that cannot stand is left out. */
export function placeShelves(
  box: Box,
  bays: readonly Bay[],
  problems: Problems,
): { readonly fixed: readonly PlacedShelf[]; readonly loose: readonly PlacedShelf[] } {
  const { spec, shop } = box;
  const taken: { readonly key: string; readonly run: Interval }[][] = bays.map(() => []);
  return {
    fixed: place(spec.fixedShelves, FIXED),
    loose: place(spec.looseShelves, looseOn(shop.habits)),
  };

  function place(shelves: readonly ShelfSpec[], kind: ShelfKind): readonly PlacedShelf[] {
    const inOrder = [...shelves].sort((a, b) => a.at.value - b.at.value || (a.key < b.key ? -1 : 1));
    return inOrder.flatMap((shelf) => placeShelf(shelf, kind));
  }

  /** The shelf in its bay, or in every bay; stops at the first bay where it cannot stand and says why once. */
  function placeShelf(shelf: ShelfSpec, kind: ShelfKind): readonly PlacedShelf[] {
    const panels: PlacedShelf[] = [];
    if (shelf.bay !== null && shelf.bay.value > bays.length) {
      problems.add(shelf.bay, say.bayMissing({ shelf: shelf.key, bay: shelf.bay.value, bays: bays.length }));
      return panels;
    }
    for (const [index, bay] of bays.entries()) {
      if (shelf.bay !== null && shelf.bay.value !== index + 1) continue;
      const panel = tryShelf(shelf, kind, bay, index);
      if (panel === null) break;
      panels.push(panel);
    }
    return panels;
  }

  function tryShelf(shelf: ShelfSpec, kind: ShelfKind, bay: Bay, index: number): PlacedShelf | null {
    const key = bays.length === 1 ? shelf.key : keyInBay(shelf.key, index + 1);
    const board = boardFor(spec, shop, key, shelf.board);
    const { at, setback } = shelf;
    const underside = box.sideZ.from + at.value - kind.below(board.thickness);
    const run = { from: underside - kind.pins, to: underside + board.thickness };

    if (!within(run, box.clearZ)) {
      const low = at.value + box.clearZ.from - run.from;
      const high = at.value + box.clearZ.to - run.to;
      const figures = { shelf: key, at: at.value, above: box.boards.top ? 'top' : 'rails' } as const;
      problems.add(at, low <= high ? say.shelfOutside({ ...figures, room: [low, high] }) : say.shelfNowhere(figures));
      return null;
    }
    const other = taken[index]!.find((shelfThere) => overlaps(shelfThere.run, run));
    if (other !== undefined) {
      const up = at.value + other.run.to - run.from;
      const down = at.value + other.run.from - run.to;
      problems.add(at, say.shelfRunsInto({ shelf: key, at: at.value, other: other.key, free: [down, up] }));
      return null;
    }
    const length = extent(bay) - 2 * kind.play;
    const width = box.clearDepth - setback.value - kind.play;
    if (length <= 0) {
      problems.add(at, say.shelfNoLength({ shelf: key, bay: extent(bay), play: 2 * kind.play }));
      return null;
    }
    if (width <= 0) {
      problems.add(setback, say.shelfNoWidth({ shelf: key, clear: box.clearDepth, setback: setback.value }));
      return null;
    }
    taken[index]!.push({ key, run });
    const origin = { x: bay.from + kind.play, y: setback.value, z: underside };
    return { key, board, cause: at, length, width, origin };
  }
}
