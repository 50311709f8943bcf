import type { Board } from '../../shop/model.js';
import { EDGES } from '../../words/names.js';
import type { Box } from '../box.js';
import { extent } from '../interval.js';
import type { Diagonal } from '../model.js';
import type { Axis, Pose } from '../model.js';
import type { Hand } from '../../shop/model.js';
import type { Outline } from '../panel.js';
import type { Role } from '../role.js';

/** What the two have in common, down to (u, v, t): the right side is the mirror image of the left one. */
const side = {
  stands: 'upright',
  rows: 'set-grid',
  belongs: 'to-box',
  hiddenFace: 'inside',
  edges: EDGES,
  looks: null,
  keys: { rows: 'all', 'row-offset': 'all', 'row-setback': 'all', 'rear-row': 'all' },
  sizes: { length: ({ height }) => height, width: ({ depth }) => depth },
  // Which end meets which face depends on bottom and top: they tell it.
  meetings: () => [],
} satisfies Partial<Role>;

export const leftSide: Role = {
  ...side,
  called: 'left side',
  names: () => ['left'],
  outlines: ({ box }) => [outline(box, 'left', box.boards.left, 0, '+x')],
};

export const rightSide: Role = {
  ...side,
  called: 'right side',
  names: () => ['right'],
  outlines: ({ box }) => [outline(box, 'right', box.boards.right, box.spec.width.value, '-x')],
};

/** Outside face outward, reference end down. */
function outline(box: Box, key: Hand, board: Board, x: number, t: Axis): Outline {
  return {
    key,
    board,
    length: extent(box.sideZ),
    width: box.sideDepth,
    seen: ['front'],
    grooves: box.groove === null ? [] : [box.groove],
    cause: box.spec.name,
    pose:
      box.diagonal?.hand === key
        ? inOtherWing(box, box.diagonal)
        : { origin: { x, y: 0, z: box.sideZ.from }, u: '+y', v: '+z', t },
  };
}

/** The side at the end of the wing along the other wall: it looks to the front, u toward that wall. */
function inOtherWing({ spec, sideZ }: Box, { hand, across, out }: Diagonal): Pose {
  const front = hand === 'right' ? across : spec.depth.value;
  return { origin: { x: front, y: 0 - out, z: sideZ.from }, u: hand === 'right' ? '+x' : '-x', v: '+z', t: '+y' };
}
