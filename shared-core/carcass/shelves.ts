import type { Located } from '../document/place.js';
import { keyInBay } from '../job/panel-key.js';
import type { Micrometres } from '../length/units.js';
import type { Board } from '../shop/model.js';
import type { Box } from './box.js';
import { boardFor } from './choices.js';
import type { Diagonal } from './model.js';
import { cutBehind, cutEnd } from './diagonal.js';
import { insetBefore } from './fronts/asked.js';
import { otherHand } from './hands.js';
import { extent, overlaps, within, type Interval } from './interval.js';
import { say } from './messages.js';
import type { Bay, Point3 } from './model.js';
import type { Outline } from './panel.js';
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
  readonly corner?: Outline['corner'];
}

/** Fixed shelves, then loose ones among them, each from the bottom up. One that cannot stand is left out. */
export function placeShelves(
  box: Box,
  bays: readonly Bay[],
  problems: Problems,
): { readonly fixed: readonly PlacedShelf[]; readonly loose: readonly PlacedShelf[] } {
  const { spec, shop } = box;
  const room: Room = { box, bays, problems, taken: bays.map(() => []) };
  return {
    fixed: place(room, spec.fixedShelves, FIXED),
    loose: place(room, spec.looseShelves, looseOn(shop.habits)),
  };
}

/** Where shelves may stand, and those that do already. */
interface Room {
  readonly box: Box;
  readonly bays: readonly Bay[];
  readonly problems: Problems;
  /** By bay: the heights that are taken. */
  readonly taken: readonly { readonly key: string; readonly run: Interval }[][];
}

function place(room: Room, shelves: readonly ShelfSpec[], kind: ShelfKind): readonly PlacedShelf[] {
  const inOrder = [...shelves].sort((a, b) => a.at.value - b.at.value || (a.key < b.key ? -1 : 1));
  return inOrder.flatMap((shelf) => placeShelf(room, shelf, kind));
}

/** The shelf in its bay, or in every bay; stops at the first bay where it cannot stand and says why once. */
function placeShelf(room: Room, shelf: ShelfSpec, kind: ShelfKind): readonly PlacedShelf[] {
  const { bays, problems } = room;
  const panels: PlacedShelf[] = [];
  if (shelf.bay !== null && shelf.bay.value > bays.length) {
    problems.add(shelf.bay, say.bayMissing({ shelf: shelf.key, bay: shelf.bay.value, bays: bays.length }));
    return panels;
  }
  for (const [index, bay] of bays.entries()) {
    if (shelf.bay !== null && shelf.bay.value !== index + 1) continue;
    const panel = tryShelf(room, shelf, kind, bay, index);
    if (panel === null) break;
    panels.push(panel);
  }
  return panels;
}

function tryShelf(room: Room, shelf: ShelfSpec, kind: ShelfKind, bay: Bay, index: number): PlacedShelf | null {
  const { box, bays, taken } = room;
  const key = bays.length === 1 ? shelf.key : keyInBay(shelf.key, index + 1);
  const board = boardFor(box.spec, box.shop, key, shelf.board);
  const { at, setback } = shelf;
  const underside = box.sideZ.from + at.value - kind.below(board.thickness);
  const run = { from: underside - kind.pins, to: underside + board.thickness };
  const length = extent(bay) - 2 * kind.play;
  const cut = box.diagonal === null ? null : cutFor(box, box.diagonal, setback.value, kind.play);
  const width = box.clearDepth - (cut?.front ?? setback.value) - kind.play;
  if (
    !isBehindDoors(room, key, shelf, index) ||
    !hasHeight(room, key, at, run, index) ||
    !hasSize(room, key, shelf, bay, kind, { length, width, corner: cut?.corner })
  )
    return null;
  taken[index]!.push({ key, run });
  const origin = { x: bay.from + kind.play, y: cut?.front ?? setback.value, z: underside };
  return { key, board, cause: at, length, width, origin, ...(cut && { corner: cut.corner }) };
}

/** Across a corner: where the front edge of a shelf lies, and what is cut off of it, its edge the setback behind the diagonal. */
function cutFor({ boards }: Box, diagonal: Diagonal, setback: Micrometres, play: Micrometres) {
  const { hand, out } = diagonal;
  const inside = { end: boards[otherHand(hand)].thickness + play, front: boards[hand].thickness + play };
  const corner = { end: cutEnd(diagonal), ...cutBehind(diagonal, inside, setback) };
  return { front: inside.front - out, corner };
}

/** Whether a shelf leaves room to the inset doors before its bay. */
function isBehindDoors({ box, problems }: Room, shelf: string, { setback }: ShelfSpec, bay: number): boolean {
  const inset = insetBefore(box.spec, box.shop, bay);
  if (setback.value >= inset) return true;
  problems.add(setback, say.shelfInDoor({ shelf, setback: setback.value, inset }));
  return false;
}

/** Whether a shelf stands within the box and clear of the others in its bay. */
function hasHeight(
  { box, taken, problems }: Room,
  key: string,
  at: Located<Micrometres>,
  run: Interval,
  bay: number,
): boolean {
  if (!within(run, box.clearZ)) {
    const low = at.value + box.clearZ.from - run.from;
    const high = at.value + box.clearZ.to - run.to;
    const figures = { shelf: key, at: at.value, above: box.boards.top ? 'top' : 'rails' } as const;
    problems.add(at, low <= high ? say.shelfOutside({ ...figures, room: [low, high] }) : say.shelfNowhere(figures));
    return false;
  }
  const other = taken[bay]!.find((shelfThere) => overlaps(shelfThere.run, run));
  if (other === undefined) return true;
  const up = at.value + other.run.to - run.from;
  const down = at.value + other.run.from - run.to;
  problems.add(at, say.shelfRunsInto({ shelf: key, at: at.value, other: other.key, free: [down, up] }));
  return false;
}

/** Whether anything is left of a shelf between the sides of its bay and from its setback to the back. */
function hasSize(
  { box, problems }: Room,
  key: string,
  { at, setback }: ShelfSpec,
  bay: Bay,
  { play }: ShelfKind,
  { length, width, corner }: Pick<PlacedShelf, 'length' | 'width'> & { readonly corner: PlacedShelf['corner'] },
): boolean {
  if (length <= 0) {
    problems.add(at, say.shelfNoLength({ shelf: key, bay: extent(bay), play: 2 * play }));
    return false;
  }
  if (corner !== undefined && (corner.u >= width || corner.v >= length)) {
    problems.add(setback, say.shelfAllCut({ shelf: key, setback: setback.value }));
    return false;
  }
  if (width > 0) return true;
  problems.add(setback, say.shelfNoWidth({ shelf: key, clear: box.clearDepth, setback: setback.value }));
  return false;
}
