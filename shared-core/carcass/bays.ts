import type { DividerSpec } from './spec.js';
import { half } from '../length/units.js';
import type { Board } from '../shop/model.js';
import type { Box } from './box.js';
import { boardFor } from './choices.js';
import type { Interval } from './interval.js';
import { say } from './messages.js';
import type { Bay } from './model.js';
import type { Problems } from './problems.js';

/** A divider with its board and where its wood runs from left to right. */
export interface PlacedDivider extends Omit<DividerSpec, 'board'> {
  readonly board: Board;
  readonly run: Interval;
}

/** Dividers from left to right, and the bays that they leave. One that cannot stand is left out. */
export function layBays(
  box: Box,
  problems: Problems,
): { readonly dividers: readonly PlacedDivider[]; readonly bays: readonly Bay[] } {
  const { spec, shop, clearX, boards } = box;
  if (spec.dividers.length > 0 && boards.top === null && boards.railFront.thickness !== boards.railBack.thickness)
    problems.add(
      spec.dividers[0]!.at,
      say.dividerUnderRails({ thick: [boards.railFront.thickness, boards.railBack.thickness] }),
    );

  const wanted = spec.dividers
    .map((divider): PlacedDivider => {
      const board = boardFor(spec, shop, divider.key, divider.board);
      const from = divider.at.value - half(board.thickness);
      return { ...divider, board, run: { from, to: from + board.thickness } };
    })
    .sort((a, b) => a.run.from - b.run.from);

  const dividers: PlacedDivider[] = [];
  const bays: Bay[] = [];
  let open = { from: clearX.from, left: 'left' };
  for (const divider of wanted) {
    const { key, at, run } = divider;
    const room: Interval = { from: open.from, to: clearX.to };
    if (run.from <= room.from || run.to >= room.to) {
      problems.add(
        at,
        say.dividerOutside({ divider: key, run: [run.from, run.to], beside: open.left, room: [room.from, room.to] }),
      );
      continue;
    }
    dividers.push(divider);
    bays.push({ from: open.from, to: run.from, left: open.left, right: key });
    open = { from: run.to, left: key };
  }
  bays.push({ from: open.from, to: clearX.to, left: open.left, right: 'right' });
  return { dividers, bays };
}
