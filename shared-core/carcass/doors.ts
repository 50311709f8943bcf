import type { Located } from '../document/place.js';
import type { HungWord } from '../job/model.js';
import { keyOf } from '../job/panel-key.js';
import { half, type Micrometres } from '../length/units.js';
import type { Board, Hand, Shop } from '../shop/model.js';
import type { Box } from './box.js';
import { boardFor } from './choices.js';
import { extent, type Interval } from './interval.js';
import { say } from './messages.js';
import type { Bay } from './model.js';
import type { Problems } from './problems.js';
import type { CarcassSpec } from './spec.js';

/** A door before the carcass, closed. */
export interface PlacedDoor {
  readonly key: string;
  readonly board: Board;
  /** The hand on which it is hung, and the key of the upright that carries it. */
  readonly hung: Hand;
  readonly upright: string;
  readonly x: Interval;
  readonly z: Interval;
  /** Of its outside face, in the carcass frame; it reaches its thickness back from there. */
  readonly front: Micrometres;
  /** The text that hangs it. */
  readonly cause: Located<HungWord>;
}

/** The hands of the doors that a word hangs, from the left. */
const HANDS: Readonly<Record<HungWord, readonly Hand[]>> = {
  none: [],
  left: ['left'],
  right: ['right'],
  pair: ['left', 'right'],
};

/** An opening that doors are to close, between the edges that they keep off. */
interface Opening {
  readonly hung: Located<HungWord>;
  readonly x: Interval;
  readonly left: string;
  readonly right: string;
}

/** The keys of the doors that the job asks for, from the left. */
export function doorKeys({ doors, dividers }: Pick<CarcassSpec, 'doors' | 'dividers'>): readonly string[] {
  const words = doors.bays === null ? [doors.hung] : doors.bays.value.slice(0, dividers.length + 1);
  return words.flatMap(({ value }) => HANDS[value]).map((_, i) => keyOf('door', i + 1));
}

/**
 * How far back from the front of the carcass inset doors reach before a bay, counted from 0; 0 where there are none. Where
 * `bay` is null that is before any.
 */
export function insetBefore(spec: CarcassSpec, shop: Shop, bay: number | null): Micrometres {
  const { doors, dividers } = spec;
  const { hung, bays } = doors;
  const words = bays === null ? Array<Located<HungWord>>(dividers.length + 1).fill(hung) : bays.value;
  const before = bay === null ? words : words.slice(bay, bay + 1);
  if (doors.how.value !== 'inset' || before.every(({ value }) => value === 'none')) return 0;
  return Math.max(0, ...doorKeys(spec).map((key) => boardFor(spec, shop, key, doors.board).thickness));
}

/** The doors from left to right, as the job hangs them. One that finds no room is left out, and told. */
export function placeDoors(box: Box, bays: readonly Bay[], problems: Problems): readonly PlacedDoor[] {
  const { spec, shop } = box;
  const z = heightOf(box);
  let number = 0;
  return openings(box, bays, problems).flatMap((opening) => {
    const hands = HANDS[opening.hung.value];
    const runs = partedIn(hands.length, opening.x, spec.doors.gap.value);
    return hands.flatMap((hung, i): readonly PlacedDoor[] => {
      number += 1;
      const key = keyOf('door', number);
      const board = boardFor(spec, shop, key, spec.doors.board);
      const x = runs[i]!;
      if (!hasRoom(box, key, board, { x, z }, opening.hung, problems)) return [];
      const front = spec.doors.how.value === 'inset' ? 0 : -spec.doors.buffer.value - board.thickness;
      return [{ key, board, hung, upright: opening[hung], x, z, front, cause: opening.hung }];
    });
  });
}

function hasRoom(
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

/** One run for each door, equal ones, with the gap between two; an odd micrometre goes to the gap. */
function partedIn(doors: number, { from, to }: Interval, gap: Micrometres): readonly Interval[] {
  if (doors < 2) return [{ from, to }];
  const width = Math.floor((to - from - gap) / 2);
  return [
    { from, to: from + width },
    { from: to - width, to },
  ];
}

function openings(box: Box, bays: readonly Bay[], problems: Problems): readonly Opening[] {
  const { doors } = box.spec;
  const whole = { from: bays[0]!.from, to: bays.at(-1)!.to, left: 'left', right: 'right' };
  if (doors.bays === null) {
    if (doors.hung.value === 'none') return [];
    if (doors.how.value === 'inset' && bays.length > 1) {
      problems.add(doors.how, say.doorsBeforeDividers({ bays: bays.length }));
      return [];
    }
    return [{ hung: doors.hung, x: widthOf(box, whole), left: 'left', right: 'right' }];
  }
  const words = doors.bays.value;
  const beyond = words[bays.length];
  if (beyond !== undefined) problems.add(beyond, say.doorBayMissing({ asked: words.length, bays: bays.length }));
  return bays.flatMap((bay, i) => {
    const hung = words[i];
    return hung === undefined ? [] : [{ hung, x: widthOf(box, bay), left: bay.left, right: bay.right }];
  });
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

/** From the lower edge of the doors to the upper one; inset, under the front rail where there is one. */
function heightOf({ spec, boards, clearZ }: Box): Interval {
  const { doors, height } = spec;
  if (doors.how.value === 'overlay')
    return { from: doors.bottomReveal.value, to: height.value - doors.topReveal.value };
  const above = boards.top ?? boards.railFront;
  return { from: clearZ.from + doors.gap.value, to: height.value - above.thickness - doors.gap.value };
}
