import { usualClearDepth } from '../book/usual.js';
import { clearDepth } from '../carcass/panel.js';
import { chosen } from '../carcass/choices.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { lineIn, offsetOfDivider, offsetOfSide, thinnerSide } from '../carcass/grid.js';
import { roleOf } from '../carcass/roles.js';
import type { Role } from '../carcass/role.js';
import type { Located, Path, Place } from '../document/place.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { RowChoice } from '../job/model.js';
import { placesOf } from '../length/grid.js';
import type { Micrometres } from '../length/units.js';
import type { Board, Shop } from '../shop/model.js';
import type { Bore, Row } from './model.js';

/** Which rows a panel carries, on which face, and the text that asks for them. */
interface RowWish {
  readonly panel: Panel;
  readonly lines: RowChoice;
  readonly face: Row['face'];
  readonly through: boolean;
  readonly offset: Micrometres;
  /** Whose thickness says how near to the far end a hole may stand: the thinner side's for both, so that they are bored alike. */
  readonly board: Board;
  readonly place: Place;
  readonly path: Path;
}

type Wishes = (spec: CarcassSpec, carcass: Carcass, shop: Shop, panel: Panel) => readonly RowWish[];

const WISHES: Readonly<Record<Role['rows'], Wishes>> = {
  'set-grid': (spec, carcass, _, panel) => [sideWish(spec, carcass, panel)],
  'keep-to-grid': dividerWish,
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
  return wishes.flatMap((wish) => rowsFor(spec, shop, wish, rear));
}

/** Every hole of a row, the first one at its offset. */
export function rowBores(row: Row): readonly Bore[] {
  return placesOf(row).map((v, k) => ({
    id: `${row.id}:${k + 1}`,
    panel: row.panel,
    face: row.face,
    u: row.u,
    v,
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
  const lines = chosen(spec, panel.key, 'rows') ?? spec.rows;
  return {
    panel,
    lines: lines.value,
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
  const shelfIn = (bay: Carcass['bays'][number] | undefined): Panel | undefined =>
    bay &&
    carcass.panels.find(
      ({ role, pose }) => role === 'loose-shelf' && bay.from <= pose.origin.x && pose.origin.x < bay.to,
    );
  const before = shelfIn(carcass.bays.find((bay) => bay.right === panel.key));
  const behind = shelfIn(carcass.bays.find((bay) => bay.left === panel.key));
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
      offset: offsetOfDivider(spec, carcass, shop, panel),
      board: panel.board,
      place: cause.place,
      path: cause.path,
    },
  ];
}

function rowsFor(spec: CarcassSpec, shop: Shop, wish: RowWish, rear: Micrometres | null): readonly Row[] {
  const { panel, lines } = wish;
  const { rowDiameter, rowDepth } = shop.habits;
  const { offset, pitch, count } = lineIn(panel.length, wish.offset, wish.board, shop);
  if (lines === 'none' || count === 0) return [];

  const row = (line: Row['line'], u: Micrometres): Row => ({
    id: `${panel.key}:row-${line}`,
    panel: panel.key,
    face: wish.face,
    line,
    u,
    offset,
    pitch,
    count,
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
