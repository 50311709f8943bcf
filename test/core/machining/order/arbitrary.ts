import fc from 'fast-check';

/** Square tables of small costs, many of them equal, and some of wide spread. */
export function tables(least: number, most: number): fc.Arbitrary<number[][]> {
  return fc.tuple(fc.integer({ min: least, max: most }), fc.constantFrom(1, 5, 100, 1_000_000)).chain(([n, largest]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: largest }), { minLength: n, maxLength: n }), {
      minLength: n,
      maxLength: n,
    }),
  );
}

/** Pairs i before j that cannot run in a circle: all agree with one hidden order. */
export function orders(n: number): fc.Arbitrary<[number, number][]> {
  if (n < 2) return fc.constant([]);
  const pair = fc.tuple(fc.integer({ min: 0, max: n - 1 }), fc.integer({ min: 0, max: n - 1 }));
  return fc
    .tuple(
      fc.shuffledSubarray(
        Array.from({ length: n }, (_, index) => index),
        { minLength: n, maxLength: n },
      ),
      fc.array(pair, { maxLength: n }),
    )
    .map(([hidden, pairs]) =>
      pairs
        .filter(([a, b]) => a !== b)
        .map(([a, b]): [number, number] => (hidden.indexOf(a) < hidden.indexOf(b) ? [a, b] : [b, a])),
    );
}
