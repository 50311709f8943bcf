import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Board } from '../../shop/model.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { grouped } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { sizeCause, type PanelSide } from '../size-cause.js';

type SheetSize = readonly [length: Micrometres | null, width: Micrometres | null];

interface PastSheet {
  readonly panels: readonly string[];
  readonly cut: readonly [length: Micrometres, width: Micrometres];
  readonly board: string;
  /** Every size that the board is had in; null where the shop does not say a side of the usual one. */
  readonly sheets: readonly SheetSize[];
  readonly grainAlong: boolean;
}

export const say = messages('panel-past-sheet', {
  pastSheet: ({ panels, cut, board, sheets, grainAlong }: PastSheet, show) =>
    `${listed(panels)} ${verb(panels.length, 'is', 'are')} cut to ${by(cut, show)}, and a sheet of ${quoted(board)} measures ${listed(
      sheets.map((sheet) => by(sheet, show)),
      'or',
    )}${grainAlong ? ' with the grain along its length' : ''}. Change the size, or choose another board.`,
});

/** '2512 mm × 559 mm'; one figure where the other is not known. */
const by = (size: SheetSize, show: Show): string =>
  size
    .filter((side) => side !== null)
    .map((side) => show.length(side))
    .join(' × ');

export const panelPastSheet: CarcassRule = {
  name: 'panel-past-sheet',
  severity: 'error',
  about: {
    what: 'A panel is larger than the sheet that it is to be cut from.',
    why: 'Otherwise this comes to light only at the saw, when the rest has been cut. The sizes to cut are compared with `sheet-length` and `sheet-width` of the board, and with its further `sheets`; where its `grain` runs along the sheet the panel’s length does too, else it may lie either way. Trim and kerf are not counted: a panel as large as the sheet has no edge to spare.',
    remedy: 'Change the size, choose a board with a larger sheet, or correct the size of the sheet in the shop file.',
    example: 'kind: tall\nwidth: 600\nheight: 2900',
  },
  check(context) {
    const excesses = context.carcass.panels.flatMap((panel) => {
      const side = excessOf(panel);
      return side === null ? [] : [{ panel, side, place: sizeCause(context, panel, side).place }];
    });
    return grouped(
      excesses,
      ({ panel, side, place }) => `${panel.board.name} ${panel.cutLength} ${panel.cutWidth} ${side} ${place.start}`,
    ).map(found);
  },
};

interface Excess {
  readonly panel: Panel;
  readonly side: PanelSide;
  readonly place: Found['place'];
}

function found(same: readonly Excess[]): Found {
  const { panel, place } = same[0]!;
  const { board, cutLength, cutWidth } = panel;
  const names = same.map((one) => one.panel.key);
  return {
    place,
    panel: panel.key,
    message: say.pastSheet({
      panels: names,
      cut: [cutLength, cutWidth],
      board: board.name,
      sheets: sheetsOf(board),
      grainAlong: board.grain === 'length',
    }),
  };
}

/** The side on which a panel does not come out of its sheet, the longer one first; null where it does. */
function excessOf({ board, cutLength, cutWidth }: Panel): PanelSide | null {
  const excesses = sheetsOf(board).map((sheet) => {
    const along = excessIn(sheet, cutLength, cutWidth);
    // Turned on the sheet its length lies across.
    return along !== null && board.grain === 'none' && excessIn(sheet, cutWidth, cutLength) === null ? null : along;
  });
  return excesses.includes(null) ? null : (excesses[0] ?? null);
}

/** The sizes that a board is had in, the usual one first; those of which none is left are none. */
function sheetsOf({ sheetLength, sheetWidth, sheets }: Board): readonly SheetSize[] {
  const further = sheets.filter(({ count }) => count !== 0).map(({ length, width }): SheetSize => [length, width]);
  return sheetLength === null && sheetWidth === null ? further : [[sheetLength, sheetWidth], ...further];
}

function excessIn([sheetLength, sheetWidth]: SheetSize, length: Micrometres, width: Micrometres): PanelSide | null {
  if (sheetLength !== null && length > sheetLength) return 'length';
  return sheetWidth !== null && width > sheetWidth ? 'width' : null;
}
