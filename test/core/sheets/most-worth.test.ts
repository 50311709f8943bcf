import { expect, test } from 'vitest';
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
