import type { Located } from '../../document/place.js';
import { half, type Micrometres } from '../../length/units.js';
import type { Board, Hand } from '../../shop/model.js';
import type { Box } from '../box.js';
import { extent, type Interval } from '../interval.js';
import type { CarcassSpec } from '../spec.js';
import { say } from '../messages.js';
import type { Bay } from '../model.js';
import type { Problems } from '../problems.js';
import { besideBlind } from './blind.js';
import type { Diagonal } from '../model.js';
import { frontBegins } from '../diagonal.js';
import { stacksAsked, thickestFront, type AskedFront, type FrontKind } from './asked.js';
import { frontHeights, sharesHeight, stackedDown } from './heights.js';

/** Where a front stands, seen from before the carcass; across a corner its x counts along the diagonal from its left end. */
export interface FrontPlace {
  readonly kind: FrontKind;
  readonly cause: Located<unknown>;
  readonly x: Interval;
  /** null where there is no room for it. */
  readonly z: Interval | null;
  /** The keys of the uprights beside it. */
  readonly left: string;
  readonly right: string;
  /** Of its opening, between the uprights. */
  readonly bay: Interval;
}

/** The places of all fronts: bay by bay from the left, from the top down. One without a room is told. */
export function frontPlaces(box: Box, bays: readonly Bay[], problems: Problems): readonly FrontPlace[] {
  const { spec } = box;
  const { doors, fronts } = spec;
  const whole: Bay = { from: bays[0]!.from, to: bays.at(-1)!.to, left: 'left', right: 'right' };
  if (fronts === null && doors.bays === null && doors.hung.value !== 'none') {
    if (doors.how.value === 'inset' && bays.length > 1) {
      problems.add(doors.how, say.doorsBeforeDividers({ bays: bays.length }));
      return [];
    }
  }
  tellMissingBays(box, bays, problems);
  return stacksAsked(spec).flatMap(({ bay: index, fronts: asked }) => {
    const bay = index === null ? whole : bays[index];
    if (bay === undefined || asked.length === 0) return [];
    const x = box.diagonal === null ? besideBlind(spec, widthOf(box, bay)) : alongDiagonal(box, box.diagonal);
    const heights = parted(box, asked, problems);
    return asked.map(({ kind, cause }, i) => ({
      kind,
      cause,
      x,
      z: heights === null ? null : heights[i]!,
      left: bay.left,
      right: bay.right,
      bay: { from: bay.from, to: bay.to },
    }));
  });
}

function tellMissingBays({ spec: { doors, fronts } }: Box, bays: readonly Bay[], problems: Problems): void {
  if (fronts === null) {
    const beyond = doors.bays?.value[bays.length];
    if (beyond !== undefined)
      problems.add(beyond, say.doorBayMissing({ asked: doors.bays!.value.length, bays: bays.length }));
    return;
  }
  for (const { value } of fronts.value)
    if (value.bay !== undefined && value.bay.value > bays.length)
      problems.add(value.bay, say.frontBayMissing({ bay: value.bay.value, bays: bays.length }));
}

/** The room of each front of one bay, from the top down. */
function parted(box: Box, fronts: readonly AskedFront[], problems: Problems): readonly Interval[] | null {
  const whole = heightOf(box, fronts);
  const heights = frontHeights(box.spec, box.shop, fronts, extent(whole));
  if (heights.as === 'too-high') {
    const { given, left } = heights;
    const asked = fronts.findLast((front) => !sharesHeight(front));
    const cause = asked?.height ?? asked?.pitches ?? fronts[0]!.cause;
    problems.add(cause, say.frontsTooHigh({ fronts: fronts.length, given, room: extent(whole), left }));
    return null;
  }
  return stackedDown(heights.each, whole.to, box.spec.doors.gap.value);
}

/**
 * From edge to edge of what closes an opening. Inset: a gap off the panels beside it. Overlay: over the sides but for the
 * reveal, and over half of a divider but for half of the gap.
 */
function widthOf({ spec }: Box, { from, to, left, right }: Bay): Interval {
  const { doors, dividers, width } = spec;
  const gap = doors.gap.value;
  if (doors.how.value === 'inset') return { from: from + gap, to: to - gap };
  const middleOf = (key: string): Micrometres => dividers.find((one) => one.key === key)!.at.value;
  return {
    from: left === 'left' ? doors.reveal.value : middleOf(left) + (gap - half(gap)),
    to: right === 'right' ? width.value - doors.reveal.value : middleOf(right) - half(gap),
  };
}

/** From edge to edge of what closes the front across a corner: nothing of it stands before the neighbours on either hand. */
function alongDiagonal({ spec, shop }: Box, diagonal: Diagonal): Interval {
  const { reveal, buffer } = spec.doors;
  const before = buffer.value + thickestFront(spec, shop);
  const off = (hand: Hand): Micrometres => frontBegins(diagonal, hand, reveal.value, before);
  const room = { from: off('left'), to: diagonal.long - off('right') };
  // As wide as a saw can be set to; what is over lies toward the corner, so that the mirror image is one.
  const width = Math.floor(extent(room) / 100) * 100;
  return diagonal.hand === 'right'
    ? { from: room.from, to: room.from + width }
    : { from: room.to - width, to: room.to };
}

/** From the lower edge of the fronts of a stack to the upper one; of any that are no appliances where none is named. */
export function heightOf({ spec, boards, clearZ }: Box, fronts: readonly Pick<AskedFront, 'kind'>[] = []): Interval {
  return stackHeight(spec, clearZ, (boards.top ?? boards.railFront).thickness, fronts);
}

/**
 * The same of a box that is clear between two heights, and closed above at the front by a panel so thick: between the reveals, or a gap
 * within the box where fronts are inset. An appliance stands on the bottom and under the top or the rails, without a gap.
 */
export function stackHeight(
  { doors, height }: Pick<CarcassSpec, 'doors' | 'height'>,
  clear: Interval,
  above: Micrometres,
  fronts: readonly Pick<AskedFront, 'kind'>[],
): Interval {
  const isOverlay = doors.how.value === 'overlay';
  const isAppliance = (front: Pick<AskedFront, 'kind'> | undefined): boolean => front?.kind === 'appliance';
  const from = isOverlay ? doors.bottomReveal.value : clear.from + doors.gap.value;
  const to = height.value - (isOverlay ? doors.topReveal.value : above + doors.gap.value);
  return {
    from: isAppliance(fronts.at(-1)) ? clear.from : from,
    to: isAppliance(fronts[0]) ? clear.to : to,
  };
}

/** The outside face of a front in the carcass frame. */
export function facePlane({ spec: { doors } }: Box, { thickness }: Board): Micrometres {
  return doors.how.value === 'inset' ? 0 : -doors.buffer.value - thickness;
}

/** Whether a front has a size, and an inset one stands before the back. */
export function hasRoom(
  { spec, clearDepth }: Box,
  door: string,
  { thickness }: Board,
  { x, z }: { readonly x: Interval; readonly z: Interval },
  cause: Located<unknown>,
  problems: Problems,
): boolean {
  if (extent(x) <= 0 || extent(z) <= 0) {
    problems.add(cause, say.doorNoSize({ door, width: extent(x), height: extent(z) }));
    return false;
  }
  if (spec.doors.how.value === 'overlay' || thickness < clearDepth) return true;
  problems.add(spec.doors.how, say.doorTooThick({ door, thickness, clear: clearDepth }));
  return false;
}
