import { isFace } from './surface.js';
import type { Interval } from '../carcass/interval.js';
import type { Axis, Panel, Point3 } from '../carcass/model.js';
import { opposite, toCarcass, UNIT, type PanelPoint } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';
import type { Bore } from './model.js';

/** A bore as a line in the carcass frame, from where the bit enters to where it stops. */
export interface BoreAxis {
  readonly entry: Point3;
  readonly direction: Axis;
  readonly length: Micrometres;
}

/**
 * A bore as a solid in its panel's frame (u, v, t): a flat-ended cylinder whose axis runs along t (bored into a face) or
 * along v (bored into an end), through u and `across`, which is v in the first case and t in the second.
 */
export interface Cylinder {
  readonly along: 't' | 'v';
  readonly u: Micrometres;
  readonly across: Micrometres;
  readonly span: Interval;
  readonly diameter: Micrometres;
}

/** Where a bore stands in the carcass. Exact. */
export function boreAxis(panel: Panel, bore: Bore): BoreAxis {
  return {
    entry: toCarcass(panel.pose, entryPoint(panel, bore)),
    direction: directionOf(panel, bore),
    length: bore.depth,
  };
}

/** Where a bore opens: where the bit enters, and for a through bore where it comes out. */
export function mouths(panel: Panel, bore: Bore): readonly Point3[] {
  const { entry, direction, length } = boreAxis(panel, bore);
  if (!bore.through) return [entry];
  const step = UNIT[direction];
  return [entry, { x: entry.x + step.x * length, y: entry.y + step.y * length, z: entry.z + step.z * length }];
}

/** A bore as a solid in its panel's own frame. */
export function cylinderOf(panel: Panel, bore: Bore): Cylinder {
  const { face, u, v, diameter, depth } = bore;
  const onFace = isFace(face);
  const fromLow = face === 'outside' || face === 'reference-end';
  const size = onFace ? panel.thickness : panel.length;
  const span = fromLow ? { from: 0, to: depth } : { from: size - depth, to: size };
  return { along: onFace ? 't' : 'v', u, across: v, span, diameter };
}

function entryPoint({ thickness, length }: Panel, { face, u, v }: Bore): PanelPoint {
  switch (face) {
    case 'outside':
      return { u, v, t: 0 };
    case 'inside':
      return { u, v, t: thickness };
    case 'reference-end':
      return { u, v: 0, t: v };
    case 'far-end':
      return { u, v: length, t: v };
  }
}

function directionOf({ pose }: Panel, { face }: Bore): Axis {
  switch (face) {
    case 'outside':
      return pose.t;
    case 'inside':
      return opposite(pose.t);
    case 'reference-end':
      return pose.v;
    case 'far-end':
      return opposite(pose.v);
  }
}
