import type { Row } from '../../boring/model.js';
import { chosen } from '../../carcass/choices.js';
import type { Panel } from '../../carcass/model.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Located } from '../../document/place.js';
import type { RowChoice, ShelfSpec } from '../../job/model.js';
import { half } from '../../length/units.js';
import { ownText, remove, setLength, setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import { besides, distinct, grouped, panelsOfShelf, rowStart } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, show, verb } from '../words.js';

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
    const sides = distinct(same.map((one) => one.side));
    const lines = distinct(same.map((one) => one.line));
    const shelves = distinct(same.map((one) => one.panel.key));
    return {
      place: choice.written ? choice.place : shelf.at.place,
      panel: panel.key,
      message:
        `${listed(shelves)} ${verb(shelves.length, 'has', 'have')} no ${listed(lines)} ${verb(lines.length, 'row', 'rows')} ` +
        `on ${listed(sides)} (${choice.value === 'both' ? 'there is no room behind the front row' : `rows: ${choice.value}`}). A loose shelf needs pin holes ` +
        `front and rear on both sides. ${choice.value === 'both' ? 'Make the carcass deeper, or the shelf a fixed one.' : 'Bore both rows.'}`,
      related: choice.written
        ? distinct(same.map((one) => one.shelf)).map((one) => ({
            place: one.at.place,
            message: `${one.key} stands at ${show(context, one.at.value)}.`,
          }))
        : [],
      repairs: giveRows(context, sides, choice),
    };
  });
}

/** Nothing to offer where both rows are asked for already and find no room. */
function giveRows(context: CarcassContext, sides: readonly string[], choice: Located<RowChoice>): readonly Repair[] {
  if (choice.value === 'both') return [];
  const own = sides.filter((key) => chosen(context.spec, key, 'rows') !== undefined);
  const repairs: Repair[] = [];
  if (own.length === 0) {
    repairs.push({ title: 'Bore both rows on this carcass', changes: [setWord(['rows'], 'both')], preferred: true });
  } else {
    repairs.push({
      title: `Bore both rows on ${listed(own)}`,
      changes: own.map((key) => setWord(chosen(context.spec, key, 'rows')!.path, 'both')),
      preferred: true,
    });
    if (context.spec.rows.value === 'both' && ownText(choice)) {
      repairs.push({
        title: `Let ${listed(own)} have the rows of the carcass (both)`,
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
        .find((row) => at < rowStart(context, row) - 1 || at > lastHole(context, row) + 1);
      if (short === undefined) continue;
      const first = rowStart(context, short);
      const last = lastHole(context, short);
      const nearest = at < first ? first : last;
      found.push({
        place: shelf.at.place,
        panel: panel.key,
        message:
          `${panel.key} stands at ${show(context, at)}, but the ${short.line} row of ${short.panel} has holes from ` +
          `${show(context, first)} to ${show(context, last)} only. Move the shelf to a height in between.`,
        repairs: [
          {
            title: `Move ${shelf.key} ${nearest < at ? 'down' : 'up'} to ${show(context, nearest)} (the ${nearest === first ? 'first' : 'last'} hole)`,
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
    const { from, to } = extentsOf(panel).y;
    const bare = besides(context, panel)
      .flatMap(({ rows }) => rows)
      .find((row) => row.u - half(row.diameter) < from || row.u + half(row.diameter) > to);
    if (bare === undefined) return [];
    const atFront = bare.u - half(bare.diameter) < from;
    const cause = atFront ? shelf.setback : (spec.rearRow ?? shelf.setback);
    return [
      {
        place: cause.written ? cause.place : shelf.at.place,
        panel: panel.key,
        message:
          `${panel.key} reaches from ${show(context, from)} to ${show(context, to)} behind the front, and the ${bare.line} row of ` +
          `${bare.panel} stands ${show(context, bare.u)} behind it: the shelf does not lie on its ${bare.line} pins and tips. ` +
          (atFront ? 'Make its setback smaller.' : 'Bring the rear row further to the front.'),
        repairs: ownText(cause)
          ? [
              {
                title: atFront
                  ? `Leave the setback of ${shelf.key} to the shop`
                  : 'Leave the place of the rear row to the shop',
                changes: [remove(cause.path)],
                preferred: true,
              },
            ]
          : [],
      },
    ];
  });
}

const lastHole = (context: CarcassContext, row: Row): number => rowStart(context, row) + (row.count - 1) * row.pitch;

function choiceOf(context: CarcassContext, side: string): Located<RowChoice> {
  return chosen(context.spec, side, 'rows') ?? context.spec.rows;
}

/** One finding for each value that is to blame; where none is written, one for each shelf. */
function choicePlace(context: CarcassContext, missing: Missing): string {
  const choice = choiceOf(context, missing.side);
  return choice.written ? `${choice.place.part} ${choice.place.start}` : missing.shelf.key;
}
