import { keyBeside } from '../../job/panel-key.js';
import type { Hand } from '../../shop/model.js';
import type { Box } from '../box.js';
import { extent } from '../interval.js';
import { say } from '../messages.js';
import type { Problems } from '../problems.js';
import { blindHands, openFront, reachOf } from './blind.js';
import { frontAt, type PlacedFront } from './doors.js';
import { heightOf } from './places.js';

/** A panel that closes the end of a front which the run along the other wall of a corner covers. */
export interface PlacedBlind extends PlacedFront {
  readonly hand: Hand;
}

/** The blind panels of a carcass, in the plane of its fronts and as high as these. One that leaves no room beside it is told. */
export function placeBlind(box: Box, problems: Problems): readonly PlacedBlind[] {
  const { spec, clearX } = box;
  const open = openFront(spec);
  const hands = blindHands(spec);
  if (hands.length === 0) return [];
  const inside = { from: Math.max(open.from, clearX.from), to: Math.min(open.to, clearX.to) };
  if (extent(inside) <= 0) {
    const covered = spec.blind[hands.at(-1)!]!;
    problems.add(covered, say.blindTooWide({ reach: reachOf(spec, hands.at(-1)!), width: spec.width.value }));
    return [];
  }
  const { how, gap, reveal } = spec.doors;
  return hands.flatMap((hand): readonly PlacedBlind[] => {
    const cause = spec.blind[hand]!;
    const edge = hand === 'left' ? open.from : open.to;
    const side =
      how.value === 'inset'
        ? hand === 'left'
          ? clearX.from + gap.value
          : clearX.to - gap.value
        : hand === 'left'
          ? reveal.value
          : spec.width.value - reveal.value;
    const x = { from: Math.min(edge, side), to: Math.max(edge, side) };
    const front = frontAt(box, keyBeside('blind', hand), { x, z: heightOf(box), cause }, problems, spec.blind.board);
    return front === null ? [] : [{ ...front, hand }];
  });
}
