/** A, B, … Z, AA, AB, …: names of sizes that can be chalked on a piece; counted from 0. */
export function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}
