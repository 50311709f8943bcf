import { expect, test } from 'vitest';
import type { CuttingProblem, Stock } from '../../../shared-core/sheets/model.js';
import { areaBound, costBound, payable } from '../../../shared-core/sheets/plan/bound.js';
import { planCutting } from '../../../shared-core/sheets/plan/plan.js';
import { bedsOf } from '../../../shared-core/sheets/staged/lie.js';
import { coverSolver } from '../../../server/cover-solver.js';
import { cheapestByBruteForce } from './brute-force.js';

const solver = await coverSolver();
const problem = (stocks: readonly Stock[], pieces: readonly (readonly [number, number, number])[]): CuttingProblem => ({
  pieces: pieces.map(([length, width, count], i) => ({ id: `p${i}`, length, width, count, turns: false })),
  stocks,
  saw: { kerf: 0, trim: 0, stages: 3, rip: null, crosscut: null, first: 'either' },
  offcut: { length: 3, width: 3 },
});
const planned = (each: CuttingProblem): ReturnType<typeof planCutting> =>
  planCutting(each, solver, 1, { rounds: 120, mayGoOn: () => true });

test('whole sheets are paid for: two small ones that have no room for all of it are ruled out', () => {
  // 10 x 10 for 100 and 10 x 5 for 55: the area of 101 costs 101 by the square, but no sum of prices under 155 has room for it.
  const each = problem(
    [
      { name: 'full', length: 10, width: 10, price: 100, count: null },
      { name: 'half', length: 10, width: 5, price: 55, count: null },
    ],
    [
      [10, 5, 2],
      [1, 1, 1],
    ],
  );
  const areas = each.pieces.map(({ length, width }) => length * width);
  const wanted = each.pieces.map(({ count }) => count);
  expect(payable(areaBound(each, wanted, areas), [100, 55])).toBe(110);
  const plan = planned(each);
  expect(plan.cost).toBe(155);
  expect(plan.bound).toBe(155);
  expect(cheapestByBruteForce(each)).toBe(155);
});

test('sheets that have the room, but not for pieces of these sizes, are ruled out by their patterns', () => {
  // No two of three pieces of 6 x 6 lie on one sheet of 10 x 10 or of 10 x 6.
  const each = problem(
    [
      { name: 'full', length: 10, width: 10, price: 100, count: null },
      { name: 'left over', length: 10, width: 6, price: 10, count: 1 },
    ],
    [
      [6, 6, 3],
      [4, 4, 1],
    ],
  );
  const plan = planned(each);
  expect(plan.cost).toBe(cheapestByBruteForce(each));
  expect(plan.bound).toBe(210);
});

test('a bound with scarce stock is true after every number of steps', () => {
  // A left-over sheet that is nearly free: what is proven of it early must count that there is only one.
  const each = problem(
    [
      { name: 'full', length: 11, width: 9, price: 50, count: null },
      { name: 'left over', length: 7, width: 5, price: 1, count: 1 },
      { name: 'strip', length: 11, width: 2, price: 2, count: 2 },
    ],
    [
      [5, 4, 2],
      [7, 2, 2],
      [3, 3, 1],
    ],
  );
  const least = cheapestByBruteForce(each);
  const beds = bedsOf(each);
  const wanted = each.pieces.map(({ count }) => count);
  const start = wanted.flatMap((_, i) => [{ bed: beds[0]!, counts: wanted.map((__, at) => (at === i ? 1 : 0)) }]);
  let before = 0;
  for (let rounds = 1; rounds <= 8; rounds += 1) {
    const { bound } = costBound(beds, wanted, null, { start, solver, rounds, mayGoOn: () => true });
    expect(bound).toBeLessThanOrEqual(least + 1e-6);
    expect(bound).toBeGreaterThanOrEqual(before);
    before = bound;
  }
  expect(before).toBeGreaterThan(0);
});
