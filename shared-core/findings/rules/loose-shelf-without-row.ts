import { SHOWN_WITHIN } from '../../length/show.js';
import type { Row } from '../../boring/model.js';
import { chosen } from '../../carcass/choices.js';
import type { Panel } from '../../carcass/model.js';
import type { Located } from '../../document/place.js';
import type { ShelfSpec } from '../../carcass/spec.js';
import type { RowChoice } from '../../job/model.js';
import { half, type Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';
import { listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { ownText, remove, setLength, setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import { besides, boredSpan, distinct, grouped, panelOf, panelsOfShelf } from '../lookups.js';
import { runAgainst } from '../pins-under.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface NoRow {
  readonly shelves: readonly string[];
  readonly lines: readonly Row['line'][];
  readonly sides: readonly string[];
}
interface OffPins {
  readonly shelf: string;
  readonly reach: Span;
  readonly line: Row['line'];
  readonly side: string;
  readonly at: Micrometres;
}
interface MovedShelf {
  readonly shelf: string;
  readonly at: Micrometres;
}

const lacks = ({ shelves, lines, sides }: NoRow): string =>
  `${listed(shelves)} ${verb(shelves.length, 'has', 'have')} no ${listed(lines)} ${verb(lines.length, 'row', 'rows')} of pin holes on ${listed(sides)}`;

export const say = messages('loose-shelf-without-row', {
  noRow: ({ choice, ...lack }: NoRow & { readonly choice: RowChoice }) =>
    `${lacks(lack)} (\`rows: ${choice}\`). Bore both rows with \`rows: both\`.`,
  noRoom: (lack: NoRow) =>
    `${lacks(lack)}, because there is no room behind the front row. Make the carcass deeper, or the shelf a fixed one.`,
  leftOut: (lack: NoRow) =>
    `${lacks(lack)}, because \`row-holes\` leaves them out. Take in the bays and the heights of loose shelves.`,
  takeIn: ({ key }: { readonly key: string }) => `Remove \`${key}\` and leave no hole out for it`,
  standsAt: ({ shelf, at }: MovedShelf, show) => `${shelf} stands at ${show.length(at)}.`,
  boreBoth: () => 'Bore both rows on this carcass',
  boreBothOn: ({ panels }: { readonly panels: readonly string[] }) => `Bore both rows on ${listed(panels)}`,
  removeOwn: ({ panels }: { readonly panels: readonly string[] }) =>
    `Remove \`rows\` of ${listed(panels)} and use those of the carcass (both)`,
  pastRow: (
    { shelf, at, line, side, holes }: MovedShelf & Pick<OffPins, 'line' | 'side'> & { readonly holes: Span },
    show,
  ) =>
    `${shelf} stands at ${show.length(at)}, and the ${line} row of ${side} has holes only from ${show.span(holes)}. Move the shelf to a height between them.`,
  moveToFirst: ({ shelf, at }: MovedShelf, show) => `Move ${shelf} up to ${show.exact(at)} (the first hole)`,
  moveToLast: ({ shelf, at }: MovedShelf, show) => `Move ${shelf} down to ${show.exact(at)} (the last hole)`,
  offFrontPins: (off: OffPins, show) => `${offPins(off, show)} Make the setback of the shelf smaller.`,
  offRearPins: (off: OffPins, show) => `${offPins(off, show)} Move the rear row toward the front.`,
  leaveSetback: ({ shelf }: { readonly shelf: string }) => `Leave the setback of ${shelf} to the shop`,
  leaveRearRow: () => 'Leave the place of the rear row to the shop',
});

function offPins({ shelf, reach, line, side, at }: OffPins, show: Show): string {
  return `${shelf} reaches from ${show.span(reach)} behind the front and does not lie on its ${line} pins, which stand at ${show.length(at)} in ${side}.`;
}

export const looseShelfWithoutRow: CarcassRule = {
  name: 'loose-shelf-without-row',
  severity: 'error',
  hides: true,
  about: {
    what: 'A loose shelf has no row of pin holes at one of its four corners, the row does not reach its height, or the shelf does not reach over the row.',
    why: 'A loose shelf lies on four pins: front and rear, left and right. Without one of them it tips.',
    remedy:
      'Have both rows bored (`rows: both`) on both sides of its bay, move the shelf to a height that the rows reach, or let its front and back edges reach over the pins.',
    example: 'kind: base\nwidth: 600\nrows: front\nloose-shelves: 1',
  },
  check(context) {
    return [...missingRows(context), ...shortRows(context), ...bareRows(context)];
  },
};

interface Missing {
  readonly shelf: ShelfSpec;
  readonly panel: Panel;
  readonly side: string;
  readonly line: Row['line'];
}

function missingRows(context: CarcassContext): readonly Found[] {
  const missing: Missing[] = [];
  for (const shelf of context.spec.looseShelves) {
    for (const panel of panelsOfShelf(context, shelf)) {
      for (const { side, rows } of besides(context, panel)) {
        for (const line of ['front', 'rear'] as const) {
          if (!rows.some((row) => row.line === line)) missing.push({ shelf, panel, side, line });
        }
      }
    }
  }
  return grouped(missing, (one) => choicePlace(context, one)).map((same) => {
    const { shelf, panel, side } = same[0]!;
    const choice = choiceOf(context, side);
    const narrowed = narrowing(context).filter(() => choice.value !== 'none');
    const sides = distinct(same.map((one) => one.side));
    const lines = distinct(same.map((one) => one.line));
    const shelves = distinct(same.map((one) => one.panel.key));
    return {
      place: choice.written ? choice.place : shelf.at.place,
      panel: panel.key,
      message:
        narrowed.length > 0
          ? say.leftOut({ shelves, lines, sides })
          : choice.value === 'both'
            ? say.noRoom({ shelves, lines, sides })
            : say.noRow({ shelves, lines, sides, choice: choice.value }),
      related: choice.written
        ? distinct(same.map((one) => one.shelf)).map((one) => ({
            place: one.at.place,
            message: say.standsAt({ shelf: one.key, at: one.at.value }),
          }))
        : [],
      repairs: [...takeIn(narrowed), ...giveRows(context, sides, choice)],
    };
  });
}

/** What the job writes that leaves holes of rows out. */
function narrowing({ spec: { rowHoles } }: CarcassContext): readonly Located<unknown>[] {
  return [rowHoles.bays, rowHoles.from, rowHoles.to].filter((value) => value !== null);
}

const takeIn = (narrowed: readonly Located<unknown>[]): readonly Repair[] =>
  narrowed.filter(ownText).map(({ path }) => ({
    title: say.takeIn({ key: String(path.at(-1)) }),
    changes: [remove(path)],
    preferred: false,
  }));

/** Nothing to offer where both rows are asked for already and find no room. */
function giveRows(context: CarcassContext, sides: readonly string[], choice: Located<RowChoice>): readonly Repair[] {
  if (choice.value === 'both') return [];
  const own = sides.filter((key) => chosen(context.spec, key, 'rows') !== undefined);
  const repairs: Repair[] = [];
  if (own.length === 0) {
    repairs.push({ title: say.boreBoth(), changes: [setWord(['rows'], 'both')], preferred: true });
  } else {
    repairs.push({
      title: say.boreBothOn({ panels: own }),
      changes: own.map((key) => setWord(chosen(context.spec, key, 'rows')!.path, 'both')),
      preferred: true,
    });
    if (context.spec.rows.value === 'both' && ownText(choice)) {
      repairs.push({
        title: say.removeOwn({ panels: own }),
        changes: own.map((key) => remove(chosen(context.spec, key, 'rows')!.path)),
        preferred: false,
      });
    }
  }
  return repairs;
}

function shortRows(context: CarcassContext): readonly Found[] {
  const found: Found[] = [];
  for (const shelf of context.spec.looseShelves) {
    const at = shelf.at.value;
    for (const panel of panelsOfShelf(context, shelf)) {
      const short = besides(context, panel)
        .flatMap(({ rows }) => rows)
        .find((row) => {
          const { min, max } = boredSpan(context, row);
          return at < min - SHOWN_WITHIN[context.unit] || at > max + SHOWN_WITHIN[context.unit];
        });
      if (short === undefined) continue;
      const { min: first, max: last } = boredSpan(context, short);
      const nearest = at < first ? first : last;
      found.push({
        place: shelf.at.place,
        panel: panel.key,
        message: say.pastRow({
          shelf: panel.key,
          at,
          line: short.line,
          side: short.panel,
          holes: { min: first, max: last },
        }),
        repairs: [
          {
            title: (nearest === first ? say.moveToFirst : say.moveToLast)({ shelf: shelf.key, at: nearest }),
            changes: [setLength(context, shelf.at.path, nearest)],
            preferred: true,
          },
        ],
      });
      break;
    }
  }
  return found;
}

/** Rows that the shelf, as deep as it is, does not lie over. */
function bareRows(context: CarcassContext): readonly Found[] {
  const { spec } = context;
  return spec.looseShelves.flatMap((shelf): readonly Found[] => {
    const panel = panelsOfShelf(context, shelf)[0];
    if (panel === undefined) return [];
    const bare = besides(context, panel)
      .flatMap(({ rows }) => rows)
      .flatMap((row) => {
        const { from, to } = runAgainst(panel, panelOf(context, row.panel)!);
        const isUnder = row.u - half(row.diameter) >= from && row.u + half(row.diameter) <= to;
        return isUnder ? [] : [{ ...row, from, to }];
      })[0];
    if (bare === undefined) return [];
    const { from, to } = bare;
    const atFront = bare.u - half(bare.diameter) < from;
    const cause = atFront ? shelf.setback : (spec.rearRow ?? shelf.setback);
    return [
      {
        place: cause.written ? cause.place : shelf.at.place,
        panel: panel.key,
        message: (atFront ? say.offFrontPins : say.offRearPins)({
          shelf: panel.key,
          reach: { min: from, max: to },
          line: bare.line,
          side: bare.panel,
          at: bare.u,
        }),
        repairs: ownText(cause)
          ? [
              {
                title: atFront ? say.leaveSetback({ shelf: shelf.key }) : say.leaveRearRow(),
                changes: [remove(cause.path)],
                preferred: true,
              },
            ]
          : [],
      },
    ];
  });
}

function choiceOf(context: CarcassContext, side: string): Located<RowChoice> {
  return chosen(context.spec, side, 'rows') ?? context.spec.rows;
}

/** One finding for each value that is to blame; where none is written, one for each shelf. */
function choicePlace(context: CarcassContext, missing: Missing): string {
  const choice = choiceOf(context, missing.side);
  return choice.written ? `${choice.place.part} ${choice.place.start}` : missing.shelf.key;
}
