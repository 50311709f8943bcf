import type { Derived } from '../derived/derived.js';
import type { Fitting } from '../fittings/kinds.js';
import type { Micrometres } from '../length/units.js';
import type { HorizontalHead, Shop, VerticalHead } from '../shop/model.js';
import { answerOf } from '../shop/watched.js';
import { bookFor, type Book, type SharedLoad } from './loads.js';
import { lastIn, loadTask, usualClearDepth, type LoadTask } from './usual.js';

export type { Book, SharedLoad };

/**
 * The loads of bits that joints of a shop share on both of its heads, held by a fitting; null where the heads have unlike
 * pitches, or no load serves usual joints. A load that the owner wrote is taken as it stands.
 */
export function sharedBook(
  faces: VerticalHead,
  ends: HorizontalHead,
  shop: Shop,
  fitting: Fitting,
  derived: Derived,
): Book | null {
  const task = loadTask(faces, ends, shop, fitting);
  return task && bookOf(task, derived);
}

const bookOf = (task: LoadTask, derived: Derived): Book | null => derived.answer(bookFor, task, JSON.stringify(task));

/** The same for a carcass of a depth: the load that is made for it, or else the one that holds it with the fewest dowels. */
export function sharedLoad(
  faces: VerticalHead,
  ends: HorizontalHead,
  shop: Shop,
  fitting: Fitting,
  depth: Micrometres,
  derived: Derived,
): SharedLoad | null {
  const name = ['load', faces.name, ends.name, fitting.name, depth].join('\n');
  // Times bear on the loads only where they bring about others.
  return answerOf(shop, name, (asked) => loadFor(faces, ends, asked, fitting, depth, derived));
}

function loadFor(
  faces: VerticalHead,
  ends: HorizontalHead,
  shop: Shop,
  fitting: Fitting,
  depth: Micrometres,
  derived: Derived,
): SharedLoad | null {
  const task = loadTask(faces, ends, shop, fitting);
  const book = task && bookOf(task, derived);
  if (!task || !book) return null;
  const [first, ...others] = book.loads;
  const made = book.loads.find(({ depths }) => depths.includes(depth));
  if (made || others.length === 0) return made ?? first ?? null;
  const room = lastIn(usualClearDepth(depth, shop), task.places);
  const held = book.loads.flatMap((load) => {
    const places = load.load.filter((k) => k <= room);
    return holds(places, room, task) ? [{ load, dowels: places.length }] : [];
  });
  return held.sort((a, b) => a.dowels - b.dowels)[0]?.load ?? first!;
}

/** Whether places of a load hold a joint whose last place is `room`. */
function holds(places: readonly number[], room: number, { longest, tail }: LoadTask): boolean {
  const isNear = places.every((k, index) => index === 0 || k - places[index - 1]! <= longest);
  return places.length >= Math.min(2, room + 1) && isNear && room - places.at(-1)! <= tail;
}
