import type { Panel } from '../carcass/model.js';
import { areaCutOff } from '../carcass/footprint.js';
import { densityOf } from './boards.js';

const PER_CUBIC_METRE = 1e18;

/**
 * What a panel weighs, in kilograms: its finished size, without a corner that is cut off, and its board's density. Bores and grooves
 * are not taken off.
 */
export function weightOf(panel: Panel): number {
  const { length, width, thickness, board } = panel;
  return (((length * width - areaCutOff(panel)) * thickness) / PER_CUBIC_METRE) * densityOf(board);
}

/** What panels weigh together, in kilograms. Fittings are not counted. */
export function weightOfAll(panels: readonly Panel[]): number {
  return panels.reduce((sum, panel) => sum + weightOf(panel), 0);
}
