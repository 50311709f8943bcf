import type { Panel } from '../carcass/model.js';
import { densityOf } from './boards.js';

const PER_CUBIC_METRE = 1e18;

/** What a panel weighs, in kilograms: its finished size and its board's density. Bores and grooves are not taken off. */
export function weightOf({ length, width, thickness, board }: Panel): number {
  return ((length * width * thickness) / PER_CUBIC_METRE) * densityOf(board);
}

/** What panels weigh together, in kilograms. Fittings are not counted. */
export function weightOfAll(panels: readonly Panel[]): number {
  return panels.reduce((sum, panel) => sum + weightOf(panel), 0);
}
