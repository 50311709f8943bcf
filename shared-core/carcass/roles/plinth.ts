import type { Micrometres } from '../../length/units.js';
import { UPPER_EDGES } from '../../words/names.js';
import { say } from '../messages.js';
import { boardFor } from '../choices.js';
import type { Role } from '../role.js';

/** How far a plinth stands back from the front, for the feet (common practice, no source). */
const PLINTH_SETBACK: Micrometres = 50_000;

/** The strip under the box, front face out, u from its upper edge down, reference end left; none where there is no room. */
export const plinth: Role = {
  called: 'plinth',
  stands: 'level',
  rows: 'none',
  belongs: 'under-box',
  hiddenFace: 'outside',
  edges: UPPER_EDGES,
  looks: null,
  names: (spec) => (spec.plinth.value > 0 ? ['plinth'] : []),
  keys: { plinth: 'all' },
  sizes: { length: ({ width }) => width, width: ({ plinth: height }) => height },
  outlines({ box, problems }) {
    const { spec, shop, clearDepth } = box;
    const height = spec.plinth.value;
    if (height <= 0) return [];
    const board = boardFor(spec, shop, 'plinth', spec.board);
    if (board.thickness > clearDepth) {
      problems.add(spec.plinth, say.plinthTooThick({ thickness: board.thickness, clear: clearDepth }));
      return [];
    }
    const y = Math.min(PLINTH_SETBACK, clearDepth - board.thickness);
    return [
      {
        key: 'plinth',
        board,
        length: spec.width.value,
        width: height,
        seen: [],
        grooves: [],
        cause: spec.plinth,
        pose: { origin: { x: 0, y, z: 0 }, u: '-z', v: '+x', t: '+y' },
      },
    ];
  },
  meetings: () => [],
};
