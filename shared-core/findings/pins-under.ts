import type { Row } from '../boring/model.js';
import { footprintOf } from '../carcass/footprint.js';
import type { Interval } from '../carcass/interval.js';
import type { Panel } from '../carcass/model.js';
import { toCarcass, toPanel } from '../carcass/pose.js';
import type { Spot } from '../carcass/turn.js';
import { besides, panelOf } from './lookups.js';
import type { CarcassContext } from './rule.js';

/** Ends of a shelf that stand less than this from its upright lie against it, with the usual play. */
const AGAINST = 5000;

/** How far a shelf lies against an upright, along u of that; what is cut off of it does not. */
export function runAgainst(shelf: Panel, upright: Panel): Interval {
  const points = footprintOf(shelf).map(({ x, y }) => toPanel(upright.pose, { x, y, z: upright.pose.origin.z }));
  const off = ({ t }: { readonly t: number }): number => Math.max(-t, t - upright.thickness);
  const nearest = Math.min(...points.map(off));
  const near = points.filter((point) => off(point) < nearest + AGAINST).map(({ u }) => u);
  return { from: Math.min(...near), to: Math.max(...near) };
}

/** The rows that carry a loose shelf: those of both sides, and across a corner that of the back. */
export function rowsUnder(context: CarcassContext, shelf: Panel): readonly Row[] {
  const inBack = context.carcass.panels.filter(({ role }) => role === 'corner-back').map(({ key }) => key);
  return [
    ...besides(context, shelf).flatMap(({ rows }) => rows),
    ...context.boring.rows.filter(({ panel }) => inBack.includes(panel)),
  ];
}

/** Where the pins in rows stand, seen from above: at the faces that the rows open in. */
export function pinsOf(context: CarcassContext, rows: readonly Row[]): readonly Spot[] {
  return rows.flatMap(({ panel: key, u, face }) => {
    const panel = panelOf(context, key);
    return panel === undefined ? [] : [toCarcass(panel.pose, { u, v: 0, t: face === 'inside' ? panel.thickness : 0 })];
  });
}

/**
 * How far a place lies inside the shape that pins span; negative for one outside, where what lies there tips. Of fewer than three
 * pins nothing lies inside.
 */
export function insideOf(pins: readonly Spot[], { x, y }: Spot): number {
  const lines = pins.flatMap((a) => pins.filter((b) => b !== a).map((b) => [a, b] as const));
  const distances = lines.flatMap(([a, b]) => {
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    if (long === 0) return [];
    const left = (p: Spot): number => ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / long;
    // A line with no pin on its right is one of the outline.
    return pins.every((pin) => left(pin) > -1) ? [left({ x, y })] : [];
  });
  return distances.length < 3 ? -Infinity : Math.min(...distances);
}
