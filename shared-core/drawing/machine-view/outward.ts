/** Parts of a length from its middle: 0, a step to one side, a step to the other, and so on to both ends. */
export function outward(steps: number): readonly number[] {
  return Array.from(
    { length: 2 * steps + 1 },
    (_, index) => (Math.ceil(index / 2) * (index % 2 === 0 ? 1 : -1)) / (2 * steps + 2),
  );
}
