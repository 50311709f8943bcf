import { half } from '../../length/units.js';
import { EDGES } from '../../words/names.js';
import type { Box } from '../box.js';
import { extent, type Interval } from '../interval.js';
import type { Role } from '../role.js';

/** The back, rear face out, reference end down, u from its left edge; none where the job wants none. */
export const back: Role = {
  called: 'back',
  stands: 'upright',
  rows: 'none',
  belongs: 'to-box',
  hiddenFace: 'outside',
  edges: EDGES,
  looks: null,
  names: (spec) => (spec.back.how.value === 'none' ? [] : ['back']),
  keys: { back: 'all' },
  sizes: { length: ({ height }) => height, width: ({ width }) => width },
  outlines({ box }) {
    if (box.back === null) return [];
    const { board, how } = box.back;
    const { x, z } = backExtents(box, how);
    return [
      {
        key: 'back',
        board,
        length: extent(z),
        width: extent(x),
        seen: [],
        grooves: [],
        cause: box.spec.back.how,
        pose: { origin: { x: x.from, y: box.clearDepth + board.thickness, z: z.from }, u: '+x', v: '+z', t: '-y' },
      },
    ];
  },
  meetings: () => [],
};

/**
 * Applied: over the whole box. Rebated: into the rebates of the sides and of a horizontal across them, over the rear edge
 * of one between them. Grooved: to the floor of every groove. In grooves and rebates it lacks the play: half of it on either
 * hand, and above all of it, since it stands below. Under rails it runs up to the top edge of the sides.
 */
function backExtents(box: Box, how: NonNullable<Box['back']>['how']): { x: Interval; z: Interval } {
  const { spec, shop, clearX, clearZ } = box;
  const [width, height] = [spec.width.value, spec.height.value];
  if (how === 'applied') return { x: { from: 0, to: width }, z: { from: 0, to: height } };
  const into = box.groove?.depth ?? 0;
  const play = shop.habits.backPlay;
  const left = half(play);
  const x = { from: clearX.from - into + left, to: clearX.to + into - (play - left) };
  const isHeldAbove = how === 'rebated' ? spec.top.value === 'over' : box.boards.top !== null;
  const isHeldBelow = how === 'grooved' || spec.bottom.value === 'under';
  return {
    x,
    z: { from: isHeldBelow ? clearZ.from - into : 0, to: isHeldAbove ? clearZ.to + into - play : height },
  };
}
