import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Board } from '../../shop/model.js';
import { figure } from '../../length/show.js';
import { grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { sizeCause, type PanelSide } from '../size-cause.js';
import { listed, show, verb } from '../words.js';

export const panelPastSheet: CarcassRule = {
  name: 'panel-past-sheet',
  severity: 'error',
  about: {
    what: 'A panel is larger than the sheet that it is to be cut from.',
    why: 'It shows at the saw, when the rest is cut. The sizes to cut are compared with `sheet-length` and `sheet-width` of the board; where its `grain` runs along the sheet the panel’s length does too, else it may lie either way. Trim and kerf are not counted: a panel as large as the sheet has no edge to spare.',
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
    ).map((same) => found(context, same));
  },
};

interface Excess {
  readonly panel: Panel;
  readonly side: PanelSide;
  readonly place: Found['place'];
}

function found(context: CarcassContext, same: readonly Excess[]): Found {
  const { panel, place } = same[0]!;
  const { board, cutLength, cutWidth } = panel;
  const names = same.map((one) => one.panel.key);
  const size = (length: Micrometres, width: Micrometres): string =>
    `${figure(length, context.unit)} x ${show(context, width)}`;
  const sheet =
    board.sheetLength !== null && board.sheetWidth !== null
      ? size(board.sheetLength, board.sheetWidth)
      : show(context, (board.sheetLength ?? board.sheetWidth)!);
  return {
    place,
    panel: panel.key,
    message:
      `${listed(names)} ${verb(names.length, 'is', 'are')} to be cut ${size(cutLength, cutWidth)}, and a sheet of ${board.name} is ` +
      `${sheet}${board.grain === 'length' ? ', its grain along the first' : ''}: ${verb(names.length, 'it does', 'they do')} not come out of it. ` +
      'Change the size, or choose another board.',
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
