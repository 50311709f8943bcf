import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import { swingHits } from '../../shared-core/hung/swing-hits.js';
import { swingOf } from '../../shared-core/hung/swing.js';
import { diagonalJobArbitrary } from '../core/arbitraries.js';
import {
  assemble,
  clear,
  interferences,
  metWhileTurning,
  middleOf,
  panelsHolding,
  pinsIn,
  pinsUnder,
  volumeInTheOpen,
} from './solids.js';

afterEach(clear);

/** Corners of what stands turned are rounded to the micrometre, each by itself; fronts are as wide as a saw can be set to. */
const ROUNDED = 3;
const SAWN = 200;

test('random carcasses across a corner close without a gap, and nothing in them interferes', () => {
  let doors = 0;
  fc.assert(
    fc.property(diagonalJobArbitrary, ({ spec, shop, wish }) => {
      const { carcass, problems } = buildCarcass(spec, shop);
      expect(problems).toEqual([]);
      const { bores, hung } = boreCarcass(spec, carcass!, shop);
      const assembly = assemble(carcass!, bores, shop);
      expect(interferences(assembly)).toEqual([]);
      expect(volumeInTheOpen(assembly)).toBe(0);
      // Every joint is of a side and of bottom or top.
      for (const connector of assembly.connectors.filter(({ kind }) => kind === 'dowel' || kind === 'bolt'))
        expect(panelsHolding(connector, assembly)).toHaveLength(2);

      const out = (wish.diagonal!.left ?? wish.diagonal!.right)! - wish.depth!;
      const across = wish.width! - wish.depth!;
      const isRight = wish.diagonal!.right !== undefined;
      for (const { door } of hung) {
        doors += 1;
        const { min, max } = assembly.panels.find(({ name }) => name === door.key)!.box;
        // It leaves the reveal of both sides, and no more, and stands before no neighbour.
        const reveal = wish.doors!.reveal!;
        const fromFirst = isRight ? min[0] : wish.width! - max[0];
        for (const left of [fromFirst, min[1] + out]) {
          expect(left).toBeGreaterThanOrEqual(reveal - ROUNDED);
          expect(left).toBeLessThan(reveal + SAWN);
        }
        // The diagonal is as far behind its inside face as its buffers are thick.
        const nearest = Math.min(
          ...[min, max].flatMap(([x]) =>
            [min, max].map(([, y]) => ((isRight ? x : wish.width! - x) * out + y * across) / Math.hypot(across, out)),
          ),
        );
        expect(nearest).toBeLessThan(0);
      }
      clear();
    }),
    { numRuns: 150 },
  );
  expect(doors).toBeGreaterThan(60);
});

test('doors across a corner turn about their line without touching anything, or are told', () => {
  let [free, told, met] = [0, 0, 0];
  fc.assert(
    fc.property(diagonalJobArbitrary, ({ spec, shop }) => {
      const carcass = buildCarcass(spec, shop).carcass!;
      const { hung } = boreCarcass(spec, carcass, shop);
      const { blanks } = assemble(carcass, [], shop);
      for (const one of hung) {
        const own = blanks.find(({ name }) => name === one.door.key)!;
        const rest = blanks.filter((part) => part !== own);
        const { axis, way, degrees } = swingOf(one);
        const angles = Array.from({ length: 40 }, (_, i) => ((way === 'clockwise' ? -1 : 1) * degrees * (i + 1)) / 40);
        const touched = [...metWhileTurning(own, rest, axis, angles).keys()];
        const said = swingHits(one, carcass).map(({ panel }) => panel.key);
        for (const name of said) expect(blanks.map((part) => part.name)).toContain(name);
        met += touched.length;
        told += said.length;
        free += said.length === 0 ? 1 : 0;
        // A graze between two whole degrees is no more than a tenth of a millimetre.
        if (said.length === 0) expect(touched).toEqual([]);
      }
      clear();
    }),
    { numRuns: 120 },
  );
  expect(free).toBeGreaterThan(5);
  expect(met).toBeLessThanOrEqual(told);
});

test('cup and plate of a door across a corner stand in one line, the cup as far from the side along the front as arm and plate say', () => {
  let hinges = 0;
  fc.assert(
    fc.property(diagonalJobArbitrary, ({ spec, shop, wish }) => {
      const carcass = buildCarcass(spec, shop).carcass!;
      const { bores, hung } = boreCarcass(spec, carcass, shop);
      for (const { door, upright, reach, slant, hinge, hinges: placed } of hung) {
        const isRight = wish.diagonal!.right !== undefined;
        const isOtherWing = (upright.key === 'right') === isRight;
        for (const { id, z, screws } of placed) {
          hinges += 1;
          const cup = bores.find((bore) => bore.id === `${id}:cup`)!;
          const [x, y, height] = middleOf(door, cup);
          expect(height).toBeCloseTo(z, 0);
          // From the face under the plate to the cup, square to that face, at the inside face of the door.
          const angle = (slant * Math.PI) / 180;
          const deep = (cup.depth / 2) * Math.sin(angle);
          const fromFace = isOtherWing
            ? y - (upright.pose.origin.y + upright.thickness)
            : (isRight ? x : wish.width! - x) - upright.thickness;
          expect(Math.abs(fromFace + deep - (reach!.arm + reach!.plate) * Math.cos(angle))).toBeLessThan(ROUNDED);
          // The middle of the plate’s screws is the centre line; they stand the setback behind the front edge.
          expect(screws.map(({ u }) => u)).toEqual([hinge.setback, hinge.setback]);
          expect((screws[0]!.v + screws[1]!.v) / 2 + upright.pose.origin.z).toBeCloseTo(z, -1);
        }
      }
      clear();
    }),
    { numRuns: 150 },
  );
  expect(hinges).toBeGreaterThan(40);
});

test('a loose shelf across a corner lies on two pins at either side, and on one in the corner where the back is thick enough', () => {
  let shelves = 0;
  fc.assert(
    fc.property(diagonalJobArbitrary, ({ spec, shop, wish }) => {
      const carcass = buildCarcass(spec, shop).carcass!;
      const { bores } = boreCarcass(spec, carcass, shop);
      const assembly = assemble(carcass, bores, shop);
      const pins = pinsIn(carcass, bores);
      if (wish.rows !== 'both' || Object.keys(wish.rowHoles!).length > 0) return;
      const uprights = ['left', 'right', ...(wish.back === 'none' ? [] : ['back'])];
      for (const { key } of carcass.panels.filter(({ role }) => role === 'loose-shelf')) {
        const under = pinsUnder(key, assembly, pins);
        for (const upright of uprights) {
          const rows = new Set(
            bores.filter(({ panel, purpose }) => panel === upright && purpose === 'row').map(({ group }) => group),
          );
          expect(under.filter(({ name }) => name.startsWith(`${upright}:`))).toHaveLength(rows.size);
        }
        shelves += 1;
      }
      clear();
    }),
    { numRuns: 250 },
  );
  expect(shelves).toBeGreaterThan(20);
});
