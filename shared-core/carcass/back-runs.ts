import { half } from '../length/units.js';
import type { Box } from './box.js';
import type { Interval } from './interval.js';

/**
 * From edge to edge of the back, and from end to end of each of its parts from below; none where it is left out all the way up.
 * In the carcass frame. A box without a back has none.
 */
export function backRuns(box: Box): { readonly x: Interval; readonly z: readonly Interval[] } {
  if (box.back === null) return { x: { from: 0, to: 0 }, z: [] };
  const { x, z } = backExtents(box, box.back.how);
  const { openFrom, openTo } = box.spec.back;
  if (openFrom === null && openTo === null) return { x, z: [z] };
  const open = {
    from: openFrom === null ? z.from : box.sideZ.from + openFrom.value,
    to: openTo === null ? z.to : box.sideZ.from + openTo.value,
  };
  if (open.to <= open.from) return { x, z: [z] };
  const parts = [
    { from: z.from, to: Math.min(z.to, open.from) },
    { from: Math.max(z.from, open.to), to: z.to },
  ];
  return { x, z: parts.filter(({ from, to }) => from < to) };
}

/** Whether the back comes down to the bottom, and up to the top. */
export function backReaches(box: Box): { readonly bottom: boolean; readonly top: boolean } {
  const { z } = backRuns(box);
  const [first, last] = [z[0], z.at(-1)];
  return {
    bottom: first !== undefined && first.from < box.clearZ.from + 1,
    top: last !== undefined && last.to > box.clearZ.to - 1,
  };
}

/**
 * Applied: over the whole box. Rebated: into the rebates of the sides and of a horizontal across them, over the rear edge
 * of one between them. Grooved: to the floor of every groove. In grooves and rebates it lacks the play: half of it on either
 * hand, and above all of it, since it stands below. Under rails it runs up to the top edge of the sides.
 */
function backExtents(box: Box, how: NonNullable<Box['back']>['how']): { x: Interval; z: Interval } {
  const { spec, shop, clearX, clearZ } = box;
  const [width, height] = [spec.width.value, spec.height.value];
  if (how === 'applied') {
    // The back along the other wall of a corner covers its edge.
    const behind = box.back!.board.thickness;
    const hand = box.diagonal?.hand;
    const x = { from: hand === 'left' ? behind : 0, to: hand === 'right' ? width - behind : width };
    return { x, z: { from: 0, to: height } };
  }
  const into = box.groove?.depth ?? 0;
  const play = shop.habits.backPlay;
  const left = half(play);
  const x = { from: clearX.from - into + left, to: clearX.to + into - (play - left) };
  const isHeldAbove = how === 'rebated' ? spec.top.value === 'over' : box.boards.top !== null;
  const isHeldBelow = how === 'grooved' || spec.bottom.value === 'under';
  return {
    x,
    z: { from: isHeldBelow ? clearZ.from - into : 0, to: isHeldAbove ? clearZ.to + into - play : height },
  };
}
