import type { Micrometres } from '../length/units.js';
import { isDiagonal, reachOf } from './diagonal.js';
import type { Carcass } from './model.js';
import { extentsOf, type CarcassAxis } from './pose.js';
import { isOfBox } from './roles.js';
import type { CarcassSpec } from './spec.js';

/**
 * The outside of the box as its panels make it, bands included; what stands under it or hangs before it does not count. What
 * takes the box as a whole, such as a clamp, asks for this and not for the size that is written.
 */
export function outerSize({ panels }: Carcass): Readonly<Record<'width' | 'height' | 'depth', Micrometres>> {
  const box = panels.filter(isOfBox).map(extentsOf);
  const along = (axis: CarcassAxis): Micrometres =>
    Math.max(...box.map((one) => one[axis].to)) - Math.min(...box.map((one) => one[axis].from));
  return { width: along('x'), height: along('z'), depth: along('y') };
}

/** Width, height and depth over all as they are written; across a corner the depth is the reach along the other wall. */
export function writtenSize(
  spec: Pick<CarcassSpec, 'width' | 'height' | 'depth' | 'diagonal'>,
): readonly [width: Micrometres, height: Micrometres, depth: Micrometres] {
  return [spec.width.value, spec.height.value, (reachOf(spec) ?? spec.depth).value];
}

/** How deep both wings of a carcass across a corner are; null for any other. */
export const wingsOf = (spec: Pick<CarcassSpec, 'depth' | 'diagonal'>): Micrometres | null =>
  isDiagonal(spec) ? spec.depth.value : null;

/**
 * From corner to corner of the front of the box; across a corner of the room that is the slanting one. In whole tenths of a
 * millimetre, as nobody measures it finer.
 */
export function frontDiagonal(carcass: Carcass): Micrometres {
  const { width, height } = outerSize(carcass);
  return Math.round(Math.hypot(carcass.diagonal?.long ?? width, height) / 100) * 100;
}
