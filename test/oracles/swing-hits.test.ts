import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import { swingHits } from '../../shared-core/hung/swing-hits.js';
import { jobWithDoorsArbitrary, jobWithDrawersArbitrary } from '../core/arbitraries.js';
import { assemble, clear, metWhileTurning, thinner } from './solids.js';

afterEach(clear);

const STEPS = 40;
/** The core turns by whole degrees: between two of them a corner strays so far, in micrometres, on a door of a metre. */
const STRAYS = 100;

// The modeller turns the solids themselves; of the core it takes the pose of the door and the figures of the hinge.
test.each([
  ['doors', jobWithDoorsArbitrary, 50],
  ['doors among drawers', jobWithDrawersArbitrary, 150],
] as const)('%s swing their whole angle without touching anything, or are told', (_title, jobs, numRuns) => {
  let [free, told, met] = [0, 0, 0];
  fc.assert(
    fc.property(jobs, ({ spec, shop }) => {
      const carcass = buildCarcass(spec, shop).carcass!;
      const { hung } = boreCarcass(spec, carcass, shop);
      const { blanks } = assemble(carcass, [], shop);
      for (const one of hung) {
        const { door, hinge } = one;
        const own = blanks.find(({ name }) => name === door.key)!;
        const isLeft = carcass.doors.find(({ key }) => key === door.key)!.hung === 'left';
        const { min, max } = own.box;
        const axis = {
          x: isLeft ? min[0] + hinge.axisFromEdge : max[0] - hinge.axisFromEdge,
          y: min[1] + hinge.axisFromFront,
        };
        const rest = blanks.filter(({ name }) => name !== door.key);
        const angles = Array.from({ length: STEPS }, (_, i) => ((isLeft ? -1 : 1) * hinge.opening * (i + 1)) / STEPS);
        const touched = [...metWhileTurning(thinner(own, STRAYS), rest, axis, angles).keys()];
        const said = swingHits(one, carcass).map(({ panel }) => panel.key);
        // Whatever the modeller meets at its own angles is among what the core has told.
        expect(touched.filter((name) => !said.includes(name))).toEqual([]);
        free += said.length === 0 ? 1 : 0;
        told += said.length;
        met += touched.length;
      }
      clear();
    }),
    { numRuns },
  );
  expect(free).toBeGreaterThan(5);
  // What is told is no more than what there is: most of it is met at the few angles of the modeller too.
  expect(met).toBeGreaterThan(told * 0.6);
  expect(met).toBeGreaterThan(0);
});
