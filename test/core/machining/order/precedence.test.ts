import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  banImpossibleArcs,
  closePrecedence,
  firstViolation,
} from '../../../../shared-core/machining/order/precedence.js';
import { obeys, permutations } from './brute-force.js';

const chain = closePrecedence(4, [
  [1, 2],
  [2, 3],
])!;

test('what comes before what comes before comes before', () => {
  expect(chain.earlier).toEqual([[], [], [1], [1, 2]]);
});

test('pairs that run in a circle obey no order', () => {
  expect(
    closePrecedence(4, [
      [1, 2],
      [2, 3],
      [3, 1],
    ]),
  ).toBeNull();
});

test.each([
  [[0, 2, 1, 3], { p: 1, q: 2 }],
  [[0, 1, 3, 2], { p: 2, q: 3 }],
  [[0, 3, 1, 2], { p: 1, q: 2 }],
  [[0, 1, 2, 3], null],
])('of %j the first place that is wrong is found, from the second on', (route, found) => {
  expect(firstViolation(chain, route)).toEqual(found);
});

test('an arc is banned just where no order that obeys goes that way', () => {
  let banned = 0;
  const node = fc.integer({ min: 1, max: 5 });
  fc.assert(
    fc.property(fc.array(fc.tuple(node, node), { maxLength: 6 }), (pairs) => {
      const size = 6;
      const obedient = Array.from(permutations(size - 1), (order) => order.map((index) => index + 1)).filter(
        (order) => pairs.every(([i, j]) => i !== j) && obeys(order, pairs),
      );
      const precedence = closePrecedence(size, pairs);
      expect(precedence === null).toBe(obedient.length === 0);
      if (precedence === null) return;
      const used = new Set(
        obedient.flatMap((order) => [0, ...order].map((from, index) => `${from} ${order[index] ?? 0}`)),
      );
      const cost = new Float64Array(size * size);
      banImpossibleArcs(precedence, cost);
      for (let from = 0; from < size; from += 1) {
        for (let to = 0; to < size; to += 1) {
          if (from === to) continue;
          expect([from, to, cost[from * size + to]]).toEqual([from, to, used.has(`${from} ${to}`) ? 0 : Infinity]);
          banned += Number(!used.has(`${from} ${to}`));
        }
      }
      for (const order of obedient.slice(0, 5)) expect(firstViolation(precedence, [0, ...order])).toBeNull();
      expect(
        precedence.earlier.map((list, j) => list.filter((i) => obedient.some((o) => o.indexOf(i) > o.indexOf(j)))),
      ).toEqual(Array.from({ length: size }, () => []));
    }),
    { numRuns: 200 },
  );
  expect(banned).toBeGreaterThan(300);
});
