import type { Micrometres } from '../../length/units.js';
import type { LineDrill } from '../../shop/model.js';
import type { Obstacle } from './lines.js';
import { say } from './messages.js';
import { within } from '../../schema/in-span.js';

/** Fence to each head that is set, front to rear, and the index of the head that stands over each row. */
export interface HeadPlaces {
  readonly fence: readonly Micrometres[];
  readonly over: readonly number[];
}

/**
 * Where the heads of a line drill stand so that there is one over each of one or two rows. The first head keeps to its
 * setback range and each further one to the head distance; heads between carry no bits. A single row too deep for the first
 * head is bored by a later one, the first standing at the usual setback or as near to it as can be.
 * @param rows Distances from the front edge, ascending.
 */
export function headsOver(
  rows: readonly Micrometres[],
  drill: LineDrill,
  usualSetback: Micrometres,
): HeadPlaces | Obstacle {
  const front = rows[0] ?? 0;
  const deepest = rows.at(-1) ?? front;
  const machine = drill.name;
  if (deepest > drill.throat) {
    const reason = say.throat({ machine, most: drill.throat, needed: deepest });
    return { parameter: 'throat', needed: deepest, reason };
  }
  const distance = drill.headDistance ?? { min: 1, max: drill.throat };
  if (rows.length === 1 && within(front, drill.setback)) return { fence: [front], over: [0] };
  const outOfSetback = { machine, range: drill.setback, needed: front };
  if (rows.length > 2 || drill.heads < 2)
    return { parameter: 'heads', needed: null, reason: say.heads({ ...outOfSetback, heads: drill.heads }) };
  if (rows.length === 2 && !within(front, drill.setback))
    return { parameter: 'setback', needed: front, reason: say.setback(outOfSetback) };
  for (let head = 1; head < drill.heads; head += 1) {
    const least = rows.length === 2 ? front : Math.max(drill.setback.min, deepest - head * distance.max);
    const most = rows.length === 2 ? front : Math.min(drill.setback.max, deepest - head * distance.min);
    if (least > most) continue;
    const setback = Math.min(Math.max(usualSetback, least), most);
    const apart = deepest - setback;
    if (apart < head * distance.min || apart > head * distance.max) continue;
    const fence = Array.from({ length: head + 1 }, (_, k) => setback + Math.floor((apart * k) / head));
    return { fence, over: rows.length === 2 ? [0, head] : [head] };
  }
  if (rows.length === 1) return { parameter: 'setback', needed: front, reason: say.setback(outOfSetback) };
  const apart = deepest - front;
  return {
    parameter: 'head-distance',
    needed: apart,
    reason: say.headDistance({ machine, range: distance, needed: apart }),
  };
}
