import { mirrored, type PatternTask } from './pattern.js';

/**
 * A load for joints that stand back to back with joints of another, where none serves all of them: it shares no spindle with
 * the other, has as few as keep neighbours within the longest distance, where that can be, and reads the same from both ends of
 * the head.
 */
export function besideLoad(
  load: readonly number[],
  { spindles, longest, never }: Pick<PatternTask, 'spindles' | 'longest' | 'never'>,
): readonly number[] {
  const last = spindles - 1;
  const taken = new Set(mirrored([...load, ...(never ?? [])], last));
  const free = Array.from({ length: Math.ceil(spindles / 2) }, (_, k) => k).filter((k) => !taken.has(k));
  const near: number[] = [];
  // Each step goes as far as it may: no other way needs fewer.
  for (let at = free[0]; at !== undefined;) {
    const from = at;
    near.push(from);
    at = free.findLast((k) => k > from && k <= from + longest) ?? free.find((k) => k > from);
  }
  return mirrored(near, last);
}
