import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import type { FrontPull } from '../../shared-core/hung/model.js';
import { swingHits } from '../../shared-core/hung/swing-hits.js';
import { swingOf } from '../../shared-core/hung/swing.js';
import type { Shop } from '../../shared-core/shop/model.js';
import { jobWithDoorsArbitrary, jobWithDrawersArbitrary } from '../core/arbitraries.js';
import { specOf } from '../core/specs.js';
import { assemble, clear, metWhileTurning, thinner } from './solids.js';

afterEach(clear);

const STEPS = 40;
/** The core turns by whole degrees: between two of them a corner strays so far, in micrometres, on a door of a metre. */
const STRAYS = 100;

/** Hinges that open as far as any, so that doors come near the fronts beside them, and pulls that stand out. */
function wideOpen(shop: Shop): Shop {
  const hinges = [...shop.hinges].map(([name, hinge]) => [name, { ...hinge, opening: 176 }] as const);
  const pulls = [...shop.pulls].map(([name, one]) => [name, { ...one, projection: 45_000 }] as const);
  return { ...shop, hinges: new Map(hinges), pulls: new Map(pulls) };
}

/** What a pull takes up, as a block. */
const blockOf = ({ id, body: { x, y, z } }: FrontPull) =>
  thinner({ name: id, box: { min: [x.from, y.from, z.from], max: [x.to, y.to, z.to] } }, STRAYS);

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

test('pulls meet nothing on the way of their doors, nor does a door meet those of others, or it is told', () => {
  let [byPulls, onPulls, told] = [0, 0, 0];
  fc.assert(
    fc.property(jobWithDoorsArbitrary, (job) => {
      const shop = wideOpen(job.shop);
      const spec = specOf(shop, job.wish);
      const carcass = buildCarcass(spec, shop).carcass!;
      const { hung, pulls } = boreCarcass(spec, carcass, shop);
      const { blanks } = assemble(carcass, [], shop);
      for (const one of hung) {
        const { axis, way, degrees } = swingOf(one);
        const angles = Array.from(
          { length: STEPS },
          (_, i) => ((way === 'clockwise' ? -1 : 1) * degrees * (i + 1)) / STEPS,
        );
        const leaf = blanks.find(({ name }) => name === one.door.key)!;
        const rest = blanks.filter((part) => part !== leaf);
        const [own, others] = [true, false].map((isOwn) =>
          pulls.filter(({ front }) => (front.key === one.door.key) === isOwn).map(blockOf),
        ) as [ReturnType<typeof blockOf>[], ReturnType<typeof blockOf>[]];
        const byPull = own.flatMap((part) =>
          [...metWhileTurning(part, [...rest, ...others], axis, angles).keys()].map((name) => `${part.name} ${name}`),
        );
        const onPull = [...metWhileTurning(thinner(leaf, STRAYS), others, axis, angles).keys()].map(
          (name) => `${leaf.name} ${name}`,
        );
        const said = swingHits(one, carcass, pulls)
          .filter(({ by, on }) => by !== null || on !== null)
          .map(({ by, panel, on }) => `${by?.id ?? leaf.name} ${on?.id ?? panel.key}`);
        expect([...byPull, ...onPull].filter((words) => !said.includes(words))).toEqual([]);
        byPulls += byPull.length;
        onPulls += onPull.length;
        told += said.length;
      }
      clear();
    }),
    { numRuns: 100 },
  );
  expect(byPulls).toBeGreaterThan(5);
  expect(onPulls).toBeGreaterThan(5);
  expect(byPulls + onPulls).toBeGreaterThan(told * 0.6);
});
