import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { extentsOf } from '../../../shared-core/carcass/pose.js';
import { jobArbitrary } from '../arbitraries.js';
import { mm, shopOf, specOf, type CarcassWish } from '../specs.js';

const shop = shopOf();

/** The heights of the row holes of each panel of a carcass, from the bottom end of the sides, in millimetres; front rows only. */
function heights(wish: Partial<CarcassWish>): Readonly<Record<string, readonly number[]>> {
  const spec = specOf(shop, wish);
  const carcass = buildCarcass(spec, shop).carcass!;
  const { bores } = boreCarcass(spec, carcass, shop);
  const found: Record<string, number[]> = {};
  for (const { panel, group, v, purpose } of bores)
    if (purpose === 'row' && group.endsWith('front')) {
      const { z } = carcass.panels.find(({ key }) => key === panel)!.pose.origin;
      (found[panel] ??= []).push((z + v) / 1000);
    }
  return found;
}

// Worked by hand: sides of 720, holes at 8 + 32 k, the 12th of them at 360.
describe('partial rows', () => {
  test('have so many holes over and under that of each loose shelf', () => {
    const one = heights({ looseShelves: [{ at: mm(360) }], rowHoles: { roundShelves: 2 } });
    expect(one).toEqual({ left: [296, 328, 360, 392, 424], right: [296, 328, 360, 392, 424] });
    const two = heights({ looseShelves: [{ at: mm(296) }, { at: mm(360) }], rowHoles: { roundShelves: 1 } });
    expect(two.left).toEqual([264, 296, 328, 360, 392]);
    expect(heights({ rowHoles: { roundShelves: 3 } })).toEqual({});
  });

  test('end at the heights that are asked for', () => {
    expect(heights({ rowHoles: { from: mm(200), to: mm(264) } }).left).toEqual([200, 232, 264]);
    expect(heights({ rowHoles: { from: mm(200.1), to: mm(263.9) } }).left).toEqual([232]);
  });

  test('are only where a bay has them', () => {
    const wish = { width: mm(900), dividers: [{ at: mm(450) }], looseShelves: [{ at: mm(360), bay: 2 }] };
    expect(Object.keys(heights({ ...wish, rowHoles: { bays: [2] } })).sort()).toEqual(['divider-1', 'right']);
    expect(Object.keys(heights({ ...wish, rowHoles: { bays: [1] } })).sort()).toEqual(['left']);
    // What is said of one panel comes first.
    const own = { ...wish, rowHoles: { bays: [2] }, panels: { left: { rows: 'front' as const } } };
    expect(Object.keys(heights(own)).sort()).toEqual(['divider-1', 'left', 'right']);
  });
});

test('on random jobs holes are left out and none is moved, and every shelf on the grid keeps its own', () => {
  let left = 0;
  fc.assert(
    fc.property(jobArbitrary, fc.integer({ min: 0, max: 3 }), (job, roundShelves) => {
      const { shop: one, wish } = job;
      const bored = (rowHoles: CarcassWish['rowHoles']) => {
        const spec = specOf(one, { ...wish, rowHoles });
        const carcass = buildCarcass(spec, one).carcass!;
        return { carcass, ...boreCarcass(spec, carcass, one) };
      };
      const [whole, part] = [bored({}), bored({ roundShelves })];
      const holes = ({ bores }: typeof whole) => bores.filter(({ purpose }) => purpose === 'row');
      const all = new Set(holes(whole).map(({ id }) => id));
      for (const { id } of holes(part)) expect(all.has(id)).toBe(true);
      left += holes(whole).length - holes(part).length;
      // Pins stand half a hole under the shelf: at each of its corners there is a hole of the rows that are bored at all.
      for (const shelf of part.carcass.panels.filter(({ role }) => role === 'loose-shelf')) {
        const pin = extentsOf(shelf).z.from - Math.floor(one.habits.rowDiameter / 2);
        const bay = part.carcass.bays.find(
          ({ from, to }) => from <= extentsOf(shelf).x.from && extentsOf(shelf).x.to <= to,
        )!;
        for (const key of [bay.left, bay.right]) {
          const upright = part.carcass.panels.find((panel) => panel.key === key)!;
          const rows = part.rows.filter(({ panel }) => panel === key);
          for (const { id } of rows)
            expect(
              holes(part).some(({ group, v }) => group === id && Math.abs(v + upright.pose.origin.z - pin) <= 1),
            ).toBe(true);
        }
      }
    }),
    { numRuns: 200 },
  );
  expect(left).toBeGreaterThan(1000);
});
