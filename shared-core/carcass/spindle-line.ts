import type { CarcassSpec } from '../job/model.js';
import type { Micrometres } from '../length/units.js';
import type { Shop } from '../shop/model.js';

/** Places for construction bores, counted from the carcass front: first + k * pitch for k = 0 .. count - 1. */
export interface SpindleLine {
  readonly first: Micrometres;
  readonly pitch: Micrometres;
  readonly count: number;
}

/** The line of the vertical head that bores faces; without such a head the shop's pitch, and no limit. */
export function spindleLine(spec: CarcassSpec, shop: Shop): SpindleLine {
  const named = spec.machines.faces?.value ?? shop.habits.machines.faces;
  const head = named === null ? undefined : shop.machines.get(named);
  const first = shop.habits.firstDowel;
  return head?.kind === 'vertical'
    ? { first, pitch: head.pitch, count: head.spindles }
    : { first, pitch: shop.habits.pitch, count: Infinity };
}
