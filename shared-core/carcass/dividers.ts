import { half } from '../length/units.js';
import type { Box } from './box.js';
import { boardFor } from './choices.js';
import { extent, type Interval } from './interval.js';
import type { Carcass, Panel } from './model.js';
import { makePanel } from './panel.js';
import type { Problems } from './problems.js';

type Bays = Carcass['bays'];

/** Dividers from left to right, left faces out, and the bays that they leave. One that cannot stand is left out. */
export function buildDividers(
  box: Box,
  problems: Problems,
): { readonly dividers: readonly Panel[]; readonly bays: Bays } {
  const { spec, shop, clearX, clearZ, clearDepth, boards } = box;
  const { show } = problems;
  if (spec.dividers.length > 0 && boards.top === null && boards.railFront.thickness !== boards.railBack.thickness)
    problems.add(
      spec.dividers[0]!.at,
      `A divider cannot end under both rails: the front one is ${show(boards.railFront.thickness)} thick and the rear one ${show(boards.railBack.thickness)}. Give both the same board.`,
    );

  const wanted = spec.dividers
    .map((divider) => {
      const board = boardFor(spec, shop, divider.key, divider.board);
      const from = divider.at.value - half(board.thickness);
      return { ...divider, board, run: { from, to: from + board.thickness } };
    })
    .sort((a, b) => a.run.from - b.run.from);

  const dividers: Panel[] = [];
  const bays: Bays[number][] = [];
  let open = { from: clearX.from, left: 'left' };
  for (const { key, at, board, run } of wanted) {
    const room: Interval = { from: open.from, to: clearX.to };
    if (run.from <= room.from || run.to >= room.to) {
      problems.add(
        at,
        `${key} would stand from ${show(run.from)} to ${show(run.to)}, but the clear space beside ${open.left} runs from ${show(room.from)} to ${show(room.to)}. Move it, or leave it out.`,
      );
      continue;
    }
    dividers.push(
      makePanel(box, {
        key,
        role: 'divider',
        board,
        length: extent(clearZ),
        width: clearDepth,
        cause: at,
        pose: { origin: { x: run.from, y: 0, z: clearZ.from }, u: '+y', v: '+z', t: '+x' },
      }),
    );
    bays.push({ from: open.from, to: run.from, left: open.left, right: key });
    open = { from: run.to, left: key };
  }
  bays.push({ from: open.from, to: clearX.to, left: open.left, right: 'right' });
  return { dividers, bays };
}
