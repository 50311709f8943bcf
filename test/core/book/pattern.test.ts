import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sharedPattern, type PatternTask } from '../../../shared-core/book/pattern.js';
import '../../seed.js';

/** What a load bores into a panel whose last spindle over wood is `room`, with its front edge at the left or the right stop. */
function boredBy(load: ReadonlySet<number>, spindles: number, room: number, hand: 'left' | 'right'): number[] {
  const places = Array.from({ length: Math.min(room, spindles - 1) + 1 }, (_, place) => place);
  return places.filter((place) => load.has(hand === 'left' ? place : spindles - 1 - place));
}

/** Dowels and pitches behind the last ones, in all rooms; null where a room is bored unlike from left and right, or held badly. */
function judged(load: ReadonlySet<number>, { spindles, rooms, longest, tail }: PatternTask): [number, number] | null {
  let [dowels, behind] = [0, 0];
  for (const room of rooms) {
    const bored = boredBy(load, spindles, room, 'left');
    if (String(bored) !== String(boredBy(load, spindles, room, 'right'))) return null;
    const open = Math.min(room, spindles - 1) - bored.at(-1)!;
    if (bored[0] !== 0 || (room > 0 && spindles > 1 && bored.length < 2) || open > tail) return null;
    if (bored.some((place, index) => index > 0 && place - bored[index - 1]! > longest)) return null;
    dowels += bored.length;
    behind += open;
  }
  return [dowels, behind];
}

/** The least cost of all loads of the head, each tried. */
function leastOfAll(task: PatternTask): [number, number] | null {
  let least: [number, number] | null = null;
  for (let bits = 1; bits < 2 ** task.spindles; bits += 2) {
    const load = new Set(Array.from({ length: task.spindles }, (_, k) => k).filter((k) => bits & (1 << k)));
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
  });
  fc.assert(
    fc.property(task, (one) => {
      const load = sharedPattern(one);
      expect(load && judged(new Set(load), one)).toEqual(leastOfAll(one));
    }),
    { numRuns: 300 },
  );
});

test('19 spindles for rails of 100, wall and base units at no more than five pitches', () => {
  const task = { spindles: 19, rooms: [1, 7, 8, 14, 15], longest: 5, tail: 3 };
  const load = sharedPattern(task)!;
  expect(load.map((k) => 18 - k).reverse()).toEqual(load);
  expect(judged(new Set(load), task)).toEqual(leastOfAll(task));
});
