import { extentsOf } from '../carcass/pose.js';
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
  const { x, y } = extentsOf(door);
  // The bores of a door count from its hinge edge.
  const isLeft = door.pose.u === '+x';
  const { axisFromEdge, axisFromFront, opening } = hinge;
  return {
    axis: { x: isLeft ? x.from + axisFromEdge : x.to - axisFromEdge, y: y.from + axisFromFront },
    way: isLeft ? 'clockwise' : 'anticlockwise',
    degrees: opening,
  };
}
