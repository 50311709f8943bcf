import type { Box } from './box.js';
import { extent } from './interval.js';
import type { Panel } from './model.js';
import { makePanel } from './panel.js';

/**
 * The two sides, outside faces outward, reference end down. The right side is the mirror image of the left one: the same
 * (u, v, t), with t running the other way.
 */
export function buildSides(box: Box): readonly [left: Panel, right: Panel] {
  const shared = {
    length: extent(box.sideZ),
    width: box.sideDepth,
    grooves: box.groove === null ? [] : [box.groove],
    cause: box.spec.name,
  };
  const foot = { y: 0, z: box.sideZ.from };
  return [
    makePanel(box, {
      ...shared,
      key: 'left',
      role: 'left-side',
      board: box.boards.left,
      pose: { origin: { x: 0, ...foot }, u: '+y', v: '+z', t: '+x' },
    }),
    makePanel(box, {
      ...shared,
      key: 'right',
      role: 'right-side',
      board: box.boards.right,
      pose: { origin: { x: box.spec.width.value, ...foot }, u: '+y', v: '+z', t: '-x' },
    }),
  ];
}
