import type { Panel } from '../../carcass/model.js';
import { figure } from '../../drawing/figures.js';
import { listed } from '../../drawing/words.js';
import type { Unit } from '../../length/units.js';

/** The panels that set-ups speak of, and the unit that their owner reads. */
export interface JobWords {
  readonly unit: Unit;
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
  return `${[length, width, thickness].map((size) => figure(size, unit)).join(' × ')} ${unit}`;
}

/** Whole numbers, ascending: '1, 6, 10 and 15'; three and more that follow each other as '2 to 5'. */
export function numberWords(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run?.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  return listed(runs.flatMap((run) => (run.length < 3 ? run.map(String) : [`${run[0]!} to ${run.at(-1)!}`])));
}
