import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import { swingOf } from '../../shared-core/hung/swing.js';
import { jobWithDoorsArbitrary } from '../core/arbitraries.js';
import { analyse } from '../core/findings/jobs.js';
import { mm, specOf } from '../core/specs.js';
import { assemble, axisOf, clear, interferences, metWhileTurning } from './solids.js';

afterEach(clear);

const corner = fc.record({
  hand: fc.constantFrom('left' as const, 'right' as const),
  covered: fc.integer({ min: 50_000, max: 300_000 }),
  strip: fc.integer({ min: 0, max: 90_000 }),
});

test('on random corner carcasses the blind panel closes what is covered, and the door beside it opens past the run in the corner', () => {
  let doors = 0;
  fc.assert(
    fc.property(jobWithDoorsArbitrary, corner, ({ shop: plain, wish }, { hand, covered, strip }) => {
      const axis = { opening: 100, axisFromEdge: 0, axisFromFront: 0 };
      const shop = { ...plain, hinges: new Map([...plain.hinges].map(([name, one]) => [name, { ...one, ...axis }])) };
      const { bays: _, ...asked } = wish.doors!;
      const hung = hand === 'left' ? 'right' : 'left';
      const spec = specOf(shop, {
        ...wish,
        dividers: [],
        doors: { ...asked, hung },
        blind: { [hand]: covered, strip },
        fixedShelves: [],
        looseShelves: [],
      });
      const { carcass, problems } = buildCarcass(spec, shop);
      const { how, gap, reveal } = asked as Required<typeof asked>;
      const width = wish.width!;
      // Too narrow is told.
      if (width - covered - strip < mm(100)) return;
      expect(problems.map(({ message }) => message)).toEqual([]);
      const bored = boreCarcass(spec, carcass!, shop);
      const assembly = assemble(carcass!, bored.bores, shop);
      expect(interferences(assembly)).toEqual([]);
      const boxOf = (key: string) => assembly.panels.find(({ name }) => name === key)!.box;
      const [blind, door] = [boxOf(`blind-${hand}`), boxOf('door-1')];
      const fromSide = (x: number) => (hand === 'left' ? x : width - x);
      const inside = hand === 'left' ? boxOf('left').max[0] : width - boxOf('right').min[0];
      const [edge, end] = hand === 'left' ? [blind.max[0], blind.min[0]] : [blind.min[0], blind.max[0]];
      expect(fromSide(edge)).toBe(covered + strip);
      expect(fromSide(end)).toBe(how === 'inset' ? inside + gap : reveal);
      expect(hand === 'left' ? door.min[0] - edge : edge - door.max[0]).toBe(gap);
      expect([blind.min[2], blind.max[2]]).toEqual([door.min[2], door.max[2]]);

      // The fronts of the run along the other wall stand here.
      const other = hand === 'left' ? covered : width - covered;
      const own = assembly.panels.find(({ name }) => name === 'door-1')!;
      for (const one of bored.hung) {
        const { axis: line, way, degrees } = swingOf(one);
        const angles = [10, 25, 50, 75, degrees].map((angle) => (way === 'clockwise' ? -angle : angle));
        const others = assembly.panels.filter((part) => part !== own);
        const needs = Math.hypot(one.door.width, one.door.thickness) - one.door.width;
        if (gap > needs) expect([...metWhileTurning(own, others, line, angles)]).toEqual([]);
        for (const angle of angles) {
          const turned = own.solid
            .translate([-line.x, -line.y, 0])
            .rotate([0, 0, angle])
            .translate([line.x, line.y, 0]);
          const { min, max } = turned.boundingBox();
          expect(hand === 'left' ? min[0] >= other : max[0] <= other).toBe(true);
        }
        // Cups and plates of it stand in one line, as those of every door.
        for (const { id, z } of one.hinges) {
          const cup = bored.bores.find((bore) => bore.id === `${id}:cup`)!;
          expect(axisOf(one.door, cup).at[2]).toBe(z);
          doors += 1;
        }
      }
      clear();
    }),
    { numRuns: 60 },
  );
  expect(doors).toBeGreaterThan(30);
});

test('every bore of a corner carcass comes out of the set-ups as the bore map has it, and it stands in its run', () => {
  const job = analyse(
    'carcasses:\n  corner: { kind: base, width: 1100, blind: { right: 580 }, doors: left, pulls: bar-160, loose-shelves: 1 }\n  next: { kind: base, width: 400 }\n',
  );
  const { boring, operations, findings } = job.carcasses[0]!;
  expect(findings.filter(({ severity }) => severity !== 'info')).toEqual([]);
  const made = new Set(
    operations!.operations.flatMap(({ ways }) =>
      ways[0]!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.id)),
    ),
  );
  expect(boring!.bores.map(({ id }) => id).filter((id) => !made.has(id))).toEqual([]);
  expect(boring!.bores.filter(({ purpose }) => purpose === 'cup').length).toBe(2);
});
