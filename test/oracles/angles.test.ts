import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boreAxis } from '../../shared-core/boring/axis.js';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import { extentsOf, meet } from '../../shared-core/carcass/pose.js';
import { jobArbitrary } from '../core/arbitraries.js';
import { angleOf, mm, specOf } from '../core/specs.js';

test('on random carcasses both legs of an angle are screwed at one height, as far from the corner as the shop has them', () => {
  const angle = angleOf('brace');
  let held = 0;
  fc.assert(
    fc.property(jobArbitrary, ({ shop: plain, wish }) => {
      const shop = { ...plain, angles: new Map([['brace', angle]]) };
      const fillers = { left: mm(90), right: mm(90) };
      const spec = specOf(shop, { ...wish, fillers, rows: 'none', angles: 'brace' });
      const { carcass, problems } = buildCarcass(spec, shop);
      if (problems.length > 0) return;
      const { bores, angles } = boreCarcass(spec, carcass!, shop);
      for (const { id, front, on, body } of angles) {
        const of = (purpose: string, panel: typeof front) =>
          bores
            .filter((bore) => bore.group === id && bore.purpose === purpose)
            .map((bore) => boreAxis(panel, bore).entry)
            .toSorted((a, b) => a.z - b.z || a.x - b.x);
        const [inFront, behind] = [of('angle-in-front', front), of('angle', on)];
        expect([inFront.length, behind.length]).toEqual([2, 2]);
        const back = extentsOf(front).y.to;
        inFront.forEach((screw, i) => {
          const other = behind[i]!;
          expect(screw.y).toBe(back);
          expect(other.y).toBe(back + angle.behindFront);
          // Across the corner they are as far apart as the front’s screws are from the face, along it not at all.
          const apart = [Math.abs(screw.x - other.x), Math.abs(screw.z - other.z)].toSorted((a, b) => a - b);
          expect(apart).toEqual([0, angle.inFront]);
        });
        const others = carcass!.panels.filter((panel) => panel !== front && panel !== on);
        expect(others.filter((panel) => meet(extentsOf(panel), body))).toEqual([]);
        held += 1;
      }
    }),
    { numRuns: 40 },
  );
  expect(held).toBeGreaterThan(20);
});
