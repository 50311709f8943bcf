import { gridOn } from '../carcass/grid.js';
import { standsStill } from '../carcass/fronts/still.js';
import type { Interval } from '../carcass/interval.js';
import type { Axis, Carcass, Panel, PanelRole, Point3 } from '../carcass/model.js';
import { extentsOf, meet, spanning, toPanel, type Extents } from '../carcass/pose.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { keyBeside } from '../job/panel-key.js';
import { placesOf } from '../length/grid.js';
import { half, type Micrometres } from '../length/units.js';
import { NO_ANGLE } from '../shop/habits.js';
import type { Angle, Shop } from '../shop/model.js';
import type { FrontAngle, OnFace } from './model.js';
import { isOnFace, type Screws } from './on-face.js';

/** A face that stands behind a front, and the side of it on which angles lie. */
interface Corner {
  readonly front: Panel;
  readonly on: Panel;
  /** Out of the face. */
  readonly out: Axis;
  /** Where the face is, along that axis. */
  readonly plane: Micrometres;
  /** Along which the corner runs. */
  readonly along: 'x' | 'z';
  /** Where middles of angles are to be. */
  readonly aims: readonly Micrometres[];
  /** Where they may be, the better ones first: places on the pitch, and then those between. */
  readonly places: readonly (readonly Micrometres[])[];
}

/** What an angle must keep clear of. */
export interface Around {
  /** Rooms that are taken, in the carcass frame. */
  readonly taken: readonly Extents[];
  /** Whether screws keep clear of the bores that their panel has. */
  readonly isFree: (screws: Screws) => boolean;
}

/** The angle of a name, the usual one where the shop has none of it; null for none. */
export function angleNamed({ angles, habits }: Shop, name: string): Angle | null {
  return angles.get(name) ?? (name === NO_ANGLE ? null : (angles.get(habits.angle) ?? null));
}

/**
 * The angles behind the fronts that do not move, in the order of the panels. On uprights they stand on the pitch grid where that is
 * free, so that they find holes of the rows, and else half a pitch from it. The free edge of a blind panel is held to the bottom and
 * to the top. Where an angle finds no place there is none, nor behind a front across a corner, whose corners are not square.
 */
export function placeAngles(spec: CarcassSpec, carcass: Carcass, shop: Shop, around: Around): readonly FrontAngle[] {
  const fronts = carcass.panels.filter((panel) => standsStill(panel) && panel.turn === undefined);
  const angle = fronts.length === 0 ? null : angleNamed(shop, spec.angles.value);
  if (angle === null) return [];
  const placed: FrontAngle[] = [];
  for (const front of fronts) {
    let number = 0;
    for (const corner of cornersBehind(spec, carcass, shop, angle, front))
      for (const aim of corner.aims) {
        const id = `${front.key}:angle-${number + 1}`;
        const found = nearest(spec, carcass, shop, angle, { corner, aim, id }, around, placed);
        if (found === null) continue;
        number += 1;
        placed.push(found);
      }
  }
  return placed;
}

interface Wanted {
  readonly corner: Corner;
  readonly aim: Micrometres;
  readonly id: string;
}

function nearest(
  spec: CarcassSpec,
  { panels }: Carcass,
  { habits }: Shop,
  angle: Angle,
  { corner, aim, id }: Wanted,
  { taken, isFree }: Around,
  placed: readonly FrontAngle[],
): FrontAngle | null {
  const { front, on } = corner;
  // Beside a filler is a wall.
  if (front.role === 'filler' && angle.reach > front.width) return null;
  const solid = panels.filter((one) => one !== front && one !== on).map(extentsOf);
  const inTheWay = [...solid, ...taken, ...placed.map(({ body }) => body)];
  for (const places of corner.places)
    for (const middle of places.toSorted((a, b) => Math.abs(a - aim) - Math.abs(b - aim) || a - b)) {
      const one = angleAt(spec, corner, angle, middle, id);
      const legs = legsOf(one);
      const isOn = legs.every(({ panel, holes, diameter }) =>
        holes.every((hole) => isOnFace(panel, hole, half(diameter) + habits.leastWall)),
      );
      if (isOn && !inTheWay.some((room) => meet(room, one.body)) && legs.every(isFree)) return one;
    }
  return null;
}

const legsOf = ({ angle, front, on, face, holes, frontHoles }: FrontAngle): readonly Screws[] => [
  { panel: on, face, holes, diameter: angle.diameter, depth: angle.depth },
  { panel: front, face: 'inside', holes: frontHoles, diameter: angle.frontDiameter, depth: angle.frontDepth },
];

function angleAt(spec: CarcassSpec, corner: Corner, angle: Angle, middle: Micrometres, id: string): FrontAngle {
  const { front, on, out, plane, along } = corner;
  const behind = extentsOf(front).y.to;
  const sign = out.startsWith('+') ? 1 : -1;
  const across = (by: Micrometres, y: Micrometres, at: Micrometres): Point3 =>
    along === 'z' ? { x: plane + sign * by, y, z: at } : { x: at, y, z: plane + sign * by };
  const low = middle - half(angle.spacing);
  const spots = angle.spacing === 0 ? [middle] : [low, low + angle.spacing];
  const onFace = (panel: Panel, point: Point3): OnFace => {
    const { u, v } = toPanel(panel.pose, point);
    return { u, v };
  };
  const from = middle - half(angle.height);
  return {
    id,
    angle,
    front,
    on,
    face: on.pose.t === out ? 'inside' : 'outside',
    place: spec.angles.written ? spec.angles.place : front.place,
    holes: spots.map((at) => onFace(on, across(0, behind + angle.behindFront, at))),
    frontHoles: spots.map((at) => onFace(front, across(angle.inFront, behind, at))),
    body: spanning(across(0, behind, from), across(angle.reach, behind + angle.reach, from + angle.height)),
  };
}

