import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import type { BoreMap } from '../../../shared-core/boring/model.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { jobWithDoorsArbitrary } from '../arbitraries.js';
import { hinge, mm, shopOf, specOf, type CarcassWish } from '../specs.js';

const shop = shopOf();

function bored(wish: Partial<CarcassWish>, inShop = shop): BoreMap {
  const spec = specOf(inShop, wish);
  const { carcass, problems } = buildCarcass(spec, inShop);
  expect(problems).toEqual([]);
  return boreCarcass(spec, carcass!, inShop);
}
const inMm = (values: readonly number[]) => values.map((value) => value / 1000);
/** Of each door the heights of its hinges in the carcass, in millimetres. */
const heights = ({ hung }: BoreMap) => hung.map(({ hinges }) => inMm(hinges.map(({ z }) => z)));
const of = ({ bores }: BoreMap, purpose: 'cup' | 'plate') =>
  bores
    .filter((bore) => bore.purpose === purpose)
    .map(({ panel, face, u, v, diameter, depth }) => [panel, face, ...inMm([u, v, diameter, depth])]);

// Worked by hand: 720 high, rows at 8 + 32 k; centres between two holes, at 24 + 32 k. The door runs from 0 to 717.
describe('hinges on the grid', () => {
  test('stand where the pitch is nearest to 100 from the ends: 88 and 632', () => {
    const map = bored({ doors: { hung: 'left' } });
    expect(heights(map)).toEqual([[88, 632]]);
    expect(of(map, 'cup')).toEqual([
      ['door-1', 'inside', 22.5, 88, 35, 12],
      ['door-1', 'inside', 22.5, 632, 35, 12],
    ]);
  });

  test('their screws go into the holes of the row, where there is one, and else into bores of their own', () => {
    const doors = { hung: 'right' } as const;
    expect(of(bored({ doors }), 'plate')).toEqual([]);
    const holes = bored({ doors }).bores.filter(
      ({ panel, u, purpose }) => panel === 'right' && u === mm(37) && purpose === 'row',
    );
    expect(inMm(holes.map(({ v }) => v))).toEqual(expect.arrayContaining([72, 104, 616, 648]));
    const own = [72, 104, 616, 648].map((v) => ['right', 'inside', 37, v, 5, 13]);
    expect(of(bored({ doors, rows: 'none' }), 'plate')).toEqual(own);
    // A row that is not deep enough, or not where the plate is, does not take the screws.
    const shallow = shopOf({ habits: { rowDepth: mm(10) } });
    expect(of(bored({ doors }, shallow), 'plate')).toEqual(own);
    expect(of(bored({ doors, rowSetback: mm(50) }), 'plate')).toEqual(own);
  });

  test('behind an inset door they stand back by its thickness, with the arm for it', () => {
    const map = bored({ doors: { hung: 'left', how: 'inset', board: 'board-19' } });
    expect(map.hung[0]).toMatchObject({ overlay: mm(-3), reach: { arm: mm(24), plate: mm(2), distance: mm(23) } });
    expect(of(map, 'plate').every(([, , u]) => u === 37 + 19)).toBe(true);
    expect(of(map, 'plate')).toHaveLength(4);
  });

  test('on a divider they take the face that looks at their opening', () => {
    const wish = { width: mm(900), dividers: [{ at: mm(450) }], rows: 'none' } as const;
    const on = (map: BoreMap) => of(map, 'plate').map(([panel, face]) => `${panel} ${face}`);
    expect(new Set(on(bored({ ...wish, doors: { bays: ['none', 'left'] } })))).toEqual(new Set(['divider-1 inside']));
    expect(new Set(on(bored({ ...wish, doors: { bays: ['right'] } })))).toEqual(new Set(['divider-1 outside']));
  });

  test('two plates on one divider part by whole pitches, so that their screws do not meet', () => {
    const map = bored({ width: mm(900), dividers: [{ at: mm(450) }], doors: { bays: ['right', 'left'] } });
    const [one, two] = map.hung.map(({ hinges }) => hinges.flatMap(({ screws }) => screws.map(({ v }) => v)));
    expect(one!.filter((v) => two!.includes(v))).toEqual([]);
    expect(map.hung.flatMap(({ hinges }) => hinges.map(({ meets }) => meets))).toEqual([null, null, null, null]);
  });

  test('they make room for shelves, by as few pitches as will do', () => {
    // A shelf of 16 at 96 (88 to 104) stands in the room of a hinge at 88, 57 to 119. 56 would reach up to 87.
    expect(heights(bored({ doors: { hung: 'left' }, fixedShelves: [{ at: mm(96) }] }))).toEqual([[56, 632]]);
    // One that stands back behind the hinge is not in its way.
    expect(heights(bored({ doors: { hung: 'left' }, fixedShelves: [{ at: mm(96), setback: mm(80) }] }))).toEqual([
      [88, 632],
    ]);
  });
});

