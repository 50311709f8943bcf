import type { Panel } from '../../carcass/model.js';
import type { Handling } from '../../shop/model.js';
import { showSizes } from '../../length/show.js';
import type { Unit } from '../../length/units.js';

/** The panels that set-ups speak of, and the units that their owner reads. */
export interface JobWords {
  /** Of the job file: sizes of panels. */
  readonly unit: Unit;
  /** Of the shop file, which has the figures as the scales of the machines show them: stops, depths, bits, moves. */
  readonly machineUnit: Unit;
  /** Seconds that the boring of a panel takes in this shop. */
  readonly handling: Handling;
  /** A panel by the names in a set-up; undefined where there is none of these names. */
  readonly panel: (carcass: string, key: string) => Panel | undefined;
}

/** '7 min 30 s'; '2 h 50 min'; 'no time' for 0. Whole seconds. */
export function timeWords(seconds: number): string {
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const parts = [hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : '', rest > 0 ? `${rest} s` : ''];
  return parts.filter((part) => part !== '').join(' ') || 'no time';
}

/** '720 × 560 × 16 mm' */
export function sizeWords({ length, width, thickness }: Panel, unit: Unit): string {
  return showSizes([length, width, thickness], unit);
}
