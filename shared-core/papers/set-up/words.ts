import type { Panel } from '../../carcass/model.js';
import { figure, figureWithUnit } from '../../drawing/figures.js';
import { listed } from '../../drawing/words.js';
import type { Micrometres, Unit } from '../../length/units.js';

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

/** '53, 213, 341 and 501 mm'; for four and more at one distance '53 to 501 mm each 32 mm'. Ascending. */
export function placeWords(places: readonly Micrometres[], unit: Unit): string {
  const [first, second] = places;
  const last = places.at(-1);
  if (first === undefined || second === undefined || last === undefined || places.length < 4 || !isEven(places)) {
    return `${listed(places.map((place) => figure(place, unit)))} ${unit}`;
  }
  return `${figure(first, unit)} to ${figureWithUnit(last, unit)} each ${figureWithUnit(second - first, unit)}`;
}

function isEven(places: readonly Micrometres[]): boolean {
  return places.every((place, index) => index < 2 || place - places[index - 1]! === places[1]! - places[0]!);
}
