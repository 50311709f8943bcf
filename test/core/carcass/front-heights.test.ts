import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Carcass } from '../../../shared-core/carcass/model.js';
import { pitchShares } from '../../../shared-core/carcass/fronts/heights.js';
import { jobWithDrawersArbitrary } from '../arbitraries.js';
import { analyse } from '../findings/jobs.js';
import { specOf } from '../specs.js';

/** Heights in millimetres of the fronts of a carcass, from the highest down. */
function heightsOf(lines: string): readonly number[] {
  const text = `carcasses:\n  a:\n    kind: base\n    width: 600\n    ${lines.replaceAll('\n', '\n    ')}\n`;
  return runsOf(analyse(text).carcasses[0]!.carcass!).map(({ from, to }) => (to - from) / 1000);
}

describe('fronts divided on the pitch', () => {
  // 720 high less 3 at the top: 717 and one gap are 22 pitches of 32 and 16.
  test.each([
    ['front-heights: on-pitch\nfronts: [drawer, drawer, drawer, drawer]', [157, 157, 189, 205]],
    ['front-heights: stepped\nfronts: [drawer, drawer, drawer, drawer]', [125, 157, 189, 237]],
    ['front-heights: { how: stepped, step: 2 }\nfronts: [drawer, drawer, drawer]', [157, 221, 333]],
    ['front-heights: on-pitch\nfronts: [{ front: drawer, pitches: 4 }, drawer, pair]', [125, 285, 301, 301]],
    ['fronts: [{ front: drawer, pitches: 4 }, { front: drawer, pitches: 6, height: 140 }, drawer]', [125, 140, 446]],
    ['front-heights: equal\nfronts: [drawer, drawer]', [357, 357]],
  ])('%s', (lines, heights) => {
    expect(heightsOf(lines)).toEqual(heights);
  });

  test('is the same for each bay, and counts what stays open', () => {
    const lines = 'dividers: 1\nfront-heights: on-pitch\nfronts: [{ front: drawer, bay: 1 }, open, drawer]';
    expect(heightsOf(lines)).toEqual([221, 365, 269]);
  });

  test('shares whole pitches out from the top down, and never more than there are', () => {
    fc.assert(
      fc.property(fc.nat(80), fc.integer({ min: 1, max: 8 }), fc.nat(4), (pitches, fronts, step) => {
        const shares = pitchShares(pitches, fronts, step);
        const least = fronts + (step * fronts * (fronts - 1)) / 2;
        if (shares === null) {
          expect(pitches).toBeLessThan(least);
          return;
        }
        expect(shares.reduce((sum, one) => sum + one, 0)).toBe(pitches);
        expect(shares[0]).toBeGreaterThan(0);
        shares.slice(1).forEach((one, i) => {
          expect(one - shares[i]!).toBeGreaterThanOrEqual(step);
          expect(one - shares[i]!).toBeLessThanOrEqual(step + 1);
        });
      }),
    );
  });
});

const division = fc.record({
  how: fc.constantFrom('on-pitch' as const, 'stepped' as const),
  step: fc.integer({ min: 1, max: 2 }),
});

interface Run {
  readonly key: string;
  readonly from: number;
  readonly to: number;
}

/** The fronts before the first bay from the top down; of a pair the left one. A front that lies has its upper edge at its origin. */
function runsOf({ panels }: Carcass): readonly Run[] {
  const fronts = panels.filter(({ role }) => ['door', 'drawer-front', 'fixed-front'].includes(role));
  const all = fronts.map(({ key, role, pose: { origin }, length, width }) => {
    const from = role === 'door' ? origin.z : origin.z - width;
    return { key, from, to: from + (role === 'door' ? length : width) };
  });
  return all.toSorted((a, b) => b.to - a.to);
}

test('on random carcasses fronts fill the room in whole pitches, with slides and plates on the grid, at one place behind them', () => {
  const count = { even: 0, told: 0, drawers: 0, plates: 0 };
  fc.assert(
    fc.property(jobWithDrawersArbitrary, division, ({ shop, wish }, frontHeights) => {
      const fronts = wish.fronts!.map(({ front }) => ({ front: front === 'open' ? ('fixed' as const) : front }));
      if (fronts.length < 2) return;
      const spec = specOf(shop, { ...wish, dividers: [], fronts, frontHeights });
      const { carcass, problems } = buildCarcass(spec, shop);
      if (problems.length > 0 || carcass === null) return;
      const { pitch } = shop.habits;
      const { gap } = wish.doors! as { readonly gap: number };
      const runs = runsOf(carcass);
      const lowest = runs.at(-1)!;
      const room = runs[0]!.to - lowest.from;
      expect(runs.reduce((sum, { from, to }) => sum + to - from + gap, 0)).toBe(room + gap);
      runs.slice(1).forEach(({ to }, i) => expect(runs[i]!.from - to).toBe(gap));

      const step = frontHeights.how === 'stepped' ? frontHeights.step : 0;
      const heights = runs.map(({ from, to }) => to - from + gap);
      const needed = runs.length + (step * runs.length * (runs.length - 1)) / 2;
      if (Math.floor((room + gap) / pitch) < needed) {
        expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(100 * runs.length);
        count.told += 1;
        return;
      }
      const inPitches = heights.map((height) => Math.floor(height / pitch));
      expect(heights.slice(0, -1).map((height) => height % pitch)).toEqual(heights.slice(1).map(() => 0));
      inPitches.slice(1).forEach((one, i) => {
        expect(one - inPitches[i]! - step).toBeGreaterThanOrEqual(0);
        expect(one - inPitches[i]! - step).toBeLessThanOrEqual(1);
      });
      count.even += 1;

      const base = carcass.panels.find(({ key }) => key === 'left')!.pose.origin.z + spec.rowOffset.value;
      const above = carcass.drawers.flatMap(({ key, line }) => {
        expect((line - base) % pitch).toBe(0);
        const run = runs.find((one) => one.key === `${key}-front`)!;
        return run === lowest ? [] : [line - run.from];
      });
      // Where the bottom of the carcass stands behind the lower edge of the lowest front, that one's box begins higher.
      expect(new Set(above).size).toBeLessThan(2);
      count.drawers += above.length;
      for (const { hinges, upright, face } of boreCarcass(spec, carcass, shop).hung)
        for (const { v } of hinges.flatMap(({ screws }) => screws)) {
          expect([face, (v + upright.pose.origin.z - base) % pitch]).toEqual(['inside', 0]);
          count.plates += 1;
        }
    }),
    { numRuns: 150 },
  );
  expect(count.even).toBeGreaterThan(30);
  expect(count.drawers).toBeGreaterThan(30);
  expect(count.plates).toBeGreaterThan(30);
});
