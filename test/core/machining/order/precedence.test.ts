import { expect, test } from 'vitest';
import { closePrecedence, firstViolation } from '../../../../shared-core/machining/order/precedence.js';

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