function cornersBehind(spec: CarcassSpec, carcass: Carcass, shop: Shop, angle: Angle, front: Panel): readonly Corner[] {
  const uprights =
    front.role === 'filler'
      ? besideFiller(spec, carcass, front)
      : carcass.panels
          .filter(({ role }) => role === 'left-side' || role === 'right-side' || role === 'divider')
          .flatMap((on) => facesBehind(on, front, angle));
  const upright = uprights.map(([on, out]): Corner => {
    const [own, face] = [extentsOf(front), extentsOf(on)];
    const z = { from: Math.max(own.z.from, face.z.from), to: Math.min(own.z.to, face.z.to) };
    return {
      front,
      on,
      out,
      plane: out === '+x' ? face.x.to : face.x.from,
      along: 'z',
      aims: spread({ from: z.from + angle.fromEnd, to: z.to - angle.fromEnd }, angle),
      places: onPitch(spec, carcass, shop, on, half(angle.spacing)),
    };
  });
  return front.role === 'blind-panel' ? [...upright, ...byFreeEdge(carcass, shop, angle, front)] : upright;
}

/** The side that a filler stands beside, or its end panel. */
function besideFiller({ width }: CarcassSpec, { panels }: Carcass, front: Panel): readonly (readonly [Panel, Axis])[] {
  const hand = extentsOf(front).x.from < half(width.value) ? 'left' : 'right';
  const on =
    panels.find(({ key }) => key === keyBeside('end', hand)) ?? panels.find(({ role }) => role === `${hand}-side`)!;
  return [[on, hand === 'left' ? '-x' : '+x']];
}

/** The face of an upright on which its angle lies behind a front: that toward the middle of the front, where both would do. */
function facesBehind(on: Panel, front: Panel, { inFront }: Angle): readonly (readonly [Panel, Axis])[] {
  const [own, { x }] = [extentsOf(front).x, extentsOf(on)];
  const isBehind = (at: Micrometres): boolean => at > own.from && at < own.to;
  const [left, right] = [isBehind(x.from - inFront), isBehind(x.to + inFront)];
  const toMiddle = own.from + own.to - x.from - x.to;
  return [
    ...(left && (!right || toMiddle <= 0) ? [[on, '-x'] as const] : []),
    ...(right && (!left || toMiddle >= 0) ? [[on, '+x'] as const] : []),
  ];
}

/** Middles of angles whose lower screw is on the pitch grid of an upright, and those half a pitch over them, in the carcass frame. */
function onPitch(spec: CarcassSpec, carcass: Carcass, shop: Shop, on: Panel, toMiddle: Micrometres): Corner['places'] {
  const lined = on.role === 'end-panel' ? carcass.panels.find(({ key }) => key === spec.leading)! : on;
  const { z } = lined.pose.origin;
  const grid = placesOf(gridOn(spec, carcass, shop, lined)).map((at) => z + at + toMiddle);
  return [grid, grid.map((at) => at + half(shop.habits.pitch))];
}

/** The fewest places that are nowhere further apart, spread evenly; one in the middle where there is no room for two. */
function spread({ from, to }: Interval, { apart, height }: Angle): readonly Micrometres[] {
  if (to - from < height) return [half(from + to)];
  const gaps = Math.ceil((to - from) / apart);
  return Array.from({ length: gaps + 1 }, (_, i) => from + Math.round(((to - from) * i) / gaps));
}

/** So many steps of half a pitch an angle at a free edge may stand further from it. */
const STEPS = 8;

const UNDER_AND_OVER: readonly (readonly [PanelRole, Axis])[] = [
  ['bottom', '+z'],
  ['top', '-z'],
  ['rail', '-z'],
];

/** Over the bottom and under the top, or the front rail, near the edge of a blind panel that no upright stands behind. */
function byFreeEdge({ panels }: Carcass, { habits }: Shop, angle: Angle, front: Panel): readonly Corner[] {
  const { x } = extentsOf(front);
  const inward = front.key === keyBeside('blind', 'left') ? -1 : 1;
  const aim = inward === -1 ? x.to - angle.fromEnd : x.from + angle.fromEnd;
  const places = Array.from({ length: STEPS }, (_, i) => aim + inward * i * half(habits.pitch));
  return UNDER_AND_OVER.flatMap(([role, out]) => {
    const on = panels.find((one) => one.role === role && extentsOf(one).y.from < half(one.width));
    if (on === undefined) return [];
    const { z } = extentsOf(on);
    return [{ front, on, out, plane: out === '+z' ? z.to : z.from, along: 'x', aims: [aim], places: [places] }];
  });
}
