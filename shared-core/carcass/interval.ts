import type { Micrometres } from '../length/units.js';

/** A closed run of positions on one axis, from <= to. */
export interface Interval {
  readonly from: Micrometres;
  readonly to: Micrometres;
}

/** How long it is. */
export function extent({ from, to }: Interval): Micrometres {
  return to - from;
}

/** True where the two share wood; intervals that only touch do not. */
export function overlaps(a: Interval, b: Interval): boolean {
  return a.from < b.to && b.from < a.to;
}

/** True where `inner` lies in `outer`; touching its ends is inside. */
export function within(inner: Interval, outer: Interval): boolean {
  return outer.from <= inner.from && inner.to <= outer.to;
}

/** What two intervals share; null where they do not overlap. */
export function shared(a: Interval, b: Interval): Interval | null {
  return overlaps(a, b) ? { from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) } : null;
}

/** Distance between two intervals; 0 where they touch or overlap. */
export function gapBetween(a: Interval, b: Interval): Micrometres {
  return Math.max(0, a.from - b.to, b.from - a.to);
}
