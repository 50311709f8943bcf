import type { Carcass, Panel } from '../carcass/model.js';
import type { Micrometres } from '../length/units.js';
import { groupBy } from '../machining/plan/numbers.js';
import type { Board } from '../shop/model.js';

/** Panels of one board that are cut and banded alike. */
export interface CutSize {
  readonly board: Board;
  /** Bands taken off; the length runs along the grain where the board has one. */
  readonly length: Micrometres;
  readonly width: Micrometres;
  readonly finishedLength: Micrometres;
  readonly finishedWidth: Micrometres;
  readonly bands: Panel['bands'];
  /** How many pieces there are in all. */
  readonly pieces: number;
  /** In the order of the job, each with how many equal ones there are of it. */
  readonly panels: readonly CutPanel[];
}

export interface CutPanel {
  readonly carcass: string;
  readonly panel: string;
  readonly pieces: number;
}

interface Growing extends CutSize {
  pieces: number;
  readonly panels: CutPanel[];
}

/** The panels of a job by board and size, boards in the order of the job, the longest pieces first and the widest of these. */
export function cutList(
  carcasses: readonly { readonly name: string; readonly carcass: Carcass }[],
): ReadonlyMap<Board, readonly CutSize[]> {
  const sizes = new Map<string, Growing>();
  for (const { name, carcass } of carcasses)
    for (const panel of carcass.panels) {
      if (panel.cutLength <= 0 || panel.cutWidth <= 0) continue;
      const bands = Object.values(panel.bands).map((band) => band?.name ?? '');
      const key = [panel.board.name, panel.cutLength, panel.cutWidth, panel.length, panel.width, ...bands].join('|');
      const same = sizes.get(key) ?? sizeOf(panel);
      sizes.set(key, same);
      same.panels.push({ carcass: name, panel: panel.key, pieces: carcass.count });
      same.pieces += carcass.count;
    }
  const boards = groupBy<CutSize, Board>(sizes.values(), ({ board }) => board);
  for (const list of boards.values()) list.sort((a, b) => b.length - a.length || b.width - a.width);
  return boards;
}

function sizeOf(panel: Panel): Growing {
  return {
    board: panel.board,
    length: panel.cutLength,
    width: panel.cutWidth,
    finishedLength: panel.length,
    finishedWidth: panel.width,
    bands: panel.bands,
    pieces: 0,
    panels: [],
  };
}
