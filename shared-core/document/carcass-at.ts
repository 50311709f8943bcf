import type { JobParts } from './cut.js';

/**
 * The carcass whose text holds the offset (its blank and comment lines included), by its index; null for none.
 * @param length of the whole text, at whose end one is still in the last carcass
 */
export function carcassAt({ carcasses }: JobParts, length: number, offset: number): number | null {
  let low = 0;
  let high = carcasses.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (carcasses[middle]!.start <= offset) low = middle + 1;
    else high = middle;
  }
  const index = low - 1;
  const part = carcasses[index];
  return part !== undefined && (offset < part.end || (offset === part.end && offset === length)) ? index : null;
}
