import type { Unit } from '../length/units.js';
import { listed } from './english.js';
import { labels, type Told } from './told.js';

/**
 * What the sides of a panel are called, by how it stands in the carcass: an upright has a bottom and a top end, a drawer’s side a
 * front and a back one, all else a left and a right one. In files the two are `reference-end` and `far-end`.
 */
export type EndName = 'bottom end' | 'top end' | 'left end' | 'right end' | 'front end' | 'back end';
export type LongEdge =
  | 'front edge'
  | 'back edge'
  | 'hinge edge'
  | 'closing edge'
  | 'upper edge'
  | 'lower edge'
  | 'inner edge'
  | 'corner edge'
  | 'outer edge'
  | 'slanting edge';
export type MixedEnd = 'bottom or left end' | 'bottom, left or front end';
export type SideName = LongEdge | 'inside face' | 'outside face' | EndName;

export const UPRIGHT_ENDS = labels({ 'reference-end': 'bottom end', 'far-end': 'top end' });
export const LYING_ENDS = labels({ 'reference-end': 'left end', 'far-end': 'right end' });
/** Of a side of a drawer, which runs from the front to the back. */
export const DRAWER_SIDE_ENDS = labels({ 'reference-end': 'front end', 'far-end': 'back end' });
export const EDGES = labels({ front: 'front edge', back: 'back edge' });
/** Of a door, whose bores are counted from the edge that it hangs on. */
export const DOOR_EDGES = labels({ front: 'hinge edge', back: 'closing edge' });
/** Of a front or a drawer’s piece that is set out from above. */
export const UPPER_EDGES = labels({ front: 'upper edge', back: 'lower edge' });
/** Of a strip beside a carcass, counted from the edge toward that. */
export const INNER_EDGES = labels({ front: 'inner edge', back: 'outer edge' });
/** Of a back in the corner of a room, counted from that corner. */
export const CORNER_EDGES = labels({ front: 'corner edge', back: 'outer edge' });
/** The edge that a cut corner leaves. */
export const CUT_EDGE: LongEdge & Told = labels({ edge: 'slanting edge' }).edge;
export const FACES = labels({ inside: 'inside face', outside: 'outside face' });
/** The reference end of panels of which some stand upright and some do not, without sides of drawers and with them. */
export const MIXED_ENDS = labels({ boxes: 'bottom or left end', drawers: 'bottom, left or front end' });

/** The end panel of a joint and the face panel that it meets. */
export type JointPanels = readonly [end: string, face: string];

/** 'The joint of bottom and left'; 'The joints of bottom and left, and of bottom and right'; two are named, the others counted. */
export function jointsTold(joints: readonly JointPanels[]): string {
  const [first, second] = joints.map((panels) => listed(panels));
  if (second === undefined) return `The joint of ${first ?? ''}`;
  if (joints.length === 2) return `The joints of ${first!} and of ${second}`;
  return `The joints of ${first!}, of ${second} and ${joints.length - 2} more`;
}

/** 'millimetres', 'inches': what figures without a unit are in. */
export const inUnit = (unit: Unit): string => (unit === 'mm' ? 'millimetres' : 'inches');
