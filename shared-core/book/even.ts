/** The first, the last, and between them the fewest, evenly spread, that keep neighbours within the longest gap. */
export function evenPlaces(start: number, last: number, longest: number): readonly number[] {
  const steps = last - start;
  const gaps = Math.ceil(steps / longest);
  const chosen = [start];
  // The i-th of `gaps` equal parts of `steps`, rounded half up in whole numbers.
  for (let i = 1; i <= gaps; i++) chosen.push(start + Math.floor((2 * i * steps + gaps) / (2 * gaps)));
  return chosen;
}

/** So many, evenly spread from the first to the last; all that there are where there are no more, and one in the middle. */
export function evenCount(start: number, last: number, count: number): readonly number[] {
  const steps = last - start;
  if (count > steps) return Array.from({ length: steps + 1 }, (_, i) => start + i);
  if (count === 1) return [start + Math.floor(steps / 2)];
  const gaps = count - 1;
  return Array.from({ length: count }, (_, i) => start + Math.floor((2 * i * steps + gaps) / (2 * gaps)));
}
