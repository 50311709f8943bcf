import type { Located } from '../../document/place.js';
import { keyOf } from '../../job/panel-key.js';
import type { Micrometres } from '../../length/units.js';
import type { Board, Hand } from '../../shop/model.js';
import type { Box } from '../box.js';
import { extent, type Interval } from '../interval.js';
import type { Turn } from '../model.js';
import type { Problems } from '../problems.js';
import { boardFor } from '../choices.js';
import { say } from '../messages.js';
import { HANDS } from './asked.js';
import { blindHands } from './blind.js';
import { facePlane, hasRoom, type FrontPlace } from './places.js';

/** A front before the carcass, closed. */
export interface PlacedFront {
  readonly key: string;
  readonly board: Board;
  readonly x: Interval;
  readonly z: Interval;
  /** Of its outside face, in the carcass frame before any turn; it reaches its thickness back from there. */
  readonly front: Micrometres;
  /** How it stands turned, once it stands so; left out where it does not. */
  readonly turn?: Turn;
  /** The text that asks for it. */
  readonly cause: Located<unknown>;
}

/** A door before the carcass, closed. */
export interface PlacedDoor extends PlacedFront {
  /** The hand on which it is hung, and the key of the upright that carries it. */
  readonly hung: Hand;
  readonly upright: string;
}

/** The doors in the order of their places. One that finds no room is left out, and told. */
export function placeDoors(box: Box, places: readonly FrontPlace[], problems: Problems): readonly PlacedDoor[] {
  let number = 0;
  return places.flatMap((place) => {
    const { x, z, cause } = place;
    const hands = HANDS[place.kind];
    const runs = partedIn(hands.length, x, box.spec.doors.gap.value);
    return hands.flatMap((hung, i): readonly PlacedDoor[] => {
      number += 1;
      const front = frontAt(box, keyOf('door', number), { x: runs[i]!, z, cause }, problems);
      return front === null ? [] : [{ ...front, hung, upright: place[hung] }];
    });
  });
}

/** The fixed fronts in the order of their places. One that finds no room is left out, and told. */
export function placeFixed(box: Box, places: readonly FrontPlace[], problems: Problems): readonly PlacedFront[] {
  return places
    .filter(({ kind }) => kind === 'fixed')
    .flatMap((place, i) => frontAt(box, keyOf('fixed', i + 1), place, problems) ?? []);
}

/** The front of a key in its place; null where there is no room. `usual` names its board where nothing is said of it alone. */
export function frontAt(
  box: Box,
  key: string,
  { x, z, cause }: Pick<FrontPlace, 'x' | 'z' | 'cause'>,
  problems: Problems,
  usual = box.spec.doors.board,
): PlacedFront | null {
  if (extent(x) <= 0 && blindHands(box.spec).length > 0) {
    problems.add(cause, say.frontBehindBlind({ front: key }));
    return null;
  }
  const board = boardFor(box.spec, box.shop, key, usual);
  if (z === null || !hasRoom(box, key, board, { x, z }, cause, problems)) return null;
  const { diagonal } = box;
  if (diagonal === null) return { key, board, x, z, front: facePlane(box, board), cause };
  const { at } = diagonal.turn;
  const along = { from: at.x + x.from, to: at.x + x.to };
  return { key, board, x: along, z, front: at.y + facePlane(box, board), turn: diagonal.turn, cause };
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
