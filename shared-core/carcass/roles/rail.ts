import type { Micrometres } from '../../length/units.js';
import { say } from '../messages.js';
import type { Board } from '../../shop/model.js';
import type { Box } from '../box.js';
import { extent } from '../interval.js';
import type { Outline } from '../panel.js';
import type { Role } from '../role.js';
import { spindleLine } from '../spindle-line.js';

/**
 * Two flat strips that stand in for a top, upper faces out. The rear one stands as far back as whole pitches allow, so
 * that both are bored at the same places from their own front edges.
 */
export const rail: Role = {
  called: 'rail',
  stands: 'level',
  rows: 'none',
  hiddenFace: 'outside',
  looks: null,
  names: (spec) => (spec.top.value === 'rails' ? ['rail-front', 'rail-back'] : []),
  keys: { top: 'all', 'rail-width': 'all' },
  sizes: { length: ({ width }) => width, width: ({ railWidth }) => railWidth },
  outlines({ box, problems }) {
    const { spec, shop, boards, clearDepth } = box;
    if (spec.top.value !== 'rails') return [];
    const width = spec.railWidth.value;
    const { pitch } = spindleLine(spec, shop);
    const rearFront = Math.floor((clearDepth - width) / pitch) * pitch;
    if (rearFront < width) {
      problems.add(spec.railWidth, say.railsTooWide({ width, clear: clearDepth, pitch }));
      return [];
    }
    return [
      { ...outline(box, 'rail-front', boards.railFront, 0), seen: ['front'] },
      outline(box, 'rail-back', boards.railBack, rearFront),
    ];
  },
  meetings: (panel, standing) => standing.betweenSides(panel),
};

function outline({ spec, clearX }: Box, key: string, board: Board, front: Micrometres): Outline {
  return {
    key,
    board,
    length: extent(clearX),
    width: spec.railWidth.value,
    seen: [],
    grooves: [],
    cause: spec.name,
    pose: { origin: { x: clearX.from, y: front, z: spec.height.value }, u: '+y', v: '+x', t: '-z' },
  };
}
