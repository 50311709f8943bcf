import fc from 'fast-check';
import { expect, test } from 'vitest';
import { secondsOf, type Units } from './batch-seconds.js';
import { smallShop, type Small } from './small-shop.js';
import '../../seed.js';

/** The least of all loads that read the same from both ends, each written by hand, with spare holes and without. */
function leastByHand(small: Small, batch: Units): number {
  let least = Infinity;
  for (let bits = 0; bits < 2 ** Math.ceil(small.spindles / 2); bits += 1) {
    const near = (k: number): number => Math.min(k, small.spindles - 1 - k);
    const load = Array.from({ length: small.spindles }, (_, k) => k).filter((k) => bits & (1 << near(k)));
    if (load.length < 2) continue;
    for (const spare of ['yes', 'no']) {
      const own = [`shared-load: [${load.map((k) => k + 1).join(', ')}]`, `spare-holes: ${spare}`];
      least = Math.min(least, secondsOf(smallShop(small, own), batch));
    }
  }
  return least;
}

// What takes hardly less is not worth more set-ups.
test.each<[Small, Units]>([
  [{ spindles: 8, spacing: 192, depths: [236, 140] }, [3, 3]],
  [{ spindles: 8, spacing: 192, depths: [236, 140] }, [10, 2]],
  [{ spindles: 9, spacing: 192, depths: [268, 140] }, [1, 1]],
  [{ spindles: 9, spacing: 192, depths: [268, 140] }, [3, 3]],
  [{ spindles: 9, spacing: 192, depths: [268, 140] }, [20, 20]],
])('no load written by hand takes a batch clearly less time: %j, %j', (small, batch) => {
  expect(0.95 * secondsOf(smallShop(small, [], batch), batch)).toBeLessThanOrEqual(leastByHand(small, batch));
});

// The book counts beforehand what a planner finds out, so it may be a few bits off; where it is, little is lost.
test('by the loads chosen for their batches, batches take less time than by the fewest set-ups, or by own places', () => {
  // No carcass deeper than its heads reach.
  const small = fc.integer({ min: 8, max: 21 }).chain((spindles) =>
    fc.record({
      spindles: fc.constant(spindles),
      spacing: fc.constantFrom(96, 128, 160, 192, 256),
      depths: fc.tuple(
        fc.integer({ min: 230, max: spindles * 32 }),
        fc.integer({ min: 130, max: Math.min(400, spindles * 32) }),
      ),
    }),
  );
  const batch = fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 }));
  const all = { chosen: 0, few: 0, own: 0, either: 0 };
  fc.assert(
    fc.property(small, batch, (one, many) => {
      const chosen = secondsOf(smallShop(one, [], many), many);
      const few = secondsOf(smallShop(one, []), many);
      const own = secondsOf(smallShop(one, ['share-places: no']), many);
      expect(chosen / Math.min(few, own)).toBeLessThan(1.1);
      all.chosen += chosen;
      all.few += few;
      all.own += own;
      all.either += Math.min(few, own);
    }),
    { numRuns: 60 },
  );
  expect(all.chosen).toBeLessThan(all.either);
});
