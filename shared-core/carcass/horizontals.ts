import type { Board } from '../shop/model.js';
import type { Box } from './box.js';
import { extent } from './interval.js';
import type { Groove, Panel } from './model.js';
import { makePanel } from './panel.js';

/** The bottom, underside out: between the sides, or under them over the whole width. */
export function buildBottom(box: Box): Panel {
  return buildHorizontal(box, 'bottom', box.boards.bottom, box.spec.bottom.value === 'under');
}

/** The top, upper face out: between the sides, or lying over them; null where rails stand in for it. */
export function buildTop(box: Box): Panel | null {
  return box.boards.top === null ? null : buildHorizontal(box, 'top', box.boards.top, box.spec.top.value === 'over');
}

function buildHorizontal(box: Box, key: 'bottom' | 'top', board: Board, across: boolean): Panel {
  const { spec, clearX } = box;
  const run = across ? { from: 0, to: spec.width.value } : clearX;
  return makePanel(box, {
    key,
    role: key,
    board,
    length: extent(run),
    // A rebated back covers the rear edge of what stands between the sides; all else is as deep as the sides.
    width: box.back?.how === 'rebated' && !across ? box.clearDepth : box.sideDepth,
    grooves: grooveAcross(box, across),
    cause: spec.name,
    pose: {
      origin: { x: run.from, y: 0, z: key === 'bottom' ? 0 : spec.height.value },
      u: '+y',
      v: '+x',
      t: key === 'bottom' ? '+z' : '-z',
    },
  });
}

/** Between the sides the groove runs through; across them it stops where theirs do, so that no end shows it. */
function grooveAcross({ groove, back, clearX }: Box, across: boolean): readonly Groove[] {
  if (groove === null) return [];
  if (across) return [{ ...groove, along: { from: clearX.from - groove.depth, to: clearX.to + groove.depth } }];
  return back?.how === 'grooved' ? [groove] : [];
}
