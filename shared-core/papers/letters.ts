import { asItIs, type Told } from '../words/told.js';

/** A, B, … Z, AA, AB, …: names of sizes that can be chalked on a piece; counted from 0. */
export function letters(index: number): Told {
  const last = String.fromCharCode(65 + (index % 26));
  return asItIs(index < 26 ? last : letters(Math.floor(index / 26) - 1) + last);
}
