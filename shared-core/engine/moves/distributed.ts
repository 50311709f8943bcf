import { measureBox, type Box } from '../../carcass/box.js';
import { boardFor } from '../../carcass/choices.js';
import type { Interval } from '../../carcass/interval.js';
import { Problems } from '../../carcass/problems.js';
import { bodyOf, FIXED, looseOn } from '../../carcass/shelf-kinds.js';
import type { CarcassSpec, DividerSpec, ShelfSpec } from '../../carcass/spec.js';
import { openingsBetween, spreadDividers, spreadShelves } from '../../carcass/spread.js';
import type { Located } from '../../document/place.js';
import { ownText, setLength } from '../../findings/changes.js';
import { half, type Micrometres } from '../../length/units.js';
import { groupBy } from '../../machining/plan/numbers.js';
import type { Shop } from '../../shop/model.js';
import type { JobAnalysis } from '../analysis.js';
import { cursorAt } from '../cursor.js';
import { notationIn } from '../notation.js';
import type { Refactor } from '../refactor.js';
import { editsInCarcass } from '../repairs.js';
import { say, type Spread } from './messages.js';

/** A thing at its written place, and where it comes to stand. */
interface Move {
  readonly at: Located<Micrometres>;
  readonly to: Micrometres;
}

/** Dividers or shelves of a list, moved so that the openings between them are equal: shelves on the pitch grid, bay by bay. */
export function distributed(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path } = cursorAt(analysis, offset);
  const [key] = path;
  if (part !== 'self' || carcass === null || !isSpread(key)) return [];
  const { spec } = analysis.carcasses[carcass]!;
  const { shop } = analysis;
  const box = spec === null || shop.boards.size === 0 ? null : measureBox(spec, shop, new Problems());
  const moves = spec === null || box === null ? null : movesOf(key, spec, box, shop);
  if (moves === null || !moves.every(({ at }) => ownText(at))) return [];
  if (moves.every(({ at, to }) => at.value === to)) return [];
  const how = notationIn(analysis, carcass);
  const changes = moves.filter(({ at, to }) => at.value !== to).map(({ at, to }) => setLength(how, at.path, to));
  const edits = editsInCarcass(analysis, carcass, changes);
  return edits.length === 0 ? [] : [{ title: say.evenly({ key, at: moves.map(({ to }) => to) }), edits }];
}

const isSpread = (key: unknown): key is Spread =>
  key === 'dividers' || key === 'fixed-shelves' || key === 'loose-shelves';

/** null where there are none, or no places for all of them. */
function movesOf(key: Spread, spec: CarcassSpec, box: Box, shop: Shop): readonly Move[] | null {
  if (key === 'dividers') return moveDividers(spec.dividers, box, shop);
  const shelves = key === 'fixed-shelves' ? spec.fixedShelves : spec.looseShelves;
  const byBay = groupBy(shelves, ({ bay }) => bay?.value ?? 0);
  // What stands in every bay and what stands in one would have to make way for each other.
  if (shelves.length === 0 || (byBay.has(0) && byBay.size > 1)) return null;
  const found = [...byBay].map(([bay, some]) => moveShelves(key, some, bay, spec, box, shop));
  return found.every((one) => one !== null) ? found.flat() : null;
}

function moveDividers(dividers: readonly DividerSpec[], { spec, clearX }: Box, shop: Shop): readonly Move[] | null {
  const thick = new Set(dividers.map(({ key, board }) => boardFor(spec, shop, key, board).thickness));
  const [thickness] = thick;
  if (thickness === undefined || thick.size > 1) return null;
  const places = spreadDividers(dividers.length, clearX.from, clearX.to, thickness, half(thickness));
  return places && inOrder(dividers, places);
}

function moveShelves(
  key: 'fixed-shelves' | 'loose-shelves',
  shelves: readonly ShelfSpec[],
  bay: number,
  spec: CarcassSpec,
  { clearZ, sideZ }: Box,
  shop: Shop,
): readonly Move[] | null {
  const thicknessOf = (shelf: ShelfSpec): Micrometres => boardFor(spec, shop, shelf.key, shelf.board).thickness;
  const thick = new Set(shelves.map(thicknessOf));
  const [thickness] = thick;
  if (thickness === undefined || thick.size > 1) return null;
  const opening: Interval = { from: clearZ.from - sideZ.from, to: clearZ.to - sideZ.from };
  const runs = spec.fixedShelves
    .filter((shelf) => shelf.bay === null || bay === 0 || shelf.bay.value === bay)
    .map((shelf): Interval => {
      const from = shelf.at.value - FIXED.below(thicknessOf(shelf));
      return { from, to: from + thicknessOf(shelf) };
    });
  const openings = key === 'fixed-shelves' ? [opening] : openingsBetween(opening, runs);
  const body = bodyOf(key === 'fixed-shelves' ? FIXED : looseOn(shop.habits), thickness);
  const grid = { offset: spec.rowOffset.value, pitch: shop.habits.pitch };
  const places = spreadShelves(shelves.length, openings, body, grid);
  return places.length < shelves.length ? null : inOrder(shelves, places);
}

/** The lowest, or the one furthest to the left, comes to the first place, and so on. */
function inOrder(
  things: readonly { readonly at: Located<Micrometres> }[],
  places: readonly Micrometres[],
): readonly Move[] {
  return things.toSorted((a, b) => a.at.value - b.at.value).map(({ at }, i) => ({ at, to: places[i]! }));
}
