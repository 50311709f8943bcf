import type { Located, Path } from '../document/place.js';
import type { Counted } from '../job/fill.js';
import type { JobCarcass } from '../job/model.js';
import { keyOf } from '../job/panel-key.js';
import { half, type Micrometres } from '../length/units.js';
import type { Shop } from '../shop/model.js';
import { sizeOfKind } from '../shop/habits.js';
import { measureBox, type Box } from './box.js';
import { boardFor, boardNamed } from './choices.js';
import { underAppliances } from './appliances.js';
import { insetBefore } from './fronts/asked.js';
import { extent, type Interval } from './interval.js';
import { say } from './messages.js';
import { Problems, type Problem } from './problems.js';
import { bodyOf, FIXED, looseOn, type ShelfKind } from './shelf-kinds.js';
import type { CarcassSpec, DividerSpec, ShelfSpec } from './spec.js';
import { withoutInCorner } from './without.js';
import { openingsBetween, spreadDividers, spreadShelves } from './spread.js';

export interface Settled {
  readonly spec: CarcassSpec;
  /** Numbers of shelves or dividers that do not find room. */
  readonly problems: readonly Problem[];
  /** False where something of which only the number is given has no places, so that it is missing in the spec. */
  readonly isWhole: boolean;
}

/**
 * What a carcass is to be once all that follows from sizes is settled: its height, its rows, and the places of shelves and
 * dividers of which only the number is given. Where there is no box to find places in, building it says so. Never throws.
 */
export function settle(asked: JobCarcass, shop: Shop): Settled {
  const { job, without } = withoutInCorner(asked);
  const problems = new Problems();
  const bare = withSizes(job, shop);
  const box = shop.boards.size === 0 ? null : measureBox(bare, shop, new Problems());
  const dividers = listed('divider', job.dividers, bare) ?? countedDividers(job.dividers, box, problems);
  const opening = box && { from: box.clearZ.from - box.sideZ.from, to: box.clearZ.to - box.sideZ.from };
  const shelves = (
    thing: 'shelf' | 'loose',
    asked: JobCarcass['fixedShelves'],
    kind: ShelfKind,
    openings: readonly Interval[],
  ): readonly ShelfSpec[] | null =>
    listed(thing, asked, bare) ?? countedShelves(thing, asked, kind, openings, box, problems);
  const onOwn = shelves('shelf', job.fixedShelves, FIXED, opening === null ? [] : [opening]);
  const under = box === null ? [] : underAppliances({ ...bare, dividers: dividers ?? [] }, box, onOwn ?? []);
  const fixed = onOwn === null ? null : [...onOwn, ...under];
  const taken = box === null ? [] : (fixed ?? []).map((shelf) => runOf(shelf, box));
  const left = opening === null ? [] : openingsBetween(opening, taken);
  const loose = shelves('loose', job.looseShelves, looseOn(shop.habits), left);
  const parted = { ...bare, dividers: dividers ?? [] };
  const behind = (some: readonly ShelfSpec[] | null): readonly ShelfSpec[] =>
    (some ?? []).map((one) => behindDoors(one, parted, shop));
  return {
    spec: { ...parted, without, fixedShelves: behind(fixed), looseShelves: behind(loose) },
    problems: problems.found,
    isWhole: dividers !== null && fixed !== null && loose !== null,
  };
}

/** Height and rows as they are given, or balanced: a whole number of pitches between the ends' halves of the side's board. */
function withSizes(job: JobCarcass, shop: Shop): CarcassSpec {
  const { habits } = shop;
  const unwritten = (value: Micrometres, key: string): Located<Micrometres> => ({
    value,
    place: job.name.place,
    path: [key],
    written: false,
  });
  const sized = (height: Micrometres, rowOffset: Micrometres): CarcassSpec => ({
    ...job,
    doors: { ...job.doors, board: job.doors.board ?? job.board, band: job.doors.band ?? job.band },
    drawers: {
      ...job.drawers,
      board: job.drawers.board ?? job.board,
      band: job.drawers.band ?? job.band,
      joint: job.drawers.joint ?? job.joint,
    },
    endPanels: { ...job.endPanels, ...ofFronts(job, job.endPanels) },
    fillers: { ...job.fillers, ...ofFronts(job, job.fillers) },
    blind: { ...job.blind, ...ofFronts(job, job.blind) },
    height: job.height ?? unwritten(height, 'height'),
    rowOffset: job.rowOffset ?? unwritten(rowOffset, 'row-offset'),
    dividers: [],
    fixedShelves: [],
    looseShelves: [],
    without: [],
    note: job.note?.value ?? '',
  });
  const spec = sized(0, 0);
  // Building says that there are none.
  if (shop.boards.size === 0) return spec;
  const side = boardFor(spec, shop, spec.leading, spec.board).nominal;
  const over = spec.top.value === 'over' ? boardFor(spec, shop, 'top', spec.board).thickness : 0;
  const under = spec.bottom.value === 'under' ? boardFor(spec, shop, 'bottom', spec.board).thickness : 0;
  const { pitches } = sizeOfKind(habits, spec.kind.value);
  return sized(pitches * habits.pitch + side + over + under, half(side));
}

