import type { Mate } from '../boring/matings.js';
import type { Joint, Panel, Point3 } from '../carcass/model.js';
import { alongAxis, toCarcass, toPanel, type PanelPoint } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';
import { blankOf } from '../machining/blank.js';
import { bore, type Hole, type NominalStroke, type Stroke } from '../machining/replay/bore.js';
import { HoleMap } from '../machining/replay/hole-map.js';
import { edgeAt, endAt, realSolid, solidNames, type Solid } from '../machining/replay/solid.js';
import { NOTHING, type Stray } from '../machining/replay/stray.js';
import type { Spindle } from '../machining/replay/table.js';
import type { Contact, Datum, DrawnHole, Half, LoneJoint } from './lone-joint.js';
import { loneLikeness } from './lone-likeness.js';

/** The spindle that makes a bore, and the stroke in which it does. */
export interface BoredBy {
  readonly stroke: Stroke;
  readonly spindle: Spindle;
}

/** A half as it really comes from the machines: its holes in the order of the ties. */
export interface RealHalf {
  readonly solid: Solid;
  readonly holes: readonly Hole[];
}

/** Which stroke and spindle make each hole of a panel as drawn. */
export function boredBy(strokes: readonly NominalStroke[]): HoleMap<BoredBy> {
  const found = new HoleMap<BoredBy>();
  for (const stroke of strokes) {
    stroke.holes.forEach((hole, i) => {
      if (!found.has(hole)) found.set(hole, { stroke, spindle: stroke.spindles[i]! });
    });
  }
  return found;
}

/** Prepares a joint by itself; null where the strokes make no pair of bores that meet. */
export function loneJoint(
  joint: Joint,
  panels: Readonly<Record<'face' | 'end', Panel>>,
  mates: readonly Mate[],
  by: Readonly<Record<'face' | 'end', HoleMap<BoredBy>>>,
  lengthInBoth: (fitting: string | null) => Micrometres | null,
): LoneJoint | null {
  const pairs = mates.flatMap((mate) => {
    const [face, end] = [by.face.get(mate.face), by.end.get(mate.end)];
    if (face === undefined || end === undefined) return [];
    return [{ mate, face, end, tie: { dowelLength: lengthInBoth(mate.end.fitting) } }];
  });
  if (pairs.length === 0) return null;
  const { face, end } = panels;
  const made = {
    joint,
    face: halfOf(
      face,
      pairs.map((pair) => pair.face),
      pairs.map(({ mate }) => mate.face),
    ),
    end: halfOf(
      end,
      pairs.map((pair) => pair.end),
      pairs.map(({ mate }) => mate.end),
    ),
    ties: pairs.map(({ tie }) => tie),
    front: datumFor(face, end, 'u'),
    outside: datumFor(face, end, 't'),
    contact: contactOf(face, end),
    names: { along: `${joint.id} along`, across: `${joint.id} across` },
  };
  return { ...made, likeness: loneLikeness(made) };
}

function halfOf(panel: Panel, by: readonly BoredBy[], drawn: readonly DrawnHole[]): Half {
  const strokes = [...new Set(by.map(({ stroke }) => stroke))].map((stroke) => {
    const ties = by.flatMap((bored, i) => (bored.stroke === stroke ? [i] : []));
    return { stroke, spindles: ties.map((i) => by[i]!.spindle), ties };
  });
  return { panel, blank: blankOf(panel), names: solidNames(panel.key), drawn, strokes };
}

/** Cuts and bores one half. */
export function makeReal({ blank, names, strokes }: Half, stray: Stray): RealHalf {
  const holes: Hole[] = [];
  for (const { stroke, spindles, ties } of strokes) {
    bore(stroke, stray, spindles).forEach((hole, i) => (holes[ties[i]!] = hole));
  }
  return { solid: realSolid(blank, names, stray), holes };
}

/** Where the end of one panel stands on a face of another, both as drawn. */
export function contactOf(face: Panel, end: Panel): Contact {
  const corners = [
    { u: 0, v: 0, t: 0 },
    { u: face.width, v: face.length, t: face.thickness },
  ].map((corner) => toPanel(end.pose, toCarcass(face.pose, corner)).u);
  const to = Math.max(...corners);
  return { from: Math.max(0, Math.min(...corners)), to: to < end.width ? to : null };
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
function datumFor(face: Panel, end: Panel, along: 'u' | 't'): Datum {
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
