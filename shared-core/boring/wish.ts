import { fittingNamed } from '../carcass/choices.js';
import type { Interval } from '../carcass/interval.js';
import type { Surroundings } from '../fittings/fitting.js';
import { kindOf, type Fitting } from '../fittings/kinds.js';
import type { Shop } from '../shop/model.js';
import type { PatternWish } from './pattern.js';

/** What fittings may ask of a shop. */
export const surroundingsIn = (shop: Shop): Surroundings => ({
  glueGap: shop.habits.glueGap,
  leastWall: shop.habits.leastWall,
  named: (name) => fittingNamed(shop, name),
});

/** What a joint of a fitting asks where the shop chooses its places. */
export function wishIn(shop: Shop, overlap: Interval, fitting: Fitting, stagger: boolean): PatternWish {
  const edge = kindOf(fitting).joint.edgeDistance(fitting, surroundingsIn(shop));
  return { overlap, edge, spacing: shop.habits.dowelSpacing, stagger };
}
