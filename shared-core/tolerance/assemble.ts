import type { Point3 } from '../carcass/model.js';
import { toCarcass } from '../carcass/pose.js';
import { blankOf } from '../machining/blank.js';
import { bore, type Hole } from '../machining/replay/bore.js';
import { endAt, realSolid, type Solid } from '../machining/replay/solid.js';
import type { Stray } from '../machining/replay/stray.js';
import { levelOf, type Datum } from './datum.js';
import type { BoredBy, JointCase } from './joint-case.js';
import { bends, spreads } from './needed-play.js';

/**
 * What is measured on a joint that has been put together, in micrometres. Each figure is the greatest of several readings
 * (a gauge laid on at several places, in both directions), and every reading is smooth in what strays.
 */
export const FIGURES = ['front', 'step', 'gap', 'play'] as const;
export type FigureName = (typeof FIGURES)[number];
export type Readings = Readonly<Record<FigureName, readonly number[]>>;

/** A point of the joint's plane: along u of the end panel, across its thickness; on the axes of the carcass. */
interface Spot {
  readonly along: number;
  readonly across: number;
}

/**
 * Bores both panels of a joint, puts them together, and measures.
 *
 * The face panel stands in the carcass by its front edge, outside face and reference end, the corner that its frame counts
 * from. Its dowels carry the end panel: turned and moved in the plane of the joint as a least-squares fit of its bores to
 * those of the face, then drawn up until something touches.
 */
export function measure(joint: JointCase, stray: Stray): Readings {
  const face = realSolid(blankOf(joint.face), joint.face.key, stray);
  const end = realSolid(blankOf(joint.end), joint.end.key, stray);
  const faceHoles = boreAll(
    joint.ties.map((tie) => tie.face),
    stray,
  );
  const endHoles = boreAll(
    joint.ties.map((tie) => tie.end),
    stray,
  );

  const spotOf = (point: Point3): Spot => ({ along: point[joint.front.axis], across: point[joint.outside.axis] });
  const cornerOf = (u: number): Point3 => toCarcass(joint.end.pose, { u, v: 0, t: 0 });
  const held = endHoles.map(({ u, v }) => spotOf(toCarcass(joint.end.pose, { u, v: 0, t: v })));
  const misses = faceHoles.map(({ u, v }, i): Spot => {
    const wanted = spotOf(toCarcass(joint.face.pose, { u, v, t: 0 }));
    return { along: wanted.along - held[i]!.along, across: wanted.across - held[i]!.across };
  });
  const seat = fit(held, misses, {
    along: stray('dowelPlay', `${joint.joint.id} along`),
    across: stray('dowelPlay', `${joint.joint.id} across`),
  });
  const offset = (u: number, datum: Datum, way: keyof Spot): number => {
    const corner = cornerOf(u);
    return seat(spotOf(corner))[way] - levelOf(joint.face, face, datum, corner) - datum.drawn;
  };
  const stations = held.map(({ along }) => along);
  return {
    front: bothWays([offset(0, joint.front, 'along')]),
    step: bothWays([offset(0, joint.outside, 'across'), offset(end.width, joint.outside, 'across')]),
    gap: gaps(joint, end, faceHoles, endHoles),
    play: bothWays([
      ...spreads(misses.map(({ along }) => along)),
      ...bends(
        stations,
        misses.map(({ across }) => across),
      ),
    ]),
  };
}

const bothWays = (values: readonly number[]): number[] => values.flatMap((value) => [value, -value]);

/** Bores are asked for one stroke at a time: the panel is laid down once for all its spindles. */
function boreAll(bits: readonly BoredBy[], stray: Stray): Hole[] {
  const holes: Hole[] = [];
  for (const stroke of new Set(bits.map((bit) => bit.stroke))) {
    const mine = bits.flatMap((bit, i) => (bit.stroke === stroke ? [i] : []));
    const made = bore(
      stroke,
      stray,
      mine.map((i) => bits[i]!.spindle),
    );
    mine.forEach((i, k) => (holes[i] = made[k]!));
  }
  return holes;
}

/**
 * The move of the end panel in the plane of the joint that brings its bores nearest to those of the face, by least squares:
 * the mean of the misses, and the small turn about the mean place that the misses ask for.
 * @param rest Where in the play of its dowels the joint comes to rest.
 */
function fit(held: readonly Spot[], misses: readonly Spot[], rest: Spot): (spot: Spot) => Spot {
  const middle = mean(held);
  const shift = mean(misses);
  const arms = held.map(({ along, across }) => ({ along: along - middle.along, across: across - middle.across }));
  const moment = sum(arms.map((arm, i) => arm.along * misses[i]!.across - arm.across * misses[i]!.along));
  const inertia = sum(arms.map((arm) => arm.along ** 2 + arm.across ** 2));
  // One dowel alone lets the panel turn: it is then held square by hand.
  const turn = inertia < 1 ? 0 : moment / inertia;
  return ({ along, across }) => ({
    along: along + shift.along + rest.along - turn * (across - middle.across),
    across: across + shift.across + rest.across + turn * (along - middle.along),
  });
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const mean = (spots: readonly Spot[]): Spot => ({
  along: sum(spots.map(({ along }) => along)) / spots.length,
  across: sum(spots.map(({ across }) => across)) / spots.length,
});

/**
 * How far the joint stands open, at the front and the back of the contact. The dowels hold the end panel square to the
 * face, and it is drawn up until one corner of its end touches, or a dowel touches bottom.
 */
function gaps(joint: JointCase, end: Solid, faceHoles: readonly Hole[], endHoles: readonly Hole[]): number[] {
  const out = joint.joint.end === 'far-end' ? 1 : -1;
  /** How far the end stands out there beyond its corner at the front edge. */
  const standsOut = (u: number): number => out * (endAt(end, joint.joint.end, u) - endAt(end, joint.joint.end, 0));
  const corners = [joint.contact.from, joint.contact.to ?? end.width].map(standsOut);
  const bottoms = joint.ties.flatMap(({ dowelLength }, i) => {
    if (dowelLength === null) return [];
    return [dowelLength - faceHoles[i]!.depth - (endHoles[i]!.depth - standsOut(endHoles[i]!.u))];
  });
  return [...corners, ...bottoms].flatMap((touches) => corners.map((corner) => touches - corner));
}
