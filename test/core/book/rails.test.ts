import fc from 'fast-check';
import { expect, test } from 'vitest';
import { patternWithRails, rearOnLoad, type RailTask } from '../../../shared-core/book/rails.js';
import { judged, leastOfAll } from './judged.js';
import '../../seed.js';

/** Whether a rail at the front and one at some place of each depth get the same bores from the load. */
function meetsRails(load: ReadonlySet<number>, { span, rears }: RailTask): boolean {
  const under = (front: number): string =>
    Array.from({ length: span + 1 }, (_, k) => (load.has(front + k) ? '|' : '.')).join('');
  return rears.every((places) => places.some((rear) => under(rear) === under(0)));
}

test('no load of a small head serves rooms and rails with fewer dowels', () => {
  let met = 0;
  const spindles = fc.integer({ min: 6, max: 11 });
  const task = spindles.chain((count) =>
    fc.record({
      spindles: fc.constant(count),
      rooms: fc.array(fc.nat({ max: 12 }), { minLength: 1, maxLength: 3 }),
      longest: fc.integer({ min: 2, max: 6 }),
      tail: fc.nat({ max: 5 }),
      never: fc.array(fc.integer({ min: 1, max: count - 1 }), { maxLength: 2 }),
      span: fc.nat({ max: 2 }),
      rears: fc.array(fc.array(fc.integer({ min: 2, max: count - 3 }), { minLength: 1, maxLength: 3 }), {
        minLength: 1,
        maxLength: 2,
      }),
    }),
  );
  fc.assert(
    fc.property(task, ({ span, rears, never, ...rest }) => {
      const one = { ...rest, pinned: new Map(never.map((k) => [k, false] as const)) };
      const found = patternWithRails(one, { span, rears });
      const least = leastOfAll(one, (load) => meetsRails(load, { span, rears }));
      expect(found && judged(new Set(found.load), new Set(found.beside), one)).toEqual(least);
      if (!found) return;
      met += 1;
      for (const places of rears) expect(places).toContain(rearOnLoad(found.load, places, span));
    }),
    { numRuns: 200 },
  );
  expect(met).toBeGreaterThan(20);
});
