/** The first, the last, and between them the fewest, evenly spread, that keep neighbours within the longest gap. */
export function evenPlaces(start: number, last: number, longest: number): readonly number[] {
  const steps = last - start;
  const gaps = Math.ceil(steps / longest);
  const chosen = [start];
  // The i-th of `gaps` equal parts of `steps`, rounded half up in whole numbers.
  for (let i = 1; i <= gaps; i++) chosen.push(start + Math.floor((2 * i * steps + gaps) / (2 * gaps)));
  return chosen;
}