/** Board and band of what stands beside the fronts, which are theirs unless it has its own. */
function ofFronts({ doors, ...job }: JobCarcass, { board, band }: Pick<JobCarcass['fillers'], 'board' | 'band'>) {
  return { board: board ?? doors.board ?? job.board, band: band ?? doors.band ?? job.band };
}

/** The things of a list, with the board of the carcass where they have none of their own; null for a number. */
function listed<T extends { readonly board: Located<string> | null }>(
  thing: 'divider' | 'shelf' | 'loose',
  asked: Counted<T> | null,
  { board }: CarcassSpec,
): readonly (T & { readonly key: string; readonly board: Located<string> })[] | null {
  if (asked === null) return [];
  if (asked.as === 'count') return null;
  // What nobody wrote would be written in the item.
  const usual = (path: Path): Located<string> => (board.written ? board : { ...board, path: [...path, 'board'] });
  return asked.items.map(({ value, path }, index) => ({
    ...value,
    key: keyOf(thing, index + 1),
    board: value.board ?? usual(path),
  }));
}

function countedDividers(
  asked: JobCarcass['dividers'],
  box: Box | null,
  problems: Problems,
): readonly DividerSpec[] | null {
  if (box === null || asked?.as !== 'count') return null;
  const { spec, shop, clearX } = box;
  const count = asked.count.value;
  const { thickness } = boardNamed(shop, spec.board.value);
  const places = spreadDividers(count, clearX.from, clearX.to, thickness, half(thickness));
  if (places === null) {
    problems.add(asked.count, say.dividersNoBay({ count, thickness, clear: extent(clearX) }));
    return null;
  }
  return places.map((place, index) => {
    const at = counted(place, asked.count, index);
    return { ...asked.each(at), key: keyOf('divider', index + 1), board: spec.board };
  });
}

function countedShelves(
  thing: 'shelf' | 'loose',
  asked: JobCarcass['fixedShelves'],
  kind: ShelfKind,
  openings: readonly Interval[],
  box: Box | null,
  problems: Problems,
): readonly ShelfSpec[] | null {
  if (box === null || asked?.as !== 'count') return null;
  const { spec, shop } = box;
  const { pitch } = shop.habits;
  const count = asked.count.value;
  const body = bodyOf(kind, boardNamed(shop, spec.board.value).thickness);
  const places = spreadShelves(count, openings, body, { offset: spec.rowOffset.value, pitch });
  if (places.length < count) {
    const of = thing === 'shelf' ? 'fixed' : 'loose';
    problems.add(asked.count, say.shelvesTooMany({ count, kind: of, pitch, most: places.length }));
  }
  return places.map((place, index) => {
    const at = counted(place, asked.count, index);
    return { ...asked.each(at), key: keyOf(thing, index + 1), board: spec.board };
  });
}

/** A shelf whose setback nobody wrote stands back behind inset doors by as much as it does from the front without them. */
function behindDoors(shelf: ShelfSpec, spec: CarcassSpec, shop: Shop): ShelfSpec {
  const { setback, bay } = shelf;
  if (setback.written || shop.boards.size === 0) return shelf;
  const inset = insetBefore(spec, shop, bay === null ? null : bay.value - 1);
  return inset === 0 ? shelf : { ...shelf, setback: { ...setback, value: setback.value + inset } };
}

/** A place that follows from a count: blamed on the count, written as an item of the list that could stand there. */
function counted(at: Micrometres, count: Located<number>, index: number): Located<Micrometres> {
  return { value: at, place: count.place, path: [...count.path, index], written: false };
}

/** What a fixed shelf takes up of the height between bottom and top, from the bottom end of the sides. */
function runOf({ key, at, board }: ShelfSpec, { spec, shop }: Box): Interval {
  const { thickness } = boardFor(spec, shop, key, board);
  const from = at.value - FIXED.below(thickness);
  return { from, to: from + thickness };
}
