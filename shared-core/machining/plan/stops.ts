import type { Micrometres } from '../../length/units.js';
import type { Hand, Stop } from '../../shop/model.js';
import { STOP_ROOM, type SetStop } from '../set-up.js';
import { within } from '../../schema/in-span.js';
import type { BoringMachine, Way } from './operation.js';

/** A place where a stop must stand: on one hand, at one position; it must lower where a panel comes to lie over it. */
export interface StopPlace {
  readonly side: Hand;
  readonly position: Micrometres;
  readonly lowers: boolean;
}

export interface StopPlan {
  readonly stops: readonly SetStop[];
  readonly extension: boolean;
}

/**
 * Gives each place a stop of its own, without the extension if that can be; null where the shop has not the stops for all of
 * them. Stops of one hand slide on one fence and keep their order on it.
 */
export function assignStops(machine: BoringMachine, places: readonly StopPlace[]): StopPlan | null {
  // Most of what is asked asks for too many stops.
  if (HANDS.some((side) => countOf(machine.stops, side) < countOf(places, side))) return null;
  const left = assignHand(machine, 'left', places);
  const right = left && assignHand(machine, 'right', places);
  if (!left || !right) return null;
  const stops = machine.stops.flatMap((stop) => {
    const position = left.set.get(stop) ?? right.set.get(stop);
    return position === undefined ? [] : [{ name: stop.name, side: stop.side, position }];
  });
  return { stops, extension: left.price + right.price > 0 };
}

const HANDS = ['left', 'right'] as const;

function countOf(all: readonly { readonly side: Hand }[], side: Hand): number {
  let count = 0;
  for (const one of all) if (one.side === side) count += 1;
  return count;
}

/** The stops of a hand as they stand on its fence, from the spindles outward: by their ranges, else as the shop lists them. */
export function outward(machine: BoringMachine, side: Hand): Stop[] {
  return machine.stops
    .filter((stop) => stop.side === side)
    .sort((a, b) => a.range.min - b.range.min || a.range.max - b.range.max);
}

/** What a stop costs that stands beyond its plain range: it is taken only where no other can be. */
const BEYOND = 1;

/** Stops of a hand set to places, and how many of them stand beyond their plain range. */
interface HandPlan {
  readonly set: ReadonlyMap<Stop, Micrometres>;
  readonly price: number;
}

const NO_STOPS: HandPlan = { set: new Map(), price: 0 };

/**
 * Places of one hand and stops of that hand, both from the spindles outward, paired so that no two cross: of all such
 * pairings one with the fewest stops beyond their plain range, and of these the one with the stops nearest to the spindles.
 */
function assignHand(machine: BoringMachine, side: Hand, all: readonly StopPlace[]): HandPlan | null {
  const places = all.filter((place) => place.side === side);
  if (places.length === 0) return NO_STOPS;
  if (places.length > 1) places.sort((a, b) => a.position - b.position);
  const stops = outward(machine, side);
  const furthest = stops.reduce((a, b) => (b.range.max >= a.range.max ? b : a), stops[0]!);
  const extension = machine.kind === 'vertical' ? machine.extension : 0;
  const priceOf = (stop: Stop, { position, lowers }: StopPlace): number => {
    if (lowers && !stop.lowers) return Infinity;
    if (within(position, stop.range)) return 0;
    const beyond = stop === furthest && position > stop.range.max && position <= stop.range.max + extension;
    return beyond ? BEYOND : Infinity;
  };
  // At [s * across + p] the least price of the places from p on with the stops from s on.
  const across = places.length + 1;
  const least = new Array<number>((stops.length + 1) * across).fill(Infinity);
  for (let s = stops.length; s >= 0; s -= 1) {
    const own = s * across;
    least[own + places.length] = 0;
    if (s === stops.length) continue;
    for (let p = 0; p < places.length; p += 1) {
      const passed = least[own + across + p]!;
      const then = least[own + across + p + 1]!;
      least[own + p] = then < passed ? Math.min(passed, then + priceOf(stops[s]!, places[p]!)) : passed;
    }
  }
  const price = least[0]!;
  if (price === Infinity) return null;
  const set = new Map<Stop, Micrometres>();
  let p = 0;
  for (const [s, stop] of stops.entries()) {
    if (p === places.length) break;
    if (priceOf(stop, places[p]!) + least[(s + 1) * across + p + 1]! > least[s * across + p]!) continue;
    set.set(stop, places[p]!.position);
    p += 1;
  }
  return { set, price };
}

/** The set stop that a way lies against, if it is set. */
export const stopOf = (stops: readonly SetStop[], way: Way): SetStop | undefined =>
  stops.find((stop) => stop.side === way.side && stop.position === way.position);

/**
 * The positions, between two and neither of them, at which a stop of a hand would stand where a panel that lies in this way
 * comes to lie, or too near to its other end: distances from the face of the panel's own stop across its extent, over every
 * index move, as positions of that hand.
 */
export function coveredBy(machine: BoringMachine, way: Way, side: Hand): readonly [Micrometres, Micrometres] {
  const line = machine.kind === 'vertical' || machine.kind === 'cup' ? 0 : (machine.spindles - 1) * machine.pitch;
  const moves = way.strokes.map((stroke) => (way.side === 'left' ? stroke.moved : -stroke.moved));
  // The panel covers [0, extent], shifted by the index moves.
  const least = Math.min(0, ...moves);
  const greatest = way.extent + Math.max(0, ...moves) + STOP_ROOM;
  return side === way.side
    ? [way.position - greatest, way.position - least]
    : [least - way.position - line, greatest - way.position - line];
}

/** Whether a panel that lies in this way would come to lie over a stop at a place, over its own too after an index move. */
export function liesOver(
  machine: BoringMachine,
  way: Way,
  { side, position }: Pick<StopPlace, 'side' | 'position'>,
): boolean {
  const [from, to] = coveredBy(machine, way, side);
  return position > from && position < to;
}
