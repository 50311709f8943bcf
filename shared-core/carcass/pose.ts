import type { Micrometres } from '../length/units.js';
import { overlaps, type Interval } from './interval.js';
import type { Axis, Handedness, Panel, Point3, Pose } from './model.js';
import { turned } from './turn.js';

/** A point of a panel's solid frame: u from the front edge, v from the reference end, t from the outside face. */
export interface PanelPoint {
  readonly u: Micrometres;
  readonly v: Micrometres;
  readonly t: Micrometres;
}

/** The run of a panel, or of anything with square edges, along each axis of the carcass frame. */
export interface Extents {
  readonly x: Interval;
  readonly y: Interval;
  readonly z: Interval;
}

export type CarcassAxis = keyof Point3;

/** The axes as vectors of the carcass frame. */
export const UNIT: Readonly<Record<Axis, Point3>> = {
  '+x': { x: 1, y: 0, z: 0 },
  '-x': { x: -1, y: 0, z: 0 },
  '+y': { x: 0, y: 1, z: 0 },
  '-y': { x: 0, y: -1, z: 0 },
  '+z': { x: 0, y: 0, z: 1 },
  '-z': { x: 0, y: 0, z: -1 },
};

const OPPOSITE: Readonly<Record<Axis, Axis>> = {
  '+x': '-x',
  '-x': '+x',
  '+y': '-y',
  '-y': '+y',
  '+z': '-z',
  '-z': '+z',
};

/** The same axis the other way. */
export function opposite(axis: Axis): Axis {
  return OPPOSITE[axis];
}

/** The axis of the carcass frame that a direction runs along, whichever way. */
export function alongAxis(axis: Axis): CarcassAxis {
  return axis[1] as CarcassAxis;
}

/** Whether a direction runs along its axis of the carcass frame or against it. */
export function signOf(axis: Axis): 1 | -1 {
  return axis.startsWith('+') ? 1 : -1;
}

function dot(a: Point3, b: Point3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

/** From the panel's solid frame to the carcass frame. Exact. */
export function toCarcass({ origin, u, v, t }: Pose, point: PanelPoint): Point3 {
  const [along, up, deep] = [UNIT[u], UNIT[v], UNIT[t]];
  return {
    x: origin.x + along.x * point.u + up.x * point.v + deep.x * point.t,
    y: origin.y + along.y * point.u + up.y * point.v + deep.y * point.t,
    z: origin.z + along.z * point.u + up.z * point.v + deep.z * point.t,
  };
}

/** From the carcass frame to the panel's solid frame: the inverse of `toCarcass`. Exact. */
export function toPanel({ origin, u, v, t }: Pose, point: Point3): PanelPoint {
  const from = { x: point.x - origin.x, y: point.y - origin.y, z: point.z - origin.z };
  return { u: dot(from, UNIT[u]), v: dot(from, UNIT[v]), t: dot(from, UNIT[t]) };
}

/** 'right' where u x v = t in the carcass, 'left' where it is -t. */
export function handedness({ u, v, t }: Pose): Handedness {
  const [a, b] = [UNIT[u], UNIT[v]];
  const cross = { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
  return dot(cross, UNIT[t]) > 0 ? 'right' : 'left';
}

/**
 * The room that a panel's finished solid (grooves and a cut corner not counted) takes in the carcass; of one that stands turned the
 * least that holds it, in whole micrometres.
 */
export function extentsOf(panel: Panel): Extents {
  const straight = straightExtents(panel);
  const { turn } = panel;
  if (turn === undefined) return straight;
  const { x, y, z } = straight;
  const spots = [x.from, x.to].flatMap((px) => [y.from, y.to].map((py) => turned(turn, { x: px, y: py })));
  const run = (axis: 'x' | 'y'): Interval => {
    const places = spots.map((spot) => spot[axis]);
    return { from: Math.floor(Math.min(...places)), to: Math.ceil(Math.max(...places)) };
  };
  return { x: run('x'), y: run('y'), z };
}

/** The same before the panel is turned, as its pose says. */
export function straightExtents({ pose, width, length, thickness }: Omit<Panel, 'turn'>): Extents {
  return spanning(pose.origin, toCarcass(pose, { u: width, v: length, t: thickness }));
}

/** The room between two opposite corners. */
export function spanning(a: Point3, b: Point3): Extents {
  const run = (axis: CarcassAxis): Interval => ({ from: Math.min(a[axis], b[axis]), to: Math.max(a[axis], b[axis]) });
  return { x: run('x'), y: run('y'), z: run('z') };
}

/** True where the two share room; those that only touch do not. */
export function meet(a: Extents, b: Extents): boolean {
  return overlaps(a.x, b.x) && overlaps(a.y, b.y) && overlaps(a.z, b.z);
}
