import type { Micrometres } from '../../length/units.js';
import type { Hand, Stop } from '../../shop/model.js';
import { STOP_ROOM, type SetStop } from '../setup-sheet.js';
import { within } from './numbers.js';
import type { BoringMachine, Way } from './operation.js';

/** A stop that must stand somewhere: on one hand, at one position; and be one that lowers, where panels then move over it. */
export interface StopDemand {
  readonly side: Hand;
  readonly position: Micrometres;
  readonly lowers: boolean;
}

/** What a way asks of its stop: to get out of the way when an index move takes the panel over it. */
export const demandOf = ({ side, position, strokes }: Way): StopDemand => ({
  side,
  position,
  lowers: strokes.some(({ moved }) => (side === 'left' ? moved < 0 : moved > 0)),
});

export interface StopPlan {
  readonly stops: readonly SetStop[];
  readonly extension: boolean;
}

/** Whether a stop of the machine can be set so without the extension. */
const isPlain = (machine: BoringMachine, demand: StopDemand): boolean =>
  machine.stops.some((stop) => fits(stop, demand, 0));

const fits = (stop: Stop, demand: StopDemand, extension: Micrometres): boolean =>
  stop.side === demand.side &&
  within(demand.position, { min: stop.range.min, max: stop.range.max + extension }) &&
  (stop.lowers || !demand.lowers);

/**
 * Gives each demand a stop of its own, by bipartite matching (augmenting paths), stops tried in the shop's order. Stops of
 * one hand slide on one fence and cannot pass each other, so those nearer to the spindles by their range, or else by the
 * shop's order, stand nearer. Only a demand past every plain range takes the fence extension. Null where the shop has not the
 * stops for all of them.
 */
export function assignStops(machine: BoringMachine, demands: readonly StopDemand[]): StopPlan | null {
  const { stops } = machine;
  const extension = machine.kind === 'vertical' ? machine.extension : 0;
  const reaches = demands.map((demand) => (isPlain(machine, demand) ? 0 : extension));
  const serves = (stop: Stop, index: number): boolean => {
    const demand = demands[index];
    return demand !== undefined && fits(stop, demand, reaches[index] ?? 0);
  };
  const taken = new Map<Stop, number>();
  const place = (demand: number, tried: Set<Stop>): boolean => {
    for (const stop of stops) {
      if (tried.has(stop) || !serves(stop, demand)) continue;
      tried.add(stop);
      const held = taken.get(stop);
      if (held === undefined || place(held, tried)) {
        taken.set(stop, demand);
        return true;
      }
    }
    return false;
  };
  for (let demand = 0; demand < demands.length; demand++) if (!place(demand, new Set())) return null;
  uncross(taken, stops, demands, serves);
  const set = stops.flatMap((stop) => {
    const demand = demands[taken.get(stop) ?? -1];
    return demand ? [{ name: stop.name, side: stop.side, position: demand.position }] : [];
  });
  return { stops: set, extension: reaches.some((reach) => reach > 0) };
}

/** Exchanges the places of stops that would have to pass each other, as far as their ranges allow; each exchange leaves fewer. */
function uncross(
  taken: Map<Stop, number>,
  stops: readonly Stop[],
  demands: readonly StopDemand[],
  serves: (stop: Stop, demand: number) => boolean,
): void {
  const outward = [...taken.keys()].sort(
    (a, b) => a.range.min - b.range.min || a.range.max - b.range.max || stops.indexOf(a) - stops.indexOf(b),
  );
  const placeOf = (stop: Stop): Micrometres => demands[taken.get(stop)!]!.position;
  for (let changed = true; changed;) {
    changed = false;
    for (const [index, inner] of outward.entries()) {
      for (const outer of outward.slice(index + 1)) {
        if (inner.side !== outer.side || placeOf(inner) <= placeOf(outer)) continue;
        const [forInner, forOuter] = [taken.get(inner)!, taken.get(outer)!];
        if (!serves(inner, forOuter) || !serves(outer, forInner)) continue;
        taken.set(inner, forOuter).set(outer, forInner);
        changed = true;
      }
    }
  }
}

/** The set stop that a way lies against, if it is set. */
export const stopOf = (stops: readonly SetStop[], way: Way): SetStop | undefined =>
  stops.find((stop) => stop.side === way.side && stop.position === way.position);

/**
 * Whether a panel can lie in this way while the other stops are set: one that stands where the panel lies, or too near to its
 * other end, must be one that can be lowered. Distances run from the panel's contact stop across its extent, over every index
 * move.
 */
export function liesFree(machine: BoringMachine, way: Way, stops: readonly SetStop[]): boolean {
  const line = machine.kind === 'vertical' || machine.kind === 'cup' ? 0 : (machine.spindles - 1) * machine.pitch;
  const lowers = (stop: SetStop): boolean => machine.stops.find((s) => s.name === stop.name)?.lowers ?? false;
  const moves = way.strokes.map((stroke) => (way.side === 'left' ? stroke.moved : -stroke.moved));
  // Distances from the contact stop's face toward the panel: the panel covers [0, extent], shifted by the index moves.
  const least = Math.min(0, ...moves);
  const greatest = way.extent + Math.max(0, ...moves);
  return stops.every((stop) => {
    if (stop.side === way.side && stop.position === way.position) return least === 0 || lowers(stop);
    const at = stop.side === way.side ? way.position - stop.position : way.position + line + stop.position;
    return at <= least || at >= greatest + STOP_ROOM || lowers(stop);
  });
}
