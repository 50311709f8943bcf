import type { Bed, Column, Lie } from './lie.js';
import { fill } from './knapsack.js';

/** A part cut off a strip: pieces of one run, one above the other. */
export interface Stack {
  readonly run: number;
  readonly rise: number;
  readonly lies: readonly Lie[];
  readonly value: number;
}
/** A strip ripped off the sheet, with its stacks side by side. */
export interface Strip {
  readonly rise: number;
  readonly stacks: readonly Stack[];
  readonly value: number;
}

/** Greatest number of stacks of one run that are looked at; longer strips repeat them too seldom to matter. */
const MOST_STACKS = 12;

/**
 * The most valuable strip of one rise with what is left of each piece. Stacks of one run are made one after the other, the
 * best first, and the strip is then filled with stacks; pieces that two runs promise are given to the first.
 * @param left copies left of each piece; not changed
 */
export function bestStrip(bed: Bed, rise: number, left: readonly number[], values: readonly number[]): Strip {
  const stacks = bed.columns.flatMap((column) => stacksOf(bed, column, rise, left, values));
  const filling = fill(
    stacks.map(({ run, value }) => ({ size: run, value, most: 1 })),
    bed.run,
    600,
  );
  const rest = left.slice();
  const chosen: Stack[] = [];
  let room = bed.run;
  const take = (stack: Stack): void => {
    if (stack.run > room || !isThere(stack, rest)) return;
    for (const { piece } of stack.lies) rest[piece] = rest[piece]! - 1;
    chosen.push(stack);
    room -= stack.run;
  };
  stacks.forEach((stack, i) => {
    if (filling.counts[i] === 1) take(stack);
  });
  // A piece that may be turned can have been promised twice: what is free then takes the next best.
  for (const column of bed.columns)
    while (column.run <= room) {
      const next = stacksOf(bed, column, rise, rest, values, 1)[0];
      if (next === undefined) break;
      take(next);
    }
  const high = chosen.reduce((most, stack) => Math.max(most, stack.rise), 0);
  return { rise: high, stacks: chosen, value: chosen.reduce((sum, { value }) => sum + value, 0) };
}

function isThere({ lies }: Stack, left: readonly number[]): boolean {
  return lies.every(({ piece }, i) => {
    const before = lies.slice(0, i).filter((lie) => lie.piece === piece).length;
    return left[piece]! - before > 0;
  });
}

function stacksOf(
  bed: Bed,
  { run, lies }: Column,
  rise: number,
  left: readonly number[],
  values: readonly number[],
  most = Math.min(MOST_STACKS, Math.floor(bed.run / run)),
): readonly Stack[] {
  const fits = lies.filter((lie) => left[lie.piece]! > 0 && (bed.stages === 2 ? lie.rise === rise : lie.rise <= rise));
  const rest = fits.map(({ piece }) => left[piece]!);
  const stacks: Stack[] = [];
  while (stacks.length < most) {
    const counts = bestStack(fits, rise, rest, values);
    const taken = fits.flatMap((lie, i) => Array.from({ length: counts[i]! }, () => lie));
    if (taken.length === 0) break;
    counts.forEach((count, i) => (rest[i] = rest[i]! - count));
    stacks.push({
      run,
      rise: taken.reduce((sum, lie) => sum + lie.rise, 0),
      lies: taken,
      value: taken.reduce((sum, { piece }) => sum + values[piece]!, 0),
    });
  }
  return stacks;
}

function bestStack(
  lies: readonly Lie[],
  rise: number,
  rest: readonly number[],
  values: readonly number[],
): readonly number[] {
  // Most runs belong to one piece alone, whose stack needs no search.
  if (lies.length === 1) return [Math.min(rest[0]!, Math.floor(rise / lies[0]!.rise))];
  const items = lies.map((lie, i) => ({ size: lie.rise, value: values[lie.piece]!, most: rest[i]! }));
  return fill(items, rise, 200).counts;
}
