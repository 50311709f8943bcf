import type { Axis, Panel, Pose } from '../carcass/model.js';
import type { Hand } from '../shop/model.js';
import type { Blank } from './setup-sheet.js';

/** Sign of the permutation that an axis triple makes of x, y, z: even ones are turns, odd ones hold a swap. */
const EVEN: ReadonlySet<string> = new Set(['xyz', 'yzx', 'zxy']);

/** Handedness of a panel's frame as it stands in the carcass: 'right' where u x v = t. */
export function handOf(pose: Pose): Hand {
  const axes: readonly Axis[] = [pose.u, pose.v, pose.t];
  const order = axes.map((axis) => axis[1]).join('');
  const negatives = axes.filter((axis) => axis.startsWith('-')).length;
  return EVEN.has(order) === (negatives % 2 === 0) ? 'right' : 'left';
}

/** The blank that comes to the machine for a panel: finished size, and which of the two mirror images it is. */
export function blankOf(panel: Panel): Blank {
  return { length: panel.length, width: panel.width, thickness: panel.thickness, hand: handOf(panel.pose) };
}
