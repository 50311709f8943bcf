import { usualClearDepth } from '../../book/usual.js';
import { railSpan, rearOnLoad, rearsOfRail } from '../../book/rails.js';
import type { Micrometres } from '../../length/units.js';
import { say } from '../messages.js';
import type { Board, Shop } from '../../shop/model.js';
import { EDGES } from '../../words/names.js';
import type { Box } from '../box.js';
import { extent } from '../interval.js';
import type { Outline } from '../panel.js';
import type { Role } from '../role.js';
import type { CarcassSpec } from '../spec.js';
import type { SpindleLine } from '../spindle-line.js';

/**
 * Two flat strips that stand in for a top, upper faces out. The rear one stands as far back as whole pitches allow, so
 * that both are bored at the same places from their own front edges; see `rearFrontOf`.
 */
export const rail: Role = {
  called: 'rail',
  stands: 'level',
  rows: 'none',
  belongs: 'to-box',
  hiddenFace: 'outside',
  edges: EDGES,
  looks: null,
  names: (spec) => (spec.top.value === 'rails' ? ['rail-front', 'rail-back'] : []),
  keys: { top: 'all', 'rail-width': 'all' },
  sizes: { length: ({ width }) => width, width: ({ railWidth }) => railWidth },
  outlines({ box, line, problems }) {
    const { spec, shop, boards, clearDepth } = box;
    if (spec.top.value !== 'rails') return [];
    const width = spec.railWidth.value;
    const rearFront = rearFrontOf(spec, shop, line, clearDepth);
    if (rearFront === null) {
      problems.add(spec.railWidth, say.railsTooWide({ width, clear: clearDepth, pitch: line.pitch }));
      return [];
    }
    return [
      { ...outline(box, 'rail-front', boards.railFront, 0), seen: ['front'] },
      outline(box, 'rail-back', boards.railBack, rearFront),
    ];
  },
  meetings: (panel, standing) => standing.betweenSides(panel),
};

/**
 * Where the rear rail begins, from the front; null where two rails do not fit. Where the shop shares places it stands as with
 * the usual back, so that a carcass without one asks for no other load, and where the shared load has the same bores for both.
 */
function rearFrontOf(
  spec: CarcassSpec,
  shop: Shop,
  { first, pitch, count, shared }: SpindleLine,
  clear: Micrometres,
): Micrometres | null {
  const width = spec.railWidth.value;
  const own = rearsOfRail(clear, width, pitch)[0];
  const span = railSpan(width, first, pitch);
  const usual = shop.habits.sharePlaces ? Math.min(clear, usualClearDepth(spec.depth.value, shop)) : clear;
  // Only where all its places lie before the end of the line: else none of them would be shared.
  const rears = shop.habits.sharePlaces ? rearsOfRail(usual, width, pitch).filter((rear) => rear + span < count) : [];
  const rear = (shared && rearOnLoad(shared.load, rears, span)) ?? rears[0] ?? own;
  return rear === undefined ? null : rear * pitch;
}

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
