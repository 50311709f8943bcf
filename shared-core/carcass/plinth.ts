import type { Micrometres } from '../length/units.js';
import type { Box } from './box.js';
import { boardFor } from './choices.js';
import type { Panel } from './model.js';
import { makePanel } from './panel.js';
import type { Problems } from './problems.js';

/** How far a plinth stands back from the front, for the feet (common practice, no source). */
const PLINTH_SETBACK: Micrometres = 50_000;

/** The strip under the box, front face out, u from its upper edge down, reference end left; null where there is none or no room. */
export function buildPlinth(box: Box, problems: Problems): Panel | null {
  const { spec, shop, clearDepth } = box;
  const height = spec.plinth.value;
  if (height <= 0) return null;
  const board = boardFor(spec, shop, 'plinth', spec.board);
  if (board.thickness > clearDepth) {
    const { show } = problems;
    problems.add(
      spec.plinth,
      `The plinth is ${show(board.thickness)} thick and does not find room under a clear depth of ${show(clearDepth)}. Give it a thinner board.`,
    );
    return null;
  }
  const y = Math.min(PLINTH_SETBACK, clearDepth - board.thickness);
  return makePanel(box, {
    key: 'plinth',
    role: 'plinth',
    board,
    length: spec.width.value,
    width: height,
    cause: spec.plinth,
    pose: { origin: { x: 0, y, z: 0 }, u: '-z', v: '+x', t: '+y' },
  });
}
