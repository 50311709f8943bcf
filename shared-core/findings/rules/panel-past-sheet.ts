import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Board } from '../../shop/model.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { grouped } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { sizeCause, type PanelSide } from '../size-cause.js';

interface PastSheet {
  readonly panels: readonly string[];
  readonly cut: readonly [length: Micrometres, width: Micrometres];
  readonly board: string;
  /** null where the shop does not say. */
  readonly sheet: readonly [length: Micrometres | null, width: Micrometres | null];
  readonly grainAlong: boolean;
}

export const say = messages('panel-past-sheet', {
  pastSheet: ({ panels, cut, board, sheet, grainAlong }: PastSheet, show) =>
    `${listed(panels)} ${verb(panels.length, 'is', 'are')} cut to ${by(cut, show)}, and a sheet of ${quoted(board)} measures ${by(sheet, show)}${grainAlong ? ' with the grain along its length' : ''}. Change the size, or choose another board.`,
});

/** '2512 mm × 559 mm'; one figure where the other is not known. */
const by = (size: PastSheet['sheet'], show: Show): string =>
  size
    .filter((side) => side !== null)
    .map((side) => show.length(side))
    .join(' × ');

export const panelPastSheet: CarcassRule = {
  name: 'panel-past-sheet',
  severity: 'error',
  about: {
    what: 'A panel is larger than the sheet that it is to be cut from.',
    why: 'Otherwise this comes to light only at the saw, when the rest has been cut. The sizes to cut are compared with `sheet-length` and `sheet-width` of the board; where its `grain` runs along the sheet the panel’s length does too, else it may lie either way. Trim and kerf are not counted: a panel as large as the sheet has no edge to spare.',
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
      sheet: [board.sheetLength, board.sheetWidth],
      grainAlong: board.grain === 'length',
    }),
  };
}

/** The side on which a panel does not come out of its sheet, the longer one first; null where it does. */
function excessOf({ board, cutLength, cutWidth }: Panel): PanelSide | null {
  const along = excessIn(board, cutLength, cutWidth);
  if (along === null) return null;
  // Turned on the sheet its length lies across.
  return board.grain === 'none' && excessIn(board, cutWidth, cutLength) === null ? null : along;
}

function excessIn({ sheetLength, sheetWidth }: Board, length: Micrometres, width: Micrometres): PanelSide | null {
  if (sheetLength !== null && length > sheetLength) return 'length';
  return sheetWidth !== null && width > sheetWidth ? 'width' : null;
}
