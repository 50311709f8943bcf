import { usualClearDepth } from '../book/usual.js';
import { clearDepth } from '../carcass/panel.js';
import { chosen } from '../carcass/choices.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { lineIn, offsetOfDivider, offsetOfSide, thinnerSide } from '../carcass/grid.js';
import { roleOf, setsGrid } from '../carcass/roles.js';
import type { Role } from '../carcass/role.js';
import type { Located, Path, Place } from '../document/place.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { RowChoice } from '../job/model.js';
import { placeAt, type GridLine } from '../length/grid.js';
import { half, type Micrometres } from '../length/units.js';
import type { Board, Shop } from '../shop/model.js';
import type { Bore, Row } from './model.js';

/** Which rows a panel carries, on which face, and the text that asks for them. */
interface RowWish {
  readonly panel: Panel;
  readonly lines: RowChoice;
  readonly face: Row['face'];
  readonly through: boolean;
  readonly offset: Micrometres;
  /** The loose shelves that lie on its holes. */
  readonly shelves: readonly Panel[];
  /** Whose thickness says how near to the far end a hole may stand: the thinner side's for both, so that they are bored alike. */
  readonly board: Board;
  readonly place: Place;
  readonly path: Path;
}

type Wishes = (spec: CarcassSpec, carcass: Carcass, shop: Shop, panel: Panel) => readonly RowWish[];

const WISHES: Readonly<Record<Role['rows'], Wishes>> = {
  'set-grid': (spec, carcass, _, panel) => [sideWish(spec, carcass, panel)],
  'keep-to-grid': dividerWish,
  'one-for-shelves': backWish,
  none: () => [],
};

/** The rows of sides and dividers. */
export function layRows(spec: CarcassSpec, carcass: Carcass, shop: Shop): readonly Row[] {
  const wishes = carcass.panels.flatMap((panel) => WISHES[roleOf(panel).rows](spec, carcass, shop, panel));
  // The rear rows of all stand at one depth, so that they face each other.
  const rear = rearSetback(
    spec,
    wishes.map(({ panel }) => panel),
    shop,
  );
  return wishes.flatMap((wish) => rowsFor(spec, carcass, shop, wish, rear));
}

/** The k of the holes of a row that are bored. */
export const boredHoles = ({ count, holes }: Pick<Row, 'count' | 'holes'>): readonly number[] =>
  holes ?? Array.from({ length: count }, (_, k) => k);

/** The holes of a row that are bored. */
export function rowBores(row: Row): readonly Bore[] {
  return boredHoles(row).map((k) => ({
    id: `${row.id}:${k + 1}`,
    panel: row.panel,
    face: row.face,
    u: row.u,
    v: placeAt(row, k),
    diameter: row.diameter,
    depth: row.depth,
    through: row.through,
    purpose: 'row',
    group: row.id,
    fitting: null,
    place: row.place,
  }));
}

function sideWish(spec: CarcassSpec, carcass: Carcass, panel: Panel): RowWish {
  const own = chosen(spec, panel.key, 'rows');
  const lines = own ?? spec.rows;
  const bay = carcass.bays.findIndex(({ left, right }) => left === panel.key || right === panel.key);
  return {
    panel,
    lines: own === undefined && !hasRows(spec, bay) ? 'none' : lines.value,
    shelves: looseIn(carcass, carcass.bays[bay]),
    face: 'inside',
    through: false,
    offset: offsetOfSide(spec, panel.key),
    board: thinnerSide(carcass),
    place: lines.place,
    path: lines.path,
  };
}

/**
 * A divider carries rows where a loose shelf stands beside it or the job asks for them. They open into the bay that needs
 * them; where both do, the holes go through. Their heights are those of the sides' rows unless the job says otherwise.
 */
function dividerWish(spec: CarcassSpec, carcass: Carcass, shop: Shop, panel: Panel): readonly RowWish[] {
  const beside = (hand: 'left' | 'right'): readonly Panel[] => {
    const index = carcass.bays.findIndex((bay) => bay[hand] === panel.key);
    return hasRows(spec, index) ? looseIn(carcass, carcass.bays[index]) : [];
  };
  const [shelvesBefore, shelvesBehind] = [beside('right'), beside('left')];
  const [[before], [behind]] = [shelvesBefore, shelvesBehind];
  const asked: Located<RowChoice> | undefined = chosen(spec, panel.key, 'rows');
  const cause = asked ?? before ?? behind;
  if (cause === undefined) return [];

  const oneSide = (before === undefined) !== (behind === undefined);
  return [
    {
      panel,
      lines: asked?.value ?? (spec.rows.value === 'none' ? 'both' : spec.rows.value),
      // The outside face of a divider is its left one.
      face: oneSide && before !== undefined ? 'outside' : 'inside',
      through: !oneSide,
      shelves: [...shelvesBefore, ...shelvesBehind],
      offset: offsetOfDivider(spec, carcass, shop, panel),
      board: panel.board,
      place: cause.place,
      path: cause.path,
    },
  ];
}

