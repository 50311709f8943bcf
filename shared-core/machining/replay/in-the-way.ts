import { STOP_ROOM, type SetStop } from '../set-up.js';
import type { Stroke } from './bore.js';
import { stopFace, stopSide } from './table.js';
import { dot, type Vector } from './vector.js';

/**
 * Whether a stop that stands up would keep the panel from lying as it does: the panel covers it, or the end that is at no stop
 * comes too near to it.
 * @param corners of the panel on the table, at least two opposite ones
 */
export function isInTheWay({ setUp, stop }: Stroke, other: SetStop, corners: readonly Vector[]): boolean {
  const reach = corners.map((corner) => dot(corner, stopSide(other)));
  const face = stopFace(setUp, other);
  const room = other.name === stop.name ? 0 : STOP_ROOM;
  // A stop of the other hand looks at the free end; one of the same hand has it on the far side.
  const sameHand = other.side === stop.side;
  return Math.min(...reach) - (sameHand ? room : 0) < face && face < Math.max(...reach) + (sameHand ? 0 : room);
}
