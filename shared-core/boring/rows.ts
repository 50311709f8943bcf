import { clearDepth } from '../carcass/panel.js';
import { chosen } from '../carcass/choices.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { isSide } from '../carcass/roles.js';
import type { Located, Path, Place } from '../document/place.js';
import type { CarcassSpec, RowChoice } from '../job/model.js';
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
  /** Whose thickness says how near to the far end a hole may stand: the thinner side's for both, so that they are bored alike. */
  readonly board: Board;
  readonly place: Place;
  readonly path: Path;
}

/** The rows of sides and dividers. */
export function layRows(spec: CarcassSpec, carcass: Carcass, shop: Shop): readonly Row[] {
  const wishes = carcass.panels.flatMap((panel) => {
    if (isSide(panel)) return [sideWish(spec, carcass, panel)];
    if (panel.role === 'divider') return dividerWish(spec, carcass, shop, panel);
    return [];
  });
  return wishes.flatMap((wish) => rowsFor(spec, shop, wish));
}

/** Every hole of a row, the first one at its offset. */
export function rowBores(row: Row): readonly Bore[] {
  return Array.from({ length: row.count }, (_, k) => ({
    id: `${row.id}:${k + 1}`,
    panel: row.panel,
    face: row.face,
    u: row.u,
    v: row.offset + k * row.pitch,
    diameter: row.diameter,
    depth: row.depth,
    through: row.through,
    purpose: 'row' as const,
    group: row.id,
    fitting: null,
    place: row.place,
  }));
}

function sideWish(spec: CarcassSpec, carcass: Carcass, panel: Panel): RowWish {
  const lines = chosen(spec, panel.key, 'rows') ?? spec.rows;
  const offset = chosen(spec, panel.key, 'rowOffset') ?? spec.rowOffset;
  return {
    panel,
    lines: lines.value,
    face: 'inside',
    through: false,
    offset: offset.value,
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
      offset: chosen(spec, panel.key, 'rowOffset')?.value ?? offsetOnGrid(spec, carcass, shop, panel),
      board: panel.board,
      place: cause.place,
      path: cause.path,
    },
  ];
}

function thinnerSide({ panels }: Carcass): Board {
  const sides = panels.filter(isSide);
  return sides.map(({ board }) => board).reduce((a, b) => (b.nominal < a.nominal ? b : a));
}

/** The lowest hole of the left side's grid that is at least half a thickness above the divider's end. */
function offsetOnGrid(spec: CarcassSpec, carcass: Carcass, shop: Shop, divider: Panel): Micrometres {
  const side = carcass.panels.find(({ key }) => key === 'left')!;
  const { pitch } = shop.habits;
  const grid = side.pose.origin.z + (chosen(spec, 'left', 'rowOffset') ?? spec.rowOffset).value - divider.pose.origin.z;
  const least = half(divider.thickness);
  return grid + Math.ceil((least - grid) / pitch) * pitch;
}

function rowsFor(spec: CarcassSpec, shop: Shop, wish: RowWish): readonly Row[] {
  const { panel, lines, offset } = wish;
  const { pitch, rowDiameter, rowDepth, rowOffset } = shop.habits;
  const margin = Math.min(offset, rowOffset ?? half(wish.board.nominal));
  const count = Math.floor((panel.length - margin - offset) / pitch) + 1;
  if (lines === 'none' || count <= 0) return [];

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
  const rear = lines === 'both' ? rearSetback(spec, panel, shop) : null;
  return [row('front', spec.rowSetback.value), ...(rear === null ? [] : [row('rear', rear)])];
}

/** As far back as whole pitches from the front row and the rear margin allow, in front of a groove; null where there is no room. */
function rearSetback(spec: CarcassSpec, panel: Panel, shop: Shop): Micrometres | null {
  if (spec.rearRow !== null) return spec.rearRow.value;
  const { pitch, rearMargin } = shop.habits;
  const pitches = Math.floor((clearDepth(panel) - rearMargin - spec.rowSetback.value) / pitch);
  return pitches >= 1 ? spec.rowSetback.value + pitches * pitch : null;
}
