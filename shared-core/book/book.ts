import type { Surroundings } from '../fittings/fitting.js';
import { kindOf } from '../fittings/kinds.js';
import type { Micrometres } from '../length/units.js';
import type { HorizontalHead, Shop, VerticalHead } from '../shop/model.js';
import { sharedPattern } from './pattern.js';

/**
 * The one load of bits that serves the usual joints of a shop on both of its heads, as spindles counted from the front edge;
 * null where the heads are not known, have unlike pitches, or no load serves all.
 * Usual joints are those of the usual fitting in the usual depths, with and without the usual back, and in rails.
 */
export function sharedLoad(
  faces: VerticalHead | null,
  ends: HorizontalHead | null,
  shop: Shop,
): readonly number[] | null {
  const { habits } = shop;
  const fitting = shop.fittings.get(habits.joint);
  if (faces === null || ends === null || faces.pitch !== ends.pitch || fitting === undefined) return null;
  const around: Surroundings = {
    glueGap: habits.glueGap,
    leastWall: habits.leastWall,
    named: (name) => shop.fittings.get(name) ?? fitting,
  };
  const edge = kindOf(fitting).joint.edgeDistance(fitting, around);
  const depths = Object.values(habits.sizes).flatMap(({ depth }) => [depth, usualClearDepth(depth, shop)]);
  const roomOf = (depth: Micrometres): number => Math.floor((depth - edge - habits.firstDowel) / faces.pitch);
  // A rail always meets the face head in front; a deep panel may end behind the last spindle of either head.
  const rooms = [habits.railWidth, ...depths]
    .map((depth) => Math.min(roomOf(depth), faces.spindles - 1, ends.spindles - 1))
    .filter((room) => room >= 0);
  const longest = Math.max(1, Math.floor(habits.dowelSpacing / faces.pitch));
  // A last bore is nearer to the back than the spacing also where the wood goes on for all but a pitch.
  const tail = Math.max(0, Math.floor((habits.dowelSpacing - edge) / faces.pitch) - 1);
  return sharedPattern({ spindles: ends.spindles, rooms: [...new Set(rooms)], longest, tail });
}

/** What is left of a depth in front of the usual back in a groove. */
export function usualClearDepth(depth: Micrometres, { boards, habits }: Shop): Micrometres {
  return depth - habits.backInset - (boards.get(habits.backBoard)?.thickness ?? 0);
}
