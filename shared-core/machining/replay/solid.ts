import type { Blank } from '../set-up.js';
import type { Surface } from '../../boring/model.js';
import type { Stray } from './stray.js';
import { dot, type Vector } from './vector.js';

/** The six sides of a panel. */
export type Side = Surface | 'front' | 'back';
export type End = 'reference-end' | 'far-end';

/**
 * A real panel, in its own frame (u, v, t): origin in the corner of front edge, reference end and outside face; u to the
 * back, v along the FRONT EDGE to the far end, t to the inside. Its faces are flat and parallel, its front and back edges
 * straight and parallel; each end is straight, and may run out of square: v changes by `slope` for each unit of u.
 */
export interface Solid {
  readonly hand: Blank['hand'];
  /** Micrometres; whole numbers where nothing strays. */
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly slope: Readonly<Record<End, number>>;
}

/** Squareness is bounded over one metre. */
const METRE = 1_000_000;

/** What a panel and its ends are called among the strays. */
export type SolidNames = Readonly<Record<'panel' | End, string>>;

/** The names of a panel of one key. */
export const solidNames = (panel: string): SolidNames => ({
  panel,
  'reference-end': `${panel} reference-end`,
  'far-end': `${panel} far-end`,
});

/** The panel that the saw really made of a blank. */
export function realSolid(blank: Blank, names: SolidNames, stray: Stray): Solid {
  return {
    hand: blank.hand,
    length: blank.length + stray('length', names.panel),
    width: blank.width + stray('width', names.panel),
    thickness: blank.thickness + stray('thickness', names.panel),
    slope: {
      'reference-end': stray('squareness', names['reference-end']) / METRE,
      'far-end': stray('squareness', names['far-end']) / METRE,
    },
  };
}

/** The v at which an end stands, so far back from the front edge. */
export function endAt(solid: Solid, end: End, u: number): number {
  return (end === 'far-end' ? solid.length : 0) + solid.slope[end] * u;
}

/** The u of an edge. */
export function edgeAt(solid: Solid, edge: 'front' | 'back'): number {
  return edge === 'back' ? solid.width : 0;
}

/** The t of a face. */
export function faceAt(solid: Solid, face: 'inside' | 'outside'): number {
  return face === 'inside' ? solid.thickness : 0;
}

/**
 * From the panel's frame into axes fixed in the wood that are right-handed whatever the panel's frame is: a real thing can
 * be turned about, but it cannot be turned into its mirror image. Its own inverse.
 */
export function inWood(hand: Blank['hand'], p: Vector): Vector {
  return [p[0], p[1], hand === 'right' ? p[2] : -p[2]];
}

const OUTWARD: Readonly<Record<Side, Vector>> = {
  front: [-1, 0, 0],
  back: [1, 0, 0],
  'reference-end': [0, -1, 0],
  'far-end': [0, 1, 0],
  outside: [0, 0, -1],
  inside: [0, 0, 1],
};

/** Which way a side of the panel looks, in the right-handed axes of the wood. */
export function outward(hand: Blank['hand'], side: Side): Vector {
  return inWood(hand, OUTWARD[side]);
}

const SURFACES: readonly Surface[] = ['inside', 'outside', 'reference-end', 'far-end'];

/** The surface that a bit enters which goes in this direction (in the panel's frame). Bits run along v or t, never along u. */
export function surfaceEntered(direction: Vector): Surface {
  return SURFACES.find((side) => dot(OUTWARD[side], direction) < 0)!;
}
