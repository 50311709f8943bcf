import type { Row } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import { footprintOf, middleOf } from '../../carcass/footprint.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Place } from '../../document/place.js';
import type { ShelfSpec } from '../../carcass/spec.js';
import type { Micrometres } from '../../length/units.js';
import { half } from '../../length/units.js';
import { backToHabit } from '../causes.js';
import { setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import { besides, boresOfGroups, distinct, grouped, panelsOfShelf } from '../lookups.js';
import { insideOf, pinsOf, rowsUnder } from '../pins-under.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';

interface Tips {
  readonly shelves: readonly string[];
  readonly deep: Micrometres;
  readonly apart: Micrometres;
  readonly front: Micrometres;
  readonly rear: Micrometres;
}

export const say = messages('shelf-tips', {
  intoCorner: (
    {
      shelves,
      behind,
      least,
    }: { readonly shelves: readonly string[]; readonly behind: Micrometres; readonly least: Micrometres },
    show,
  ) =>
    `${listed(shelves)} ${verb(shelves.length, 'tips', 'tip')} into the corner: ${verb(shelves.length, 'its', 'their')} middle lies ${show.length(behind)} behind the pins in the two sides. Give the carcass backs of a board at least ${show.length(least)} thick (\`back: board\`), so that a row is bored for a pin there.`,
  giveBack: ({ board }: { readonly board: string }) => `Make the backs of ${quoted(board)}`,
  tips: ({ shelves, deep, apart, front, rear }: Tips, show) =>
    `${listed(shelves)} ${verb(shelves.length, 'tips', 'tip')}: the pins, ${show.length(front)} and ${show.length(rear)} from the front edge, stand ${show.length(apart)} apart, and the minimum is half the depth of ${show.length(deep)}. Move the rear row toward the back (\`rear-row\`), or make the shelf a fixed one.`,
});

export const shelfTips: CarcassRule = {
  name: 'shelf-tips',
  severity: 'warning',
  about: {
    what: 'The front and rear pins of a loose shelf stand too close together for its depth, or nothing carries it in the corner that it reaches into.',
    why: 'A loose shelf only lies on its pins. Where they stand less than half of its depth apart, so much of it overhangs at the front or the back that a load there tips it, and what is on it slides off (half: common practice, no source).',
    remedy:
      'Bring the rear row further back (`rear-row`), make the shelf less deep (`setback`), or make it a fixed one. Across a corner, make the backs thick enough for a row.',
    example: 'kind: base\nwidth: 600\nrear-row: 197\nloose-shelves: 1',
  },
  check(context) {
    if (context.carcass.diagonal !== null) return tippingIntoCorner(context);
    const tipping = context.spec.looseShelves.flatMap((shelf) =>
      panelsOfShelf(context, shelf).flatMap((panel) => {
        const pins = closePins(context, panel);
        return pins === null ? [] : [{ shelf, panel, ...pins }];
      }),
    );
    return grouped(tipping, ({ shelf, apart, deep }) => {
      const { part, start } = placeOf(context, shelf);
      return `${part} ${start} ${apart} ${deep}`;
    }).map((same) => found(context, same));
  },
};

interface Tipping {
  readonly shelf: ShelfSpec;
  readonly panel: Panel;
  readonly rows: readonly Row[];
  readonly apart: Micrometres;
  readonly deep: Micrometres;
}

/** The pins of a shelf where they stand too close together; null where it lies well. The rows of both sides stand alike. */
function closePins(context: CarcassContext, panel: Panel): Pick<Tipping, 'rows' | 'apart' | 'deep'> | null {
  const { from, to } = extentsOf(panel).y;
  const deep = to - from;
  const sides = besides(context, panel).flatMap(({ rows }) => {
    const front = rows.find(({ line }) => line === 'front');
    const rear = rows.find(({ line }) => line === 'rear');
    // Where a row is missing another rule says so.
    return front && rear ? [{ rows: [front, rear], apart: rear.u - front.u, deep }] : [];
  });
  return sides.find(({ apart }) => apart < half(deep)) ?? null;
}

function placeOf({ spec }: CarcassContext, shelf: ShelfSpec): Place {
  return spec.rearRow?.written ? spec.rearRow.place : shelf.at.place;
}

function found(context: CarcassContext, same: readonly Tipping[]): Found {
  const { shelf, panel, rows, apart, deep } = same[0]!;
  const shelves = distinct(same.map((one) => one.panel.key));
  const [front, rear] = rows;
  const { rearRow } = context.spec;
  return {
    place: placeOf(context, shelf),
    panel: panel.key,
    message: say.tips({ shelves, deep, apart, front: front!.u, rear: rear!.u }),
    bores: boresOfGroups(context, new Set(same.flatMap((one) => one.rows.map(({ id }) => id)))),
    repairs: rearRow === null ? [] : backToHabit([{ value: rearRow, what: 'rear-row' }]),
  };
}

/** Less than this much inside the outline of its pins, and a hand on the edge tips it (common practice, no source). */
const SURE: Micrometres = 20_000;

/** Across a corner the middle of a shelf lies behind its pins in the sides: without one in the corner it tips. */
function tippingIntoCorner(context: CarcassContext): readonly Found[] {
  const { shop, spec } = context;
  const least = shop.habits.rowDepth + shop.habits.leastWall;
  const tipping = spec.looseShelves.flatMap((shelf) =>
    panelsOfShelf(context, shelf).flatMap((panel) => {
      const rows = rowsUnder(context, panel);
      const inside = insideOf(pinsOf(context, rows), middleOf(footprintOf(panel)));
      // Where a side has no rows another rule says so.
      return rows.length < 4 || inside >= SURE
        ? []
        : [{ shelf, panel, rows, behind: Math.round(Math.max(0, -inside)) }];
    }),
  );
  if (tipping.length === 0) return [];
  const { shelf, panel, behind } = tipping[0]!;
  const thick = thicker(context, least);
  return [
    {
      place: shelf.at.place,
      panel: panel.key,
      message: say.intoCorner({ shelves: distinct(tipping.map((one) => one.panel.key)), behind, least }),
      bores: boresOfGroups(context, new Set(tipping.flatMap(({ rows }) => rows.map(({ id }) => id)))),
      repairs: thick === null ? [] : [thick],
    },
  ];
}

/** The board of the carcass for its backs, where it is thick enough for a row. */
function thicker({ shop, spec }: CarcassContext, least: Micrometres): Repair | null {
  const { board: own, how } = spec.back;
  const name = spec.board.value;
  if ((shop.boards.get(name)?.thickness ?? 0) < least) return null;
  const isWord = how.written && how.path.length === 1;
  const inOwnMap = own.written && own.place.part === 'self';
  const change =
    how.value === 'none' || (isWord && how.place.part === 'self')
      ? setWord(['back'], `{ how: applied, board: ${name} }`)
      : setWord(inOwnMap ? own.path : ['back', 'board'], name);
  return { title: say.giveBack({ board: name }), changes: [change], preferred: true };
}