describe('how many', () => {
  // Up to 900 two, up to 1600 three, up to 2000 four, up to 2400 five.
  test.each([
    [903, 2],
    [904, 3],
    [1603, 3],
    [1604, 4],
    [2403, 5],
    [2404, 6],
  ])('a carcass %i high, its door 3 less, has %i a door', (height, count) => {
    expect(heights(bored({ height: mm(height), doors: { hung: 'left' } }))[0]).toHaveLength(count);
  });

  test('those between are evenly spread, to the pitch', () => {
    const [z] = heights(bored({ height: mm(2000), doors: { hung: 'left' } }));
    const gaps = z!.slice(1).map((one, i) => one - z![i]!);
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(32);
  });
});

test('no hinge, an unknown one, and one that does not reach', () => {
  expect(bored({ doors: { hung: 'left', hinge: 'none' } }).hung).toEqual([]);
  expect(bored({ doors: { hung: 'left', hinge: 'hinge-101' } }).hung[0]!.hinge.name).toBe('hinge-110');
  const map = bored({ doors: { hung: 'left', reveal: mm(4.5) } });
  expect(map.hung[0]).toMatchObject({ reach: null, hinges: [] });
  expect(of(map, 'cup')).toEqual([]);
});

test('a plate of three pitches has its two screws so far apart', () => {
  const wide = hinge('wide', { ...shop.hinges.get('hinge-110')!, platePitches: 3 });
  const map = bored({ doors: { hung: 'left' }, rows: 'none' }, shopOf({ hinges: [wide], habits: { hinge: 'wide' } }));
  const [low] = map.hung[0]!.hinges;
  expect(low!.screws[1]!.v - low!.screws[0]!.v).toBe(mm(96));
  expect(low!.z - low!.screws[0]!.v).toBe(mm(48));
});

describe('the screws beside a cup', () => {
  const cupScrews = { apart: mm(45), behind: mm(9.5), diameter: mm(3), depth: mm(8) };
  const screwed = hinge('screwed', { ...shop.hinges.get('hinge-110')!, cupScrews });
  const withScrews = shopOf({ hinges: [screwed], habits: { hinge: 'screwed' } });

  test('stand half their distance over and under its centre, and further from the edge', () => {
    const map = bored({ doors: { hung: 'left' } }, withScrews);
    const made = (purpose: string) => map.bores.filter((bore) => bore.purpose === purpose);
    const [cup] = made('cup');
    expect(
      made('cup-screw')
        .slice(0, 2)
        .map(({ u, v, diameter, depth, face }) => [u - cup!.u, v - cup!.v, diameter, depth, face]),
    ).toEqual([
      [mm(9.5), mm(-22.5), mm(3), mm(8), 'inside'],
      [mm(9.5), mm(22.5), mm(3), mm(8), 'inside'],
    ]);
    expect(made('cup-screw')).toHaveLength(2 * made('cup').length);
  });

  test('are in the wood of random doors, two for each cup, or there are none', () => {
    let screws = 0;
    fc.assert(
      fc.property(jobWithDoorsArbitrary, ({ shop: one, spec }) => {
        const carcass = buildCarcass(spec, one).carcass!;
        const { bores, hung } = boreCarcass(spec, carcass, one);
        const wanted = hung.reduce((sum, { hinges, hinge: of }) => sum + (of.cupScrews ? 2 * hinges.length : 0), 0);
        const made = bores.filter(({ purpose }) => purpose === 'cup-screw');
        expect(made).toHaveLength(wanted);
        for (const { panel, v, diameter } of made) {
          const { length } = carcass.panels.find(({ key }) => key === panel)!;
          expect(v - diameter / 2).toBeGreaterThan(0);
          expect(v + diameter / 2).toBeLessThan(length);
        }
        screws += made.length;
      }),
      { numRuns: 100 },
    );
    expect(screws).toBeGreaterThan(50);
  });
});
