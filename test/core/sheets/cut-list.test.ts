import { expect, test } from 'vitest';
import type { Carcass, Panel } from '../../../shared-core/carcass/model.js';
import { cutList } from '../../../shared-core/sheets/cut-list.js';
import type { Board } from '../../../shared-core/shop/model.js';

const MANY = 40_000;
const board = { name: 'oak' } as Board;
/** As many panels of one board as a long job has, each of a size of its own. */
const panels = Array.from({ length: MANY }, (_, i) => {
  const length = 400_000 + i;
  return { key: `p${i}`, board, bands: {}, length, cutLength: length, width: 300_000, cutWidth: 299_000 };
}) as unknown as readonly Panel[];
const carcass = { panels, count: 1 } as unknown as Carcass;

test('sizes of one board are gathered in one go, however many there are', () => {
  const start = performance.now();
  const sizes = cutList([{ name: 'all', carcass }]).get(board)!;
  expect(performance.now() - start).toBeLessThan(4000);
  expect(sizes).toHaveLength(MANY);
  expect(sizes[0]!.length).toBe(400_000 + MANY - 1);
});
