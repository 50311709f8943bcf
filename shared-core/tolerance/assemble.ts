import type { Point3 } from '../carcass/model.js';
import { toCarcass } from '../carcass/pose.js';
import { endAt } from '../machining/replay/solid.js';
import type { Stray } from '../machining/replay/stray.js';
import { levelOf, type Datum } from './datum.js';
import { makeReal, type JointCase, type RealHalf } from './joint-case.js';
import { bends, spreads } from './needed-play.js';
import { heldOpen } from './rivals.js';

/**
 * What is measured on a joint that has been put together, in micrometres. Each figure is the greatest of several readings: a
 * gauge laid on at several places. `either-way` readings count whichever sign they have; of the others, those below 0 do not.
 */
export const FIGURES = { front: 'either-way', step: 'either-way', gap: 'one-way', play: 'either-way' } as const;
export type FigureName = keyof typeof FIGURES;
export const FIGURE_NAMES = Object.keys(FIGURES) as readonly FigureName[];
export type Readings = Readonly<Record<FigureName, readonly number[]>>;

/** A point of the joint's plane: along u of the end panel, across its thickness; on the axes of the carcass. */
interface Spot {
  readonly along: number;
  readonly across: number;
}

/** Cuts and bores both panels of a joint, puts them together, and measures. */
export function measure(joint: JointCase, stray: Stray): Readings {
  return putTogether(joint, makeReal(joint.face, stray), makeReal(joint.end, stray), stray);
}

/**
 * Puts two real panels together and measures.
 *
 * The face panel stands in the carcass by its front edge, outside face and reference end, the corner that its frame counts
 * from. Its dowels carry the end panel: turned and moved in the plane of the joint as a least-squares fit of its bores to
 * those of the face, then drawn up until something touches.
 */
export function putTogether(joint: JointCase, face: RealHalf, end: RealHalf, stray: Stray): Readings {
  const { pose } = joint.end.panel;
  const spotOf = (point: Point3): Spot => ({ along: point[joint.front.axis], across: point[joint.outside.axis] });
  const cornerOf = (u: number): Point3 => toCarcass(pose, { u, v: 0, t: 0 });
  const held = end.holes.map(({ u, v }) => spotOf(toCarcass(pose, { u, v: 0, t: v })));
  const misses = face.holes.map(({ u, v }, i): Spot => {
    const wanted = spotOf(toCarcass(joint.face.panel.pose, { u, v, t: 0 }));
    return { along: wanted.along - held[i]!.along, across: wanted.across - held[i]!.across };
  });
  const seat = fit(held, misses, {
    along: stray('dowelPlay', joint.names.along),
    across: stray('dowelPlay', joint.names.across),
  });
  const offset = (u: number, datum: Datum, way: keyof Spot): number => {
    const corner = cornerOf(u);
    return seat(spotOf(corner))[way] - levelOf(joint.face.panel, face.solid, datum, corner) - datum.drawn;
  };
  const stations = held.map(({ along }) => along);
  return {
    front: [offset(0, joint.front, 'along')],
    step: [offset(0, joint.outside, 'across'), offset(end.solid.width, joint.outside, 'across')],
    gap: gaps(joint, face, end, stray),
    play: [
      ...spreads(misses.map(({ along }) => along)),
      ...bends(
        stations,
        misses.map(({ across }) => across),
      ),
    ],
  };
}

/**
 * The move of the end panel in the plane of the joint that brings its bores nearest to those of the face, by least squares:
 * the mean of the misses, and the small turn about the mean place that the misses ask for.
 * @param rest Where in the play of its dowels the joint comes to rest.
 */
function fit(held: readonly Spot[], misses: readonly Spot[], rest: Spot): (spot: Spot) => Spot {
  const middle = mean(held);
  const shift = mean(misses);
  let moment = 0;
  let inertia = 0;
  held.forEach((spot, i) => {
    const [along, across] = [spot.along - middle.along, spot.across - middle.across];
    moment += along * misses[i]!.across - across * misses[i]!.along;
    inertia += along * along + across * across;
  });
  // One dowel alone lets the panel turn: it is then held square by hand.
  const turn = inertia < 1 ? 0 : moment / inertia;
  return ({ along, across }) => ({
    along: along + shift.along + rest.along - turn * (across - middle.across),
    across: across + shift.across + rest.across + turn * (along - middle.along),
  });
}

function mean(spots: readonly Spot[]): Spot {
  let [along, across] = [0, 0];
  for (const spot of spots) {
    along += spot.along;
    across += spot.across;
  }
  return { along: along / spots.length, across: across / spots.length };
}

/**
 * How far the joint stands open, at the front and the back of the contact. The dowels hold the end panel square to the
 * face. It is drawn up until one corner of its end touches, a dowel touches bottom, or rivals hold the faces apart.
 */
function gaps(joint: JointCase, face: RealHalf, end: RealHalf, stray: Stray): number[] {
  const side = joint.joint.end;
  const out = side === 'far-end' ? 1 : -1;
  /** How far the end stands out there beyond its corner at the front edge. */
  const standsOut = (u: number): number => out * (endAt(end.solid, side, u) - endAt(end.solid, side, 0));
  const corners = [standsOut(joint.contact.from), standsOut(joint.contact.to ?? end.solid.width)];
  const touches = [...corners, ...joint.rivals.map((rival) => heldOpen(rival, stray))];
  joint.ties.forEach(({ dowelLength }, i) => {
    if (dowelLength === null) return;
    const inEnd = end.holes[i]!;
    touches.push(dowelLength - face.holes[i]!.depth - (inEnd.depth - standsOut(inEnd.u)));
  });
  return touches.flatMap((touch) => corners.map((corner) => touch - corner));
}
