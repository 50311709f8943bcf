import { half, type Micrometres } from '../../length/units.js';
import type { Box } from '../box.js';
import { extent, type Interval } from '../interval.js';
import type { Role } from '../role.js';

/** What a back in grooves lacks of their full extent, so that it slides in (common practice, no source). */
const BACK_PLAY: Micrometres = 1000;

/** The back, rear face out, reference end down, u from its left edge; none where the job wants none. */
export const back: Role = {
  called: 'back',
  stands: 'upright',
  rows: 'none',
  hiddenFace: 'outside',
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
 * of one between them. Grooved: to the floor of every groove less the play; it stands in the lower one and leaves the play
 * above. Under rails it runs up to the top edge of the sides.
 */
function backExtents(box: Box, how: NonNullable<Box['back']>['how']): { x: Interval; z: Interval } {
  const { spec, clearX, clearZ } = box;
  const [width, height] = [spec.width.value, spec.height.value];
  if (how === 'applied') return { x: { from: 0, to: width }, z: { from: 0, to: height } };
  const into = box.groove?.depth ?? 0;
  if (how === 'rebated')
    return {
      x: { from: clearX.from - into, to: clearX.to + into },
      z: {
        from: spec.bottom.value === 'under' ? clearZ.from - into : 0,
        to: spec.top.value === 'over' ? clearZ.to + into : height,
      },
    };
  const left = half(BACK_PLAY);
  return {
    x: { from: clearX.from - into + left, to: clearX.to + into - (BACK_PLAY - left) },
    z: { from: clearZ.from - into, to: box.boards.top === null ? height : clearZ.to + into - BACK_PLAY },
  };
}
