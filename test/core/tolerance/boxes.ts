import type { Surface } from '../../../shared-core/boring/model.js';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Shop, Tolerances } from '../../../shared-core/shop/model.js';
import type { ToleranceCase } from '../../../shared-core/tolerance/tolerance.js';
import { shopOf, specOf, type CarcassWish } from '../specs.js';
import { setUpsFor, type Reference } from './set-ups-for.js';

/** Everything exact, and nothing allowed. */
export const EXACT: Tolerances = {
  thickness: 0,
  width: 0,
  length: 0,
  squareness: 0,
  stop: 0,
  drill: 0,
  dowelPlay: 0,
  frontLimit: 0,
  stepLimit: 0,
  gapLimit: 0,
};

/** A box of a made-up shop whose panels are bored by setUps with the given references. */
export function box(
  tolerances: Partial<Tolerances>,
  wish: Partial<CarcassWish> = {},
  reference?: (panel: string, face: Surface, joint: string) => Reference,
  habits: Partial<Shop['habits']> = {},
): ToleranceCase {
  const shop = { ...shopOf({ habits }), tolerances: { ...EXACT, ...tolerances } };
  const spec = specOf(shop, { rows: 'none', back: 'none', ...wish });
  const { carcass } = buildCarcass(spec, shop);
  if (carcass === null) throw new Error('the box cannot be built');
  const boring = boreCarcass(spec, carcass, shop);
  return { name: 'box', carcass, boring, setUps: setUpsFor(carcass, boring, reference), shop };
}
