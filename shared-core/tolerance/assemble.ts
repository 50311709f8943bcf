import type { Point3 } from '../carcass/model.js';
import { toCarcass } from '../carcass/pose.js';
import { endAt } from '../machining/replay/solid.js';
import type { Stray } from '../machining/replay/stray.js';
import { AS_DRAWN, type Stand } from './faces.js';
import { levelOf, makeReal, type RealHalf } from './joint.js';
import type { Datum, LoneJoint } from './lone-joint.js';
import { PLAY, type Misses } from './play.js';
import { heldOpen, type JointCase } from './rivals.js';
import { listGauge, type Gauge } from './spread.js';

/** What is measured on a joint that has been put together, in micrometres: a gauge laid on at several places. */
export interface Readings {
  readonly front: readonly number[];
  readonly step: readonly number[];
  readonly gap: readonly number[];
  /** What the play is needed for. */
  readonly play: Misses;
}
export type FigureName = keyof Readings;

/** How the figures of a joint are read. */
export const GAUGES: { readonly [Name in FigureName]: Gauge<Readings[Name]> } = {
  front: listGauge(true),
  step: listGauge(true),
  gap: listGauge(false),
  play: PLAY,
};
export const FIGURE_NAMES = Object.keys(GAUGES) as readonly FigureName[];

/** The figure that readings give, never below 0. */
export function figureIn(readings: Readings, name: FigureName): number {
  return name === 'play' ? GAUGES.play.greatest(readings.play) : GAUGES[name].greatest(readings[name]);
}

/** A point of the joint's plane: along u of the end panel, across its thickness; on the axes of the carcass. */
interface Spot {
  readonly along: number;
  readonly across: number;
}

/** Cuts and bores both panels of a joint and those that it stands among, puts them together, and measures. */
export function measure(joint: JointCase, stray: Stray): Readings {
  const real = ({ face, end }: LoneJoint): readonly [RealHalf, RealHalf] => [
    makeReal(face, stray),
    makeReal(end, stray),
  ];
  const stands = new Map([...joint.standing].map(([id, other]) => [id, standOf(other, ...real(other), stray)]));
  const assembled = putTogether(joint, ...real(joint), stray);
  return { ...assembled.readings, gap: gapBesideOthers(joint, assembled, (id) => stands.get(id) ?? AS_DRAWN, stray) };
}

/** What is measured on a joint, and how far the end stands out at the corners of its contact, beyond its corner at the front edge. */
export interface Assembled {
  readonly readings: Readings;
  readonly standsOut: readonly [front: number, back: number];
}

/**
 * Puts two real panels together and measures.
 *
 * The face panel stands in the carcass by its front edge, outside face and reference end, the corner that its frame counts
 * from. Its dowels carry the end panel: turned and moved in the plane of the joint as a least-squares fit of its bores to
 * those of the face, then drawn up until something touches.
 */
export function putTogether(joint: LoneJoint, face: RealHalf, end: RealHalf, stray: Stray): Assembled {
  const { pose } = joint.end.panel;
  const spotOf = spotsOf(joint);
  const cornerOf = (u: number): Point3 => toCarcass(pose, { u, v: 0, t: 0 });
  const { held, misses } = missesOf(joint, face, end);
  const seat = seatOf(joint, held, misses, stray);
  const offset = (u: number, datum: Datum, way: keyof Spot): number => {
    const corner = cornerOf(u);
    return seat(spotOf(corner))[way] - levelOf(joint.face.panel, face.solid, datum, corner) - datum.drawn;
  };
  const { gap, standsOut } = gaps(joint, face, end);
  return {
    readings: {
      front: [offset(0, joint.front, 'along')],
      step: [offset(0, joint.outside, 'across'), offset(end.solid.width, joint.outside, 'across')],
      gap,
      play: {
        stations: held.map(({ along }) => along),
        along: misses.map(({ along }) => along),
        across: misses.map(({ across }) => across),
      },
    },
    standsOut,
  };
}

/** Where the outside face of the end panel really stands on a face panel that is counted from its reference end. */
export function standOf(joint: LoneJoint, face: RealHalf, end: RealHalf, stray: Stray): Stand {
  const { held, misses } = missesOf(joint, face, end);
  const seat = seatOf(joint, held, misses, stray);
  const across = joint.end.panel.pose.origin[joint.outside.axis];
  return (along) => seat({ along, across }).across - across;
}

/** The gap of a joint as its rivals have it, beside what it would be by itself. */
export function gapBesideOthers(
  { rivals }: JointCase,
  { readings, standsOut }: Assembled,
  standing: (joint: string) => Stand,
  stray: Stray,
): Readings['gap'] {
  if (rivals.length === 0) return readings.gap;
  const held = rivals.map((rival) => {
    const touch = rival.touching === null ? 0 : standsOut[rival.touching];
    return touch + heldOpen(rival, stray, standing) - standsOut[rival.corner];
  });
  return [...readings.gap, ...held];
}

function spotsOf({ front, outside }: LoneJoint): (point: Point3) => Spot {
  return (point) => ({ along: point[front.axis], across: point[outside.axis] });
}

/** Where the bores of the end panel are as it stands in its place as drawn, and how far those of the face are from them. */
function missesOf(
  joint: LoneJoint,
  face: RealHalf,
  end: RealHalf,
): { readonly held: readonly Spot[]; readonly misses: readonly Spot[] } {
  const spotOf = spotsOf(joint);
  const held = end.holes.map(({ u, v }) => spotOf(toCarcass(joint.end.panel.pose, { u, v: 0, t: v })));
  const misses = face.holes.map(({ u, v }, i): Spot => {
    const wanted = spotOf(toCarcass(joint.face.panel.pose, { u, v, t: 0 }));
    return { along: wanted.along - held[i]!.along, across: wanted.across - held[i]!.across };
  });
  return { held, misses };
}

function seatOf(
  { names }: LoneJoint,
  held: readonly Spot[],
  misses: readonly Spot[],
  stray: Stray,
): (spot: Spot) => Spot {
  return fit(held, misses, { along: stray('dowelPlay', names.along), across: stray('dowelPlay', names.across) });
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
 * How far the joint stands open by itself, at the front and the back of the contact. The dowels hold the end panel square to
 * the face. It is drawn up until one corner of its end touches, or a dowel touches bottom.
 */
function gaps(
  joint: LoneJoint,
  face: RealHalf,
  end: RealHalf,
): { readonly gap: readonly number[] } & Pick<Assembled, 'standsOut'> {
  const side = joint.joint.end;
  const out = side === 'far-end' ? 1 : -1;
  /** How far the end stands out there beyond its corner at the front edge. */
  const outAt = (u: number): number => out * (endAt(end.solid, side, u) - endAt(end.solid, side, 0));
  const standsOut = [outAt(joint.contact.from), outAt(joint.contact.to ?? end.solid.width)] as const;
  const touches: number[] = [...standsOut];
  joint.ties.forEach(({ dowelLength }, i) => {
    if (dowelLength === null) return;
    const inEnd = end.holes[i]!;
    touches.push(dowelLength - face.holes[i]!.depth - (inEnd.depth - outAt(inEnd.u)));
  });
  return { gap: touches.flatMap((touch) => standsOut.map((corner) => touch - corner)), standsOut };
}
