import { straightExtents } from '../carcass/pose.js';
import { turned } from '../carcass/turn.js';
import type { Micrometres } from '../length/units.js';
import type { HungDoor } from './model.js';

/** How a door turns: about an upright line, toward the front. */
export interface Swing {
  /** Where the line stands in the carcass frame. */
  readonly axis: { readonly x: Micrometres; readonly y: Micrometres };
  /** Seen from above: a door hung on the left opens clockwise. */
  readonly way: 'clockwise' | 'anticlockwise';
  /** How far it opens, in degrees. */
  readonly degrees: number;
}

/**
 * The line that a door on its hinges turns about, as the shop file tells it of the hinge: from the hinge edge toward the
 * closing edge, and from the outside face toward the inside one.
 */
export function swingOf({ door, hinge }: Pick<HungDoor, 'door' | 'hinge'>): Swing {
  const { x, y } = straightExtents(door);
  // The bores of a door count from its hinge edge.
  const isLeft = door.pose.u === '+x';
  const { axisFromEdge, axisFromFront, opening } = hinge;
  const line = { x: isLeft ? x.from + axisFromEdge : x.to - axisFromEdge, y: y.from + axisFromFront };
  const axis = door.turn === undefined ? line : turned(door.turn, line);
  return {
    axis: { x: Math.round(axis.x), y: Math.round(axis.y) },
    way: isLeft ? 'clockwise' : 'anticlockwise',
    degrees: opening,
  };
}
