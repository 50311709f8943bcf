import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sharedPattern, type PatternTask } from '../../../shared-core/book/pattern.js';
import { judged, leastOfAll } from './judged.js';
import '../../seed.js';

const taskOf = (most: number): fc.Arbitrary<PatternTask> =>
  fc.record({
    spindles: fc.integer({ min: 1, max: most }),
    rooms: fc.array(fc.nat({ max: 12 }), { minLength: 1, maxLength: 4 }),
    weights: fc.array(fc.nat({ max: 3 }), { minLength: 4, maxLength: 4 }),
    longest: fc.integer({ min: 1, max: 6 }),
    tail: fc.nat({ max: 5 }),
    never: fc.array(fc.nat({ max: most - 1 }), { maxLength: 2 }),
    pinned: fc.array(fc.tuple(fc.nat({ max: most - 1 }), fc.boolean()), { maxLength: 3 }).map((pins) => new Map(pins)),
  });

/** Only what is pinned on the head can be kept. */
const onHead = (task: PatternTask): PatternTask => ({
  ...task,
  pinned: new Map([...(task.pinned ?? [])].filter(([k]) => k < task.spindles)),
  never: (task.never ?? []).filter((k) => k < task.spindles),
});

function costOf(task: PatternTask): ReturnType<typeof judged> {
  const found = sharedPattern(task);
  if (found === null) return null;
  const cost = judged(new Set(found.load), new Set(found.beside), task);
  expect(found.cost).toEqual(cost);
  for (const [k, there] of task.pinned ?? []) expect([k, found.load.includes(k)]).toEqual([k, there]);
  for (const k of task.never ?? []) expect([...found.load, ...found.beside]).not.toContain(k);
  return cost;
}

test('no load of a small head serves all rooms with fewer dowels, or as few that reach farther back', () => {
  fc.assert(
    fc.property(taskOf(11).map(onHead), (task) => {
      expect(costOf(task)).toEqual(leastOfAll(task));
    }),
    { numRuns: 500 },
  );
});

test('no two loads of a small head serve all rooms and those back to back with fewer dowels', () => {
  const rooms = fc.array(fc.nat({ max: 12 }), { minLength: 1, maxLength: 3 });
  let served = 0;
  fc.assert(
    fc.property(taskOf(11).map(onHead), rooms, (task, backToBack) => {
      const both = { ...task, backToBack };
      const cost = costOf(both);
      expect(cost).toEqual(leastOfAll(both));
      if (cost) served += 1;
    }),
    { numRuns: 500 },
  );
  expect(served).toBeGreaterThan(20);
});

test('19 spindles for rails of 100, wall and base units at no more than five pitches, shelves back to back among them', () => {
  const task = { spindles: 19, rooms: [1, 7, 8, 14, 15], backToBack: [7, 8, 14, 15], longest: 5, tail: 3 };
  expect(costOf(task)).toEqual(leastOfAll(task));
  expect(costOf(task)?.[0]).toBe(18);
});
