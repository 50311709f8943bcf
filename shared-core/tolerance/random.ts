/** A source of chance that gives the same sequence for the same seed on every machine. */
export interface Chance {
  /** A whole number from 0 to 2^32 - 1, each as likely. */
  word(): number;
  /** Even over (0, 1). */
  even(): number;
  /** Standard normal. */
  normal(): number;
}

const rotate = (x: number, k: number): number => ((x << k) | (x >>> (32 - k))) >>> 0;

/** xoshiro128** (D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", 2018), by its four words of state. */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
}

/** Spreads one seed over the four words of state (the mixing of MurmurHash3, A. Appleby, public domain). */
function stateOf(seed: number): [number, number, number, number] {
  let x = seed | 0;
  const next = (): number => {
    x = (x + 0x9e3779b9) | 0;
    let z = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return z ^ (z >>> 16);
  };
  return [next(), next(), next(), next()];
}

/** A stream of chance; the same seed gives the same stream. */
export function chance(seed: number): Chance {
  const word = xoshiro128(stateOf(seed));
  const even = (): number => (word() + 0.5) / 2 ** 32;
  let spare: number | null = null;
  /** The polar method: G. Marsaglia, T. A. Bray, "A convenient method for generating normal variables", SIAM Review 6 (1964). */
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const [x, y] = [2 * even() - 1, 2 * even() - 1];
      const square = x * x + y * y;
      if (square >= 1 || square === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * factor;
      return x * factor;
    }
  };
  return { word, even, normal };
}
