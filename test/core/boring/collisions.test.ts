import { describe, expect, test } from 'vitest';
import type { Cylinder } from '../../../shared-core/boring/axis.js';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import {
  boreCollisions,
  grooveCollisions,
  type BoreCollision,
  type GrooveCollision,
} from '../../../shared-core/boring/collisions.js';
import { betweenCylinders, isNearerThan, wallBetween } from '../../../shared-core/boring/separation.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { mm, shopOf, specOf, type CarcassWish } from '../specs.js';

const shop = shopOf();

function collided(wish: Partial<CarcassWish>): {
  readonly bores: readonly BoreCollision[];
  readonly grooves: readonly GrooveCollision[];
} {
  const spec = specOf(shop, wish);
  const carcass = buildCarcass(spec, shop).carcass!;
  const boreMap = boreCarcass(spec, carcass, shop);
  const { leastWall } = shop.habits;
  return { bores: boreCollisions(carcass, boreMap, leastWall), grooves: grooveCollisions(carcass, boreMap, leastWall) };
}

describe('collisions', () => {
  test.each(['dowel-8x30', 'screw-7x50', 'cam-15'])('%s: none in a carcass by the shop’s habits', (joint) => {
    const wish: Partial<CarcassWish> = {
      joint,
      dividers: [{ at: mm(300) }],
      fixedShelves: [{ at: mm(296) }],
      looseShelves: [{ at: mm(488) }],
    };
    expect(collided(wish)).toEqual({ bores: [], grooves: [] });
  });

  test('dowels in the line of the row meet its holes', () => {
    // At 40 the dowel of 8 takes 36 to 44; the row of 5 at 37 takes 34.5 to 39.5.
    const { bores } = collided({ panels: { left: { dowels: [mm(40)] } } });
    expect(bores.map(({ panel, bores: [a, b], wall }) => [panel, a.id, b.id, wall])).toEqual([
      ['left', 'left:row-front:1', 'left:bottom/left:1', 0],
      ['left', 'left:row-front:23', 'left:top/left:1', 0],
    ]);
  });

  test('the wall between them, to the micrometre', () => {
    // 5 and 8 wide: rims touch at 6.5 apart; 3 more is enough, a micrometre less is not.
    const place = mm(37 + 6.5 + 3);
    expect(collided({ panels: { left: { dowels: [place] } } }).bores).toEqual([]);
    const { bores } = collided({ panels: { left: { dowels: [place - 1] } } });
    expect(bores.map(({ wall }) => wall)).toEqual([2999, 2999]);
  });

  test('shelves that meet on a divider off each other’s height by less than a dowel', () => {
    const { bores } = collided({
      dividers: [{ at: mm(300) }],
      fixedShelves: [
        { at: mm(296), bay: 1 },
        { at: mm(302), bay: 2 },
      ],
      panels: { 'divider-1': { dowels: [mm(53)] } },
    });
    // From the left 12 deep, from the right 12 deep, in 16: they overlap in depth and are 6 apart with 8 wide bores.
    expect(bores.map(({ panel, wall }) => [panel, wall])).toEqual([['divider-1', 0]]);
  });

  test('an end bore runs into a bore from the face', () => {
    // The top end of the divider takes 19 deep bores; a row starting near it crosses them.
    const { bores } = collided({
      dividers: [{ at: mm(300) }],
      looseShelves: [{ at: mm(328) }],
      panels: { 'divider-1': { dowels: [mm(37)] } },
    });
    const both = bores.map(({ bores: [a, b] }) => [a.purpose, b.purpose].sort().join(' '));
    expect(both.length).toBeGreaterThan(0);
    expect(new Set(both)).toEqual(new Set(['dowel row']));
  });

  test('a rear row through the groove of the back', () => {
    const { grooves } = collided({ rearRow: mm(542) });
    expect(grooves).toHaveLength(46);
    expect(grooves[0]).toMatchObject({ panel: 'left', wall: 0, groove: { from: mm(541) } });
    expect(collided({ rearRow: mm(541 - 2.5 - 3) }).grooves).toEqual([]);
    expect(collided({ rearRow: mm(541 - 2.5 - 2) }).grooves[0]!.wall).toBe(mm(2));
  });
});

describe('the predicate', () => {
  const face = (over: Partial<Cylinder>): Cylinder => ({
    along: 't',
    u: 0,
    across: 0,
    span: { from: 0, to: 12_000 },
    diameter: 8000,
    ...over,
  });
  const end = (over: Partial<Cylinder>): Cylinder =>
    face({ along: 'v', across: 8000, span: { from: 0, to: 19_000 }, ...over });

  test.each([
    ['side by side', face({}), face({ u: 11_000 }), 3000],
    ['on a slant: 3-4-5', face({}), face({ u: 9000, across: 12_000 }), 7000],
    ['one over the other', face({}), face({ span: { from: 15_000, to: 16_000 } }), 3000],
    // Rims 3 apart across and 4 along the axis: 5.
    ['over and beside', face({}), face({ u: 11_000, span: { from: 16_000, to: 17_000 } }), 5000],
    ['crossing', face({ across: 10_000 }), end({ u: 11_000 }), 3000],
    // The end bore stops 6 short of the face bore's axis: 8 less its radius of 4, and straight in line.
    ['ending short of the other', face({ across: 27_000 }), end({}), 4000],
  ] as const)('%s: exact on both sides of the wall', (_, a, b, wall) => {
    const separation = betweenCylinders(a, b);
    expect(wallBetween(separation)).toBe(wall);
    expect(isNearerThan(separation, wall)).toBe(false);
    expect(isNearerThan(separation, wall + 1)).toBe(true);
  });

  test('with no wall asked for, two that touch still collide', () => {
    expect(isNearerThan(betweenCylinders(face({}), face({ u: 8000 })), 0)).toBe(true);
    expect(isNearerThan(betweenCylinders(face({}), face({ u: 8001 })), 0)).toBe(false);
  });

  test('far apart on large panels stays exact', () => {
    // A Pythagorean triple with metres for legs: 3 m and 4 m make 5 m between axes.
    const [a, b] = [face({ diameter: 1 }), face({ diameter: 1, u: 3_000_000, across: 4_000_000 })];
    expect(isNearerThan(betweenCylinders(a, b), 4_999_999)).toBe(false);
    expect(isNearerThan(betweenCylinders(a, b), 5_000_000)).toBe(true);
  });
});
