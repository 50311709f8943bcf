import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import { swingOf } from '../../shared-core/hung/swing.js';
import type { Hinge, Shop } from '../../shared-core/shop/model.js';
import { jobWithDoorsArbitrary } from '../core/arbitraries.js';
import { assemble, clear, metWhileTurning } from './solids.js';

afterEach(clear);

/** So many positions on the way from closed to wholly open. */
const STEPS = 12;

/** The shop with its hinges turning about another line. */
function withAxis(shop: Shop, change: Partial<Hinge>): Shop {
  return { ...shop, hinges: new Map([...shop.hinges].map(([name, hinge]) => [name, { ...hinge, ...change }])) };
}

/** What each door of a carcass runs into on its way, the others being closed, and whether it then stands before the box. */
function opened({ spec, shop }: { spec: Parameters<typeof buildCarcass>[0]; shop: Shop }) {
  const carcass = buildCarcass(spec, shop).carcass!;
  const { hung } = boreCarcass(spec, carcass, shop);
  const { panels } = assemble(carcass, [], shop);
  const found = hung.map(({ door, hinge }) => {
    const { axis, way, degrees } = swingOf({ door, hinge });
    const angles = Array.from(
      { length: STEPS },
      (_, i) => ((way === 'clockwise' ? -1 : 1) * degrees * (i + 1)) / STEPS,
    );
    const own = panels.find(({ name }) => name === door.key)!;
    const met = metWhileTurning(
      own,
      panels.filter((one) => one !== own),
      axis,
      angles,
    );
    // Its inner corner at the closing edge is further from the line than its outer one, and comes forward first.
    return { met, needs: Math.hypot(door.width, door.thickness) - door.width };
  });
  clear();
  return found;
}

test('on random carcasses a door with a gap for its thickness turns its whole angle about its outer corner and touches nothing', () => {
  let doors = 0;
  fc.assert(
    fc.property(jobWithDoorsArbitrary, fc.integer({ min: 60, max: 180 }), ({ spec, shop, wish }, opening) => {
      const found = opened({ spec, shop: withAxis(shop, { opening, axisFromEdge: 0, axisFromFront: 0 }) });
      const free = found.filter(({ needs }) => wish.doors!.gap! > needs);
      expect(free.flatMap(({ met }) => [...met])).toEqual([]);
      doors += free.length;
    }),
    { numRuns: 120 },
  );
  expect(doors).toBeGreaterThan(60);
});

test('about a line that stands where no hinge has it, a door does run into things, and the search sees it', () => {
  let met = 0;
  fc.assert(
    fc.property(jobWithDoorsArbitrary, ({ spec, shop }) => {
      const found = opened({
        spec,
        shop: withAxis(shop, { opening: 110, axisFromEdge: 60_000, axisFromFront: -60_000 }),
      });
      met += found.filter((one) => one.met.size > 0).length;
    }),
    { numRuns: 40 },
  );
  expect(met).toBeGreaterThan(5);
});
