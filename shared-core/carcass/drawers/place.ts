import type { Located } from '../../document/place.js';
import { keyInDrawer, keyOf } from '../../job/panel-key.js';
import { type Micrometres } from '../../length/units.js';
import type { Slide, SlideLength } from '../../shop/model.js';
import type { Message } from '../../words/message.js';
import type { Box } from '../box.js';
import { chosen, slideNamed } from '../choices.js';
import { openFront } from '../fronts/blind.js';
import { frontAt, type PlacedFront } from '../fronts/doors.js';
import { heightOf, type FrontPlace } from '../fronts/places.js';
import { extent, overlaps, type Interval } from '../interval.js';
import { say } from '../messages.js';
import type { Problems } from '../problems.js';
import type { PlacedShelf } from '../shelves.js';

/** A drawer in its place, closed: its front, and the box behind it, outside to outside. */
export interface PlacedDrawer {
  readonly key: string;
  readonly front: PlacedFront;
  readonly slide: Slide;
  readonly length: SlideLength;
  readonly x: Interval;
  readonly y: Interval;
  readonly z: Interval;
  /** Height of the line of the screws in the uprights. */
  readonly line: Micrometres;
  /** How far back the closed front reaches into the carcass; 0 for one before it. */
  readonly behind: Micrometres;
  readonly left: string;
  readonly right: string;
  readonly cause: Located<unknown>;
}

/** No box is made lower than this (common practice, no source). */
const LEAST_HEIGHT: Micrometres = 40_000;

/**
 * The drawers in the order of their places. The line of the screws stands on the pitch grid of the sides, as low behind the
 * front as the slide lets the box stand. One that finds no room is left out, and told.
 */
export function placeDrawers(
  box: Box,
  places: readonly FrontPlace[],
  fixed: readonly PlacedShelf[],
  problems: Problems,
): readonly PlacedDrawer[] {
  const asked = places.filter(({ kind }) => kind === 'drawer');
  if (asked.length === 0) return [];
  const slide = slideNamed(box.shop, box.spec.drawers.slide.value);
  if (slide === null) {
    problems.add(box.spec.drawers.slide, say.noSlides());
    return [];
  }
  return asked.flatMap((place, i) => {
    const key = keyOf('drawer', i + 1);
    const front = frontAt(box, keyInDrawer(key, 'front'), place, problems);
    return front === null ? [] : (behindFront(box, key, place, front, slide, fixed, problems) ?? []);
  });
}

function behindFront(
  box: Box,
  key: string,
  place: FrontPlace,
  front: PlacedFront,
  slide: Slide,
  fixed: readonly PlacedShelf[],
  problems: Problems,
): PlacedDrawer | null {
  const { cause } = place;
  const inside = front.front + front.board.thickness;
  const room = box.clearDepth - inside - slide.behind;
  const length = slide.lengths.filter((one) => one.length <= room).toSorted((a, b) => b.length - a.length)[0];
  if (length === undefined) {
    const least = Math.min(...slide.lengths.map((one) => one.length));
    problems.add(cause, say.drawerNoDepth({ drawer: key, slide: slide.name, least, room }));
    return null;
  }
  const x = { from: place.bay.from + slide.sideClearance, to: place.bay.to - slide.sideClearance };
  const least = 3 * box.shop.habits.leastWall + 2 * box.boards.left.thickness;
  if (extent(x) < least) {
    problems.add(cause, say.drawerNoWidth({ drawer: key, bay: extent(place.bay), taken: 2 * slide.sideClearance }));
    return null;
  }
  const open = openFront(box.spec);
  if (x.from < open.from || x.to > open.to) {
    problems.add(cause, say.drawerBehindBlind({ drawer: key, from: open.from, to: open.to, box: [x.from, x.to] }));
    return null;
  }
  const clear = clearHeight(box, place, front.z, fixed);
  const line = lowestLine(box, clear.from + slide.under + slide.heightOffset);
  const from = line - slide.heightOffset;
  const most = clear.to - slide.over - from;
  const wanted = box.spec.drawers.height?.value ?? most;
  if (most < Math.max(LEAST_HEIGHT, wanted)) {
    const where = most < LEAST_HEIGHT ? cause : box.spec.drawers.height!;
    problems.add(where, noHeight(key, wanted, most));
    return null;
  }
  return {
    key,
    front,
    slide,
    length,
    x,
    y: { from: inside, to: inside + length.length },
    z: { from, to: from + wanted },
    line,
    behind: Math.max(0, inside),
    left: place.left,
    right: place.right,
    cause,
  };
}

const noHeight = (drawer: string, wanted: Micrometres, most: Micrometres): Message =>
  say.drawerNoHeight({ drawer, height: Math.max(LEAST_HEIGHT, wanted), most, canBeLower: most >= LEAST_HEIGHT });

/** From floor to ceiling of what stands behind a front: as high as the front, less what of bottom, top, rails and fixed shelves is there. */
function clearHeight(box: Box, { bay }: FrontPlace, z: Interval, fixed: readonly PlacedShelf[]): Interval {
  const middle = (z.from + z.to) / 2;
  const clear = { from: Math.max(z.from, box.clearZ.from), to: Math.min(z.to, box.clearZ.to, heightOf(box).to) };
  for (const { origin, length, board } of fixed) {
    if (!overlaps({ from: origin.x, to: origin.x + length }, bay)) continue;
    const top = origin.z + board.thickness;
    if ((origin.z + top) / 2 <= middle) clear.from = Math.max(clear.from, top);
    else clear.to = Math.min(clear.to, origin.z);
  }
  return clear;
}

/** The lowest hole of the leading side's grid at a height or above. */
function lowestLine({ spec, shop, sideZ }: Box, least: Micrometres): Micrometres {
  const start = sideZ.from + (chosen(spec, spec.leading, 'rowOffset') ?? spec.rowOffset).value;
  return start + Math.max(0, Math.ceil((least - start) / shop.habits.pitch)) * shop.habits.pitch;
}
