import type { Panel, Point3 } from '../carcass/model.js';
import { alongAxis, toCarcass, toPanel, type CarcassAxis, type PanelPoint } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';
import { blankOf } from '../machining/blank.js';
import { edgeAt, endAt, realSolid, solidNames, type Solid } from '../machining/replay/solid.js';
import { NOTHING } from '../machining/replay/stray.js';

/** What the front edge, or the outside face, of an end panel is to keep its place by. */
export interface Datum {
  /** The side of the face panel. */
  readonly side: 'front' | 'back' | 'reference-end' | 'far-end';
  /** The axis of the carcass in which a misfit shows. */
  readonly axis: CarcassAxis;
  /** How far from that side it lies as drawn, on that axis. 0: the two are flush, so that a misfit is seen and felt. */
  readonly drawn: Micrometres;
}

/** Where a side of a real face panel stands on an axis of the carcass, beside a point of the carcass. */
export function levelOf(
  face: Panel,
  solid: Solid,
  { side, axis }: Pick<Datum, 'side' | 'axis'>,
  beside: Point3,
): number {
  const point: PanelPoint =
    side === 'front' || side === 'back'
      ? { u: edgeAt(solid, side), v: 0, t: 0 }
      : { u: 0, v: endAt(solid, side, toPanel(face.pose, beside).u), t: 0 };
  return toCarcass(face.pose, point)[axis];
}

/**
 * The side of the face panel in whose plane the end panel's front edge and outside face begin as drawn (along u and t of
 * the end panel); where there is none, the side that bores are counted from.
 */
export function datumFor(face: Panel, end: Panel, along: 'u' | 't'): Datum {
  const axis = alongAxis(end.pose[along]);
  const solid = realSolid(blankOf(face), solidNames(face.key), NOTHING);
  const sides: readonly Datum['side'][] =
    alongAxis(face.pose.u) === axis ? ['front', 'back'] : ['reference-end', 'far-end'];
  const datums = sides.map((side): Datum => {
    const level = levelOf(face, solid, { side, axis }, end.pose.origin);
    return { side, axis, drawn: end.pose.origin[axis] - level };
  });
  return datums.find(({ drawn }) => drawn === 0) ?? datums[0]!;
}