/**
 * A back that carries loose shelves has one row for them, near its front edge, unless the job asks for another choice or it is too
 * thin.
 */
function backWish(spec: CarcassSpec, carcass: Carcass, shop: Shop, panel: Panel): readonly RowWish[] {
  const asked: Located<RowChoice> | undefined = chosen(spec, panel.key, 'rows');
  const { rowDepth, leastWall } = shop.habits;
  const shelves = looseIn(carcass, carcass.bays[0]);
  const cause = asked ?? (panel.thickness >= rowDepth + leastWall ? shelves[0] : undefined);
  if (cause === undefined) return [];
  return [
    {
      panel,
      lines: asked?.value ?? 'front',
      face: 'inside',
      through: false,
      shelves,
      offset: offsetOfDivider(spec, carcass, shop, panel),
      board: panel.board,
      place: cause.place,
      path: cause.path,
    },
  ];
}

/** Whether a bay, counted from 0, is one of those that get rows; without dividers there is but one, and it is. */
const hasRows = ({ rowHoles: { bays }, dividers }: CarcassSpec, bay: number): boolean =>
  bays === null || dividers.length === 0 || bays.value.some(({ value }) => value === bay + 1);

function looseIn({ panels }: Carcass, bay: Carcass['bays'][number] | undefined): readonly Panel[] {
  if (bay === undefined) return [];
  return panels.filter(
    ({ role, pose }) => role === 'loose-shelf' && bay.from <= pose.origin.x && pose.origin.x < bay.to,
  );
}

/** The holes of a row that the job leaves; undefined where it leaves all of them. */
function holesLeft(
  { rowHoles: { from, to, roundShelves } }: CarcassSpec,
  { panel, shelves }: RowWish,
  line: GridLine,
  sideFoot: Micrometres,
  { habits }: Shop,
): readonly number[] | undefined {
  if (from === null && to === null && roundShelves === null) return undefined;
  const around = roundShelves === null ? null : roundShelves.value;
  const foot = panel.pose.origin.z;
  // A shelf lies on its pins, half a hole over their centres.
  const taken = shelves.map(({ pose }) =>
    Math.round((pose.origin.z - half(habits.rowDiameter) - foot - line.offset) / line.pitch),
  );
  return boredHoles({ count: line.count }).filter((k) => {
    const height = foot - sideFoot + placeAt(line, k);
    const isBetween = height >= (from?.value ?? -Infinity) && height <= (to?.value ?? Infinity);
    return isBetween && (around === null || taken.some((hole) => Math.abs(hole - k) <= around));
  });
}

function rowsFor(
  spec: CarcassSpec,
  carcass: Carcass,
  shop: Shop,
  wish: RowWish,
  rear: Micrometres | null,
): readonly Row[] {
  const { panel, lines } = wish;
  const { rowDiameter, rowDepth } = shop.habits;
  const { offset, pitch, count } = lineIn(panel.length, wish.offset, wish.board, shop);
  const sideFoot = carcass.panels.find(setsGrid)!.pose.origin.z;
  const holes = holesLeft(spec, wish, { offset, pitch, count }, sideFoot, shop);
  if (lines === 'none' || count === 0 || holes?.length === 0) return [];

  const row = (line: Row['line'], u: Micrometres): Row => ({
    id: `${panel.key}:row-${line}`,
    panel: panel.key,
    face: wish.face,
    line,
    u,
    offset,
    pitch,
    count,
    ...(holes !== undefined && { holes }),
    diameter: rowDiameter,
    depth: wish.through ? panel.thickness : rowDepth,
    through: wish.through,
    place: wish.place,
    path: wish.path,
  });
  const front = row('front', spec.rowSetback.value);
  return lines === 'both' && rear !== null ? [front, row('rear', rear)] : [front];
}

/**
 * As far back as whole pitches from the front row and the rear margin allow in all of the panels, in front of a groove; null
 * where there is no room. Where the shop shares places, a carcass without a groove is taken as if it had the usual back, so that
 * the rear head stays.
 */
function rearSetback(spec: CarcassSpec, panels: readonly Panel[], shop: Shop): Micrometres | null {
  if (spec.rearRow !== null) return spec.rearRow.value;
  const { pitch, rearMargin, sharePlaces } = shop.habits;
  const usual = sharePlaces ? [usualClearDepth(spec.depth.value, shop)] : [];
  const clear = Math.min(...panels.map(clearDepth), ...usual);
  const pitches = Math.floor((clear - rearMargin - spec.rowSetback.value) / pitch);
  return pitches >= 1 ? spec.rowSetback.value + pitches * pitch : null;
}
