import { sharedLoad, type SharedLoad } from '../book/book.js';
import type { Derived } from '../derived/derived.js';
import { fittingNamed } from './choices.js';
import type { CarcassSpec } from './spec.js';
import type { Micrometres } from '../length/units.js';
import type { HorizontalHead, Machine, Shop, VerticalHead } from '../shop/model.js';

/** Places for construction bores, counted from the carcass front: first + k * pitch for k = 0 .. count - 1. */
export interface SpindleLine {
  readonly first: Micrometres;
  readonly pitch: Micrometres;
  readonly count: number;
  /** How many of them both heads reach where fence and squaring stop are set further; at least `count`. */
  readonly reached: number;
  /** How near to its own front edge the end of a panel can be bored, whichever end it is; 0 where that is not known. */
  readonly nearest: Micrometres;
  /** The spindles that the joints of the carcass share with others, counted from a front edge; null where each joint takes its own. */
  readonly shared: SharedLoad | null;
}

/** The line of the vertical head that bores faces; without such a head the shop's pitch, and no limit. */
export function spindleLine(spec: CarcassSpec, shop: Shop, derived: Derived): SpindleLine {
  const head = machineFor('faces', spec, shop);
  const first = shop.habits.firstDowel;
  const nearest = nearestInEnds(spec, shop);
  if (head?.kind !== 'vertical')
    return { first, pitch: shop.habits.pitch, count: Infinity, reached: Infinity, nearest, shared: null };
  const count = head.spindles;
  const reached = Math.max(count, Math.floor((reachOf(head, spec, shop) - first) / head.pitch) + 1);
  return { first, pitch: head.pitch, count, reached, nearest, shared: sharedBy(head, spec, shop, derived) };
}

function sharedBy(head: VerticalHead, spec: CarcassSpec, shop: Shop, derived: Derived): SharedLoad | null {
  const ends = machineFor('ends', spec, shop);
  if (!shop.habits.sharePlaces || ends?.kind !== 'horizontal') return null;
  return sharedLoad(head, ends, shop, fittingNamed(shop, spec.joint.value), spec.depth.value, derived);
}

/** How far from a front edge faces and both ends of a panel can be bored. */
function reachOf(faces: VerticalHead, spec: CarcassSpec, shop: Shop): Micrometres {
  const far = faces.fenceOffset.max + (faces.spindles - 1) * faces.pitch;
  const ends = machineFor('ends', spec, shop);
  if (ends?.kind !== 'horizontal') return far;
  const furthest = rangesOnHands(ends).map((ranges) => Math.max(0, ...ranges.map(({ max }) => max)));
  return Math.min(far, Math.min(...furthest) + (ends.spindles - 1) * ends.pitch);
}

/** The front edge lies against a stop of either hand, as one end or the other is bored. */
function nearestInEnds(spec: CarcassSpec, shop: Shop): Micrometres {
  const head = machineFor('ends', spec, shop);
  if (head?.kind !== 'horizontal') return 0;
  const onHands = rangesOnHands(head).filter((ranges) => ranges.length > 0);
  return Math.max(0, ...onHands.map((ranges) => Math.min(...ranges.map(({ min }) => min))));
}

/** Where the stops of either hand can be set. */
const rangesOnHands = ({ stops }: HorizontalHead): readonly (readonly HorizontalHead['stops'][number]['range'][])[] =>
  (['left', 'right'] as const).map((hand) => stops.flatMap(({ side, range }) => (side === hand ? [range] : [])));

function machineFor(use: 'faces' | 'ends', spec: CarcassSpec, shop: Shop): Machine | undefined {
  const named = spec.machines[use]?.value ?? shop.habits.machines[use];
  return named === null ? undefined : shop.machines.get(named);
}
