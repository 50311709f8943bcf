import type { Board } from '../../shop/model.js';
import { EDGES } from '../../words/names.js';
import { backReaches } from '../back-runs.js';
import type { Box } from '../box.js';
import type { Diagonal } from '../model.js';
import { cutEnd } from '../diagonal.js';
import { extent, type Interval } from '../interval.js';
import type { Groove } from '../model.js';
import type { Outline } from '../panel.js';
import type { Role } from '../role.js';

const horizontal = {
  stands: 'level',
  rows: 'none',
  belongs: 'to-box',
  hiddenFace: 'outside',
  edges: EDGES,
  looks: null,
  sizes: { length: ({ width }) => width, width: ({ depth }) => depth },
} satisfies Partial<Role>;

/** The bottom, underside out: between the sides, or under them over the whole width. */
export const bottom: Role = {
  ...horizontal,
  called: 'bottom',
  names: () => ['bottom'],
  keys: { bottom: 'all' },
  outlines: ({ box }) => [outline(box, 'bottom', box.boards.bottom, box.spec.bottom.value === 'under')],
  meetings: (panel, standing) =>
    standing.spec.bottom.value === 'under'
      ? standing.acrossSides(panel, 'reference-end')
      : standing.betweenSides(panel),
};

/** The top, upper face out: between the sides, or lying over them; none where rails stand in for it. */
export const top: Role = {
  ...horizontal,
  called: 'top',
  names: (spec) => (spec.top.value === 'rails' ? [] : ['top']),
  keys: { top: 'all' },
  outlines: ({ box }) =>
    box.boards.top === null ? [] : [outline(box, 'top', box.boards.top, box.spec.top.value === 'over')],
  meetings: (panel, standing) =>
    standing.spec.top.value === 'over' ? standing.acrossSides(panel, 'far-end') : standing.betweenSides(panel),
};

function outline(box: Box, key: 'bottom' | 'top', board: Board, across: boolean): Outline {
  const { spec, clearX, diagonal } = box;
  const run = diagonal !== null ? acrossCorner(box, diagonal) : across ? { from: 0, to: spec.width.value } : clearX;
  const out = diagonal?.out ?? 0;
  return {
    key,
    board,
    length: extent(run),
    // A rebated back covers the rear edge of what stands between the sides; all else is as deep as the sides.
    width: out + (box.back?.how === 'rebated' && !across ? box.clearDepth : box.sideDepth),
    seen: ['front'],
    ...(diagonal && { corner: { end: cutEnd(diagonal), u: out, v: diagonal.across } }),
    // Where the back is left open there is nothing to take.
    grooves: backReaches(box)[key] ? grooveAcross(box, across) : [],
    cause: spec.name,
    pose: {
      origin: { x: run.from, y: 0 - out, z: key === 'bottom' ? 0 : spec.height.value },
      u: '+y',
      v: '+x',
      t: key === 'bottom' ? '+z' : '-z',
    },
  };
}

/** Over the whole width but for the back along the other wall, which covers that edge. */
function acrossCorner({ spec, back }: Box, { hand }: Diagonal): Interval {
  const behind = back?.board.thickness ?? 0;
  const width = spec.width.value;
  return hand === 'right' ? { from: 0, to: width - behind } : { from: behind, to: width };
}

/** Between the sides the groove runs through; across them it stops where theirs do, so that no end shows it. */
function grooveAcross({ groove, clearX }: Box, across: boolean): readonly Groove[] {
  if (groove === null) return [];
  if (across) return [{ ...groove, along: { from: clearX.from - groove.depth, to: clearX.to + groove.depth } }];
  return groove.kind === 'groove' ? [groove] : [];
}
