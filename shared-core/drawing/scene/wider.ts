import type { Box } from './scene.js';

/** A page may have a face whose letters are so much wider than those that are measured. */
export const WIDER = 1.15;

/** The room of a line of lettering in such a face, whichever end of it is held. */
export function wider({ x, y, width, height }: Box): Box {
  const more = (WIDER - 1) * width;
  return { x: x - more, y, width: width + 2 * more, height };
}
