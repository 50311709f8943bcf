import manifoldModule, { type Manifold } from 'manifold-3d';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Cylinder } from '../../shared-core/boring/axis.js';
import {
  betweenCylinderAndBlock,
  betweenCylinders,
  isNearerThan,
  wallBetween,
  type Block,
  type Separation,
} from '../../shared-core/boring/separation.js';

/*
 * Distances between bores against a general-purpose solid modeller (the Manifold library, npm `manifold-3d`), which
 * measures the gap between two meshes. A prism inside the cylinder gives no less than the true distance, one around it
 * no more; the true distance must lie between.
 */
const library = await manifoldModule();
library.setup();
const { Manifold: Solid } = library;
const SIDES = 32;
const SEARCH = 60_000;
/** Rounding of the modeller, in micrometres. */
const ROUNDING = 0.01;

/** In the order (u, v, t). */
function prismOf({ along, u, across, span, diameter }: Cylinder, around: boolean): Manifold {
  const radius = diameter / 2 / (around ? Math.cos(Math.PI / SIDES) : 1);
  const prism = Solid.cylinder(span.to - span.from, radius, radius, SIDES);
  const placed =
    along === 't'
      ? prism.translate([u, across, span.from])
      : // z becomes v, and v becomes -t.
        prism.rotate([-90, 0, 0]).translate([u, span.from, across]);
  prism.delete();
  return placed;
}

function blockSolid({ u, v, t }: Block): Manifold {
  return Solid.cube([u.to - u.from, v.to - v.from, t.to - t.from]).translate([u.from, v.from, t.from]);
}

function bracket(solids: (around: boolean) => readonly [Manifold, Manifold]): { least: number; most: number } {
  const gap = (around: boolean): number => {
    const [a, b] = solids(around);
    const distance = a.minGap(b, SEARCH);
    a.delete();
    b.delete();
    return distance;
  };
  return { least: gap(true) - ROUNDING, most: gap(false) + ROUNDING };
}

function expectWithin(separation: Separation, { least, most }: { least: number; most: number }): void {
  const wall = wallBetween(separation);
  expect(wall).toBeGreaterThanOrEqual(Math.floor(least));
  expect(wall).toBeLessThanOrEqual(most);
  // The predicate agrees with the figure on both sides of it.
  expect(isNearerThan(separation, wall + 2)).toBe(true);
  if (wall >= 2) expect(isNearerThan(separation, wall - 1)).toBe(false);
}

const place = fc.integer({ min: 0, max: 30_000 });
const span = fc
  .tuple(place, fc.integer({ min: 1000, max: 20_000 }))
  .map(([from, length]) => ({ from, to: from + length }));
const cylinder = (along: 't' | 'v'): fc.Arbitrary<Cylinder> =>
  fc.record({
    along: fc.constant(along),
    u: place,
    across: place,
    span,
    diameter: fc.integer({ min: 2000, max: 15_000 }),
  });

describe('distance between two bores', () => {
  test.each([
    ['parallel', 't', 't'],
    ['crossing', 't', 'v'],
  ] as const)('%s: as the solid modeller measures it', (_, a, b) => {
    fc.assert(
      fc.property(cylinder(a), cylinder(b), (first, second) => {
        const separation = betweenCylinders(first, second);
        expectWithin(
          separation,
          bracket((around) => [prismOf(first, around), prismOf(second, around)]),
        );
        expect(Math.abs(wallBetween(betweenCylinders(second, first)) - wallBetween(separation))).toBeLessThanOrEqual(1);
      }),
      { numRuns: 200 },
    );
  });

  test('crossing, with the end of each short of the other: as the solid modeller measures it', () => {
    const offset = fc.integer({ min: 1, max: 12_000 });
    fc.assert(
      fc.property(cylinder('t'), cylinder('v'), offset, offset, (first, drawn, past, short) => {
        const second: Cylinder = {
          ...drawn,
          span: { from: first.across + past, to: first.across + past + 10_000 },
          across: first.span.to + short,
        };
        const separation = betweenCylinders(first, second);
        expect(separation.kind).toBe('corner');
        expectWithin(
          separation,
          bracket((around) => [prismOf(first, around), prismOf(second, around)]),
        );
      }),
      { numRuns: 200 },
    );
  });

  test.each(['t', 'v'] as const)('bore along %s and groove: as the solid modeller measures it', (along) => {
    const block = fc.record({ u: span, v: span, t: span });
    fc.assert(
      fc.property(cylinder(along), block, (bore, groove) => {
        expectWithin(
          betweenCylinderAndBlock(bore, groove),
          bracket((around) => [prismOf(bore, around), blockSolid(groove)]),
        );
      }),
      { numRuns: 200 },
    );
  });
});
