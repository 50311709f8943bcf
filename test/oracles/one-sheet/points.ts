/** The sums of sizes up to a limit, ascending, with 0 and the limit itself, and which of them lies at or below a length. */
export interface Points {
  readonly at: readonly number[];
  /** Index of the greatest point that is not over `length`; `length` from 0 to the limit. */
  readonly below: (length: number) => number;
}

/**
 * Every place where a cut can help: each cut of a pattern can be moved toward the origin until it meets a piece, so that
 * all stand at sums of sizes (normal patterns, Herz 1972 and Christofides and Whitlock 1977).
 * @param most the number of copies of each size
 */
export function normalPoints(sizes: readonly number[], most: readonly number[], limit: number): Points {
  const reached = new Uint8Array(limit + 1);
  reached[0] = 1;
  sizes.forEach((size, i) => {
    const copies = Math.min(most[i]!, Math.floor(limit / size));
    for (let copy = 0; copy < copies; copy += 1) {
      let grown = false;
      for (let at = limit - size; at >= 0; at -= 1)
        if (reached[at] === 1 && reached[at + size] === 0) {
          reached[at + size] = 1;
          grown = true;
        }
      if (!grown) break;
    }
  });
  reached[limit] = 1;
  const at: number[] = [];
  const index = new Int32Array(limit + 1);
  for (let length = 0; length <= limit; length += 1) {
    if (reached[length] === 1) at.push(length);
    index[length] = at.length - 1;
  }
  return { at, below: (length) => index[length]! };
}
