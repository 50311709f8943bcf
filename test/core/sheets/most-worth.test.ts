import { expect, test } from 'vitest';
import { sequence } from '../../../shared-core/machining/order/random.js';
import { bedsOf } from '../../../shared-core/sheets/staged/lie.js';
import { mostWorth } from '../../../shared-core/sheets/staged/most-worth.js';

/** A sheet for one piece, and two pieces of its size, of which the second is turned: in two stages they stand in one place. */
const [bed] = bedsOf({
  pieces: [
    { id: 'along', length: 600_000, width: 400_000, count: 1, turns: false },
    { id: 'turned', length: 400_000, width: 600_000, count: 1, turns: true },
  ],
  saw: { kerf: 0, trim: 0, stages: 2, rip: null, crosscut: null, first: 'along' },
  stocks: [{ name: 'one', length: 600_000, width: 400_000, price: 1, count: null }],
  offcut: { length: 0, width: 0 },
});

test.each([
  ['the dearer one, be it the first', [1, 1], [5, 3], 5, [1, 0]],
  ['the dearer one, be it the last', [1, 1], [3, 5], 5, [0, 1]],
  ['the one that is wanted', [0, 1], [5, 3], 3, [0, 1]],
  ['nothing, where nothing is wanted', [0, 0], [5, 3], 0, [0, 0]],
] as const)('of two pieces in one place a sheet in two stages gets %s', (_, wanted, prices, value, counts) => {
  expect(mostWorth(bed!, wanted, prices)).toMatchObject({ value, counts });
});

test.each([100, 1])(
  'of forty sizes in one depth, to %i µm, a sheet gets much of its area, and no bound is lower',
  (step) => {
    const random = sequence(3);
    const pieces = Array.from({ length: 40 }, (_, i) => ({
      id: `${i}`,
      length: 560_000,
      width: 300_000 + random(900_000 / step) * step,
      count: 2,
      turns: true,
    }));
    const beds = bedsOf({
      pieces,
      saw: { kerf: 3200, trim: 0, stages: 3, rip: null, crosscut: null, first: 'either' },
      stocks: [{ name: 'full', length: 2_800_000, width: 2_070_000, price: 1, count: null }],
      offcut: { length: 0, width: 0 },
    });
    // Worth what they cover: hardly any of the sums of their heights is worth more than a lower one.
    const prices = pieces.map((piece) => (piece.length + 3200) * (piece.width + 3200));
    const wanted = pieces.map(({ count }) => count);
    for (const one of beds) {
      const { bound, value, counts } = mostWorth(one, wanted, prices);
      expect(value).toBeCloseTo(
        counts.reduce((sum, count, i) => sum + count * prices[i]!, 0),
        -3,
      );
      expect(value).toBeGreaterThan(0.85 * one.run * one.rise);
      expect(bound).toBeGreaterThanOrEqual(value);
      expect(bound).toBeLessThan(1.02 * one.run * one.rise);
    }
  },
);
