import type { Panel } from '../carcass/model.js';
import { handedness } from '../carcass/pose.js';
import type { Blank } from './set-up.js';

/** The blank that comes to the machine for a panel: finished size, and which of the two mirror images it is. */
export function blankOf(panel: Panel): Blank {
  return { length: panel.length, width: panel.width, thickness: panel.thickness, hand: handedness(panel.pose) };
}
