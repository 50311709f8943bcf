import type { Panel } from '../carcass/model.js';
import type { Micrometres } from '../length/units.js';
import type { FrontAngle, OnFace } from './model.js';

/** Screws in one face of a panel. */
export interface Screws {
  readonly panel: Panel;
  readonly face: FrontAngle['face'];
  readonly holes: readonly OnFace[];
  readonly diameter: Micrometres;
  readonly depth: Micrometres;
}

/** Whether a place of a face stands so far from every edge of its panel, or further. */
export function isOnFace({ width, length }: Panel, { u, v }: OnFace, margin: Micrometres): boolean {
  return u >= margin && u <= width - margin && v >= margin && v <= length - margin;
}
