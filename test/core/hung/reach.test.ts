import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlayOf, overlaysOf, reachFor, whatWouldDo } from '../../../shared-core/hung/reach.js';
import type { Hinge } from '../../../shared-core/shop/model.js';
import { mm, shopOf } from '../specs.js';

// Arms of 5, 14 and 24, plates of 0, 2 and 3, the cup 20.5 to 24.5 from the edge, 22.5 as a rule (invented).
const hinge = shopOf().hinges.get('hinge-110')!;
const reach = (overlay: number) => {
  const found = reachFor(hinge, mm(overlay), null);
  return found && [found.arm / 1000, found.plate / 1000, found.distance / 1000];
};

describe('worked by hand: the edge lies distance - arm - plate beyond the face', () => {
  test.each([
    // A side of 16 with a reveal of 1.5: 22.5 - 5 - 3 = 14.5.
    [14.5, [5, 3, 22.5]],
    // A side of 18: 16.5 + 5 = 21.5 is 1 off with plate 0, 23.5 is 1 off with plate 2; the lower plate is taken.
    [16.5, [5, 0, 21.5]],
    // A side of 19: 22.5 - 5 - 0 = 17.5.
    [17.5, [5, 0, 22.5]],
    // Half of a divider of 16, less half a gap of 3: 22.5 - 14 - 2 = 6.5.
    [6.5, [14, 2, 22.5]],
    // Inset with a gap of 3: 23 - 24 - 2 = -3 is half a millimetre off the usual distance.
    [-3, [24, 2, 23]],
    // The ends of what the straight arm reaches: 24.5 - 5 - 0 and 20.5 - 5 - 3.
    [19.5, [5, 0, 24.5]],
    [12.5, [5, 3, 20.5]],
  ])('an overlay of %d', (overlay, wanted) => {
    expect(reach(overlay)).toEqual(wanted);
  });

  test('a micrometre beyond either end there is none', () => {
    expect(reachFor(hinge, mm(19.5) + 1, null)).toBeNull();
    expect(reachFor(hinge, mm(12.5) - 1, null)).toBeNull();
    expect(reachFor(hinge, mm(10.5), null)).not.toBeNull();
    expect(reachFor(hinge, mm(10.5) + 1, null)).toBeNull();
  });

  test('what the cup borer can be set to comes before the usual distance', () => {
    // 22.5 with plate 3; a borer that goes from 19 to 21.5 only takes 21.5 with plate 2.
    expect(reachFor(hinge, mm(14.5), { min: mm(19), max: mm(21.5) })).toEqual({
      arm: mm(5),
      plate: mm(2),
      distance: mm(21.5),
    });
    // One that cannot be set to any does not hide what the hinge could do.
    expect(reachFor(hinge, mm(14.5), { min: mm(30), max: mm(40) })?.distance).toBe(mm(22.5));
  });

  test('what would do: a plate between two arms, a distance beyond the last', () => {
    // 11.5 with the arm of 5: plates from 20.5 - 11.5 - 5 = 4 to 24.5 - 11.5 - 5 = 8.
    expect(whatWouldDo(hinge, mm(11.5))).toEqual({ by: 'plate', arm: mm(5), plates: { min: mm(4), max: mm(8) } });
    expect(whatWouldDo(hinge, mm(21))).toEqual({
      by: 'distance',
      reach: { arm: mm(5), plate: 0, distance: mm(26) },
    });
    expect(overlaysOf(hinge)).toEqual({ min: mm(-6.5), max: mm(19.5) });
  });
});

const lengths = (min: number, max: number) => fc.array(fc.integer({ min, max }), { minLength: 1, maxLength: 4 });
const hingeArbitrary: fc.Arbitrary<Hinge> = fc
  .record({
    arms: lengths(0, 30_000),
    plates: lengths(0, 9000),
    low: fc.integer({ min: 19_000, max: 22_000 }),
    span: fc.nat(5000),
  })
  .map(({ arms, plates, low, span }) => ({ ...hinge, arms, plates, distance: { min: low, max: low + span } }));

test('any hinge: what is chosen gives the overlay, and where nothing is, every combination is out of range', () => {
  let [found, missed] = [0, 0];
  fc.assert(
    fc.property(hingeArbitrary, fc.integer({ min: -8000, max: 22_000 }), (one, overlay) => {
      const chosen = reachFor(one, overlay, null);
      const distances = one.arms.flatMap((arm) => one.plates.map((plate) => overlay + arm + plate));
      const able = distances.filter((distance) => distance >= one.distance.min && distance <= one.distance.max);
      if (chosen === null) {
        missed += 1;
        expect(able).toEqual([]);
        // What is said to do does: it is in range, and gives the overlay.
        const would = whatWouldDo(one, overlay);
        if (would.by === 'distance') expect(overlayOf(would.reach)).toBe(overlay);
        else
          for (const plate of [would.plates.min, would.plates.max])
            expect(reachFor({ ...one, plates: [plate] }, overlay, null)).not.toBeNull();
        return;
      }
      found += 1;
      expect(overlayOf(chosen)).toBe(overlay);
      expect([one.arms.includes(chosen.arm), one.plates.includes(chosen.plate)]).toEqual([true, true]);
      const off = (distance: number) => Math.abs(distance - one.usualDistance);
      expect(off(chosen.distance)).toBe(Math.min(...able.map(off)));
    }),
    { numRuns: 500 },
  );
  expect(Math.min(found, missed)).toBeGreaterThan(50);
});
