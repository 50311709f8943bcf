import { lieOf, type Stroke } from './bore.js';
import { isInTheWay } from './in-the-way.js';
import { toTable } from './lie.js';
import { edgeAt, endAt, realSolid, type End } from './solid.js';
import { NOTHING } from './stray.js';
import { standingSpindles, stopFace, stopSide, type StandingSpindle } from './table.js';
import { dot, type Vector } from './vector.js';

/** What lies and stands where on the table for one stroke, in the table frame (see the set-up), whole micrometres. */
export interface TableLayout {
  /** Corners of the panel seen from above, in the order front-reference, front-far, back-far, back-reference. */
  readonly panel: readonly (readonly [x: number, y: number])[];
  readonly up: 'inside' | 'outside';
  /** The fence, or the plate of a horizontal head, is the line Y = 0; the panel lies on this side of it. */
  readonly fence: 'far' | 'near';
  readonly stops: readonly StandingStop[];
  readonly spindles: readonly LaidSpindle[];
  readonly clamps: readonly LaidClamp[];
}
export interface StandingStop {
  readonly name: string;
  readonly side: 'left' | 'right';
  /** Its face. */
  readonly x: number;
  /** The panel was pushed against this one. */
  readonly used: boolean;
  /** It is in the panel's way, so it is down. */
  readonly lowered: boolean;
}
export interface LaidSpindle extends StandingSpindle {
  /** null: empty. */
  readonly diameter: number | null;
}
export interface LaidClamp {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  /** True where it comes down on the panel with its whole pad. */
  readonly holds: boolean;
}

const CORNERS: readonly (readonly ['front' | 'back', End])[] = [
  ['front', 'reference-end'],
  ['front', 'far-end'],
  ['back', 'far-end'],
  ['back', 'reference-end'],
];

/** The machine as the operator sees it when the head comes down. */
export function layOut(stroke: Stroke): TableLayout {
  const { setUp, step, stop, blank, names } = stroke;
  const { machine } = setUp;
  const solid = realSolid(blank, names.solid, NOTHING);
  const lie = lieOf(stroke, solid, NOTHING);
  const corners = CORNERS.map(([edge, end]): Vector => {
    const u = edgeAt(solid, edge);
    return toTable(blank.hand, lie, [u, endAt(solid, end, u), 0]);
  });
  const [x, y] = [corners.map((corner) => corner[0]), corners.map((corner) => corner[1])];
  const over = (at: number, pad: number, places: readonly number[]): boolean =>
    Math.min(...places) <= at - pad / 2 && at + pad / 2 <= Math.max(...places);
  const nearSide = Math.max(...y) > 0;
  const clamps = machine.kind === 'cup' ? [] : machine.clamps;
  return {
    panel: corners.map((corner) => [corner[0], corner[1]] as const),
    up: step.down === 'inside' ? 'outside' : 'inside',
    fence: nearSide ? 'near' : 'far',
    stops: setUp.stops.map((one) => {
      const at = dot(stopSide(one), [1, 0, 0]) * stopFace(setUp, one);
      const lowered = isInTheWay(stroke, one, corners);
      return { name: one.name, side: one.side, x: at, used: one.name === stop.name, lowered };
    }),
    spindles: standingSpindles(setUp).map((place) => {
      const loaded = step.spindles.find((one) => one.head === place.head && one.spindle === place.spindle);
      return { ...place, diameter: loaded?.diameter ?? null };
    }),
    clamps: clamps.map(({ name, along, across, pad }) => {
      const at = nearSide ? across : -across;
      return { name, x: along, y: at, holds: over(along, pad, x) && over(at, pad, y) };
    }),
  };
}
