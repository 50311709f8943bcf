import type { Micrometres } from '../length/units.js';
import type { CornerCut, Panel } from './model.js';
import { toCarcass } from './pose.js';
import type { Interval } from './interval.js';
import { turned, type Spot } from './turn.js';

/** The corners of a panel’s face in (u, v), one after the other; five where one is cut off. */
export function outlineOf({ width, length, corner }: Pick<Panel, 'width' | 'length' | 'corner'>): readonly {
  readonly u: Micrometres;
  readonly v: Micrometres;
}[] {
  const [front, back] = [0, width];
  if (corner === undefined)
    return [
      { u: front, v: 0 },
      { u: front, v: length },
      { u: back, v: length },
      { u: back, v: 0 },
    ];
  return corner.end === 'reference-end'
    ? [
        { u: front, v: corner.v },
        { u: front, v: length },
        { u: back, v: length },
        { u: back, v: 0 },
        { u: corner.u, v: 0 },
      ]
    : [
        { u: front, v: 0 },
        { u: front, v: length - corner.v },
        { u: corner.u, v: length },
        { u: back, v: length },
        { u: back, v: 0 },
      ];
}

/** The outline of a panel seen from above, as it stands: a convex shape, its corners one after the other. */
export function footprintOf(panel: Panel): readonly Spot[] {
  const { pose, thickness, width, length, turn } = panel;
  const isLevel = pose.t.endsWith('z');
  const points = isLevel
    ? outlineOf(panel).map(({ u, v }) => toCarcass(pose, { u, v, t: 0 }))
    : crossSection(pose.v.endsWith('z') ? { u: width, v: 0 } : { u: 0, v: length }).map((point) =>
        toCarcass(pose, { ...point, t: point.t * thickness }),
      );
  return points.map(({ x, y }) => (turn === undefined ? { x, y } : turned(turn, { x, y })));
}

/** Of a panel on its edge: its run along one of its axes, and its thickness. */
function crossSection({ u, v }: { readonly u: Micrometres; readonly v: Micrometres }) {
  return [
    { u: 0, v: 0, t: 0 },
    { u, v, t: 0 },
    { u, v, t: 1 },
    { u: 0, v: 0, t: 1 },
  ];
}

/** What the corner that is cut off takes of a panel’s face, in square micrometres. */
export function areaCutOff({ corner }: Pick<Panel, 'corner'>): number {
  return corner === undefined ? 0 : (corner.u * corner.v) / 2;
}

/** What of a convex shape lies between two lines along x; nothing where it only touches them. */
export function inBand(shape: readonly Spot[], { from, to }: Interval): readonly Spot[] {
  const ys = shape.map(({ y }) => y);
  if (Math.max(...ys) <= from || Math.min(...ys) >= to) return [];
  return beyond(
    beyond(shape, ({ y }) => y - from),
    ({ y }) => to - y,
  );
}

/** What of a convex shape lies where a linear measure is not negative (Sutherland and Hodgman, 1974). */
export function beyond(shape: readonly Spot[], measure: (spot: Spot) => number): readonly Spot[] {
  return shape.flatMap((a, i) => {
    const b = shape[(i + 1) % shape.length]!;
    const [ma, mb] = [measure(a), measure(b)];
    const part = ma / (ma - mb);
    const crossing = ma < 0 !== mb < 0 ? [{ x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part }] : [];
    return ma < 0 ? crossing : [a, ...crossing];
  });
}

/** The middle of a shape, where it would be balanced. */
export function middleOf(shape: readonly Spot[]): Spot {
  let [area, x, y] = [0, 0, 0];
  shape.forEach((a, i) => {
    const b = shape[(i + 1) % shape.length]!;
    const cross = a.x * b.y - b.x * a.y;
    area += cross;
    x += (a.x + b.x) * cross;
    y += (a.y + b.y) * cross;
  });
  return { x: x / (3 * area), y: y / (3 * area) };
}

/** Where the saw goes for a cut corner, counted as its legs are: it is milled, and its band is glued on, afterwards. */
export function sawnAt({ u, v, band, milled }: CornerCut): { readonly u: Micrometres; readonly v: Micrometres } {
  if (band === null) return { u, v };
  const further = (band.thickness - milled) * Math.hypot(u, v);
  // To the tenth of a millimetre, as no saw is set finer.
  const tenths = (length: number): Micrometres => Math.round(length / 100) * 100;
  return { u: tenths(u + further / v), v: tenths(v + further / u) };
}

/** How long the slanting edge of a cut corner is. */
export const cutLong = ({ u, v }: CornerCut): Micrometres => Math.round(Math.hypot(u, v));
