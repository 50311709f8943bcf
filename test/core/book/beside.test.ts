import fc from 'fast-check';
import { expect, test } from 'vitest';
import { besideLoad } from '../../../shared-core/book/beside.js';
import '../../seed.js';

test('a load beside another reads the same from both ends, shares no spindle, and keeps neighbours near where it can', () => {
  const never = fc.array(fc.nat({ max: 14 }), { maxLength: 2 });
  const longest = fc.integer({ min: 1, max: 6 });
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 30 }),
      fc.array(fc.nat({ max: 14 })),
      longest,
      never,
      (spindles, near, far, not) => {
        const load = [...new Set(near.flatMap((k) => [k, spindles - 1 - k]))].filter((k) => k >= 0 && k < spindles);
        const beside = besideLoad(load, { spindles, longest: far, never: not });
        expect(beside.map((k) => spindles - 1 - k).reverse()).toEqual(beside);
        for (const k of beside) expect([...load, ...not]).not.toContain(k);
        const isFree = (k: number): boolean =>
          ![k, spindles - 1 - k].some((one) => load.includes(one) || not.includes(one));
        for (const [index, k] of beside.slice(1, Math.ceil(beside.length / 2)).entries()) {
          const from = beside[index]!;
          // Farther than allowed only where nothing between is free.
          if (k - from > far) for (let one = from + 1; one < k; one++) expect([one, isFree(one)]).toEqual([one, false]);
        }
      },
    ),
  );
});
