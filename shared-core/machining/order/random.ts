/** A fixed sequence of whole numbers in [0, below): xorshift (Marsaglia 2003), the same on every machine. */
export function sequence(seed: number): (below: number) => number {
  let state = seed | 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}
