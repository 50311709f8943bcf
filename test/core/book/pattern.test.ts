import fc from 'fast-check';
import { expect, test } from 'vitest';
import { besideLoad, sharedPattern, type PatternTask } from '../../../shared-core/book/pattern.js';
import { judged } from './judged.js';
import '../../seed.js';

/** The least cost of all loads of the head, each tried. */
function leastOfAll(task: PatternTask): [number, number] | null {
  let least: [number, number] | null = null;
  // A load without the first spindle holds no joint.
  for (let bits = 1; bits < 2 ** task.spindles; bits += 2) {
    const load = new Set(Array.from({ length: task.spindles }, (_, k) => k).filter((k) => bits & (1 << k)));
    if ([...(task.pinned ?? [])].some(([k, there]) => load.has(k) !== there)) continue;
    const cost = judged(load, task);
    if (cost && (!least || cost[0] < least[0] || (cost[0] === least[0] && cost[1] < least[1]))) least = cost;
  }
  return least;
}

test('no load of a small head serves all rooms with fewer dowels, or as few that reach farther back', () => {
  const task = fc.record({
    spindles: fc.integer({ min: 1, max: 11 }),
    rooms: fc.array(fc.nat({ max: 12 }), { minLength: 1, maxLength: 4 }),
    longest: fc.integer({ min: 1, max: 6 }),
    tail: fc.nat({ max: 5 }),
    pinned: fc.array(fc.tuple(fc.nat({ max: 12 }), fc.boolean()), { maxLength: 3 }),
  });
  fc.assert(
    fc.property(task, ({ pinned, ...rest }) => {
      const one = { ...rest, pinned: new Map(pinned.filter(([k]) => k < rest.spindles)) };
      const load = sharedPattern(one)?.load;
      expect(load ? judged(new Set(load), one) : null).toEqual(leastOfAll(one));
      for (const [k, there] of one.pinned) if (load) expect([k, load.includes(k)]).toEqual([k, there]);
    }),
    { numRuns: 500 },
  );
});

test('19 spindles for rails of 100, wall and base units at no more than five pitches', () => {
  const task = { spindles: 19, rooms: [1, 7, 8, 14, 15], longest: 5, tail: 3 };
  const load = sharedPattern(task)!.load;
  expect(load.map((k) => 18 - k).reverse()).toEqual(load);
  expect(judged(new Set(load), task)).toEqual(leastOfAll(task));
});

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
        const beside = besideLoad(load, { spindles, longest: far }, not);
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
