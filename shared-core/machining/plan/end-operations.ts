import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { HorizontalHead } from '../../shop/model.js';
import type { Blank } from '../set-up.js';
import { loadFor } from './load.js';
import { planLines, type Found, type LinePlan, type Obstacle } from './lines.js';
import { say } from './messages.js';
import { modulo, offsetsFor, outside } from './numbers.js';
import { within } from '../../schema/in-span.js';
import type { Way } from './operation.js';
import { handOfFrontEdge } from './orientation.js';

/**
 * Construction bores in ends on a horizontal head. The outside face always lies down, so the height of the spindles is the
 * bore's distance from the outside face; the front edge always lies against a squaring stop. Turning the panel by half a
 * turn on the table brings the other end to the head and the front edge to the stop on the other hand.
 */
export function endOperations(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  head: HorizontalHead,
  preferredOffset: Micrometres,
): Found {
  const last = head.spindles - 1;
  const keyOf = (bore: Bore): string => `${bore.v}|${modulo(bore.u, head.pitch)}`;
  return planLines({ carcass, panel, blank, allowance: 0 }, head, bores, keyOf, (line, first): LinePlan | Obstacle => {
    if (!within(first.v, head.height)) {
      const reason = say.height({ machine: head.name, range: head.height, needed: first.v });
      return { parameter: 'height', needed: first.v, reason };
    }
    const pressed = first.face as 'reference-end' | 'far-end';
    const side = handOfFrontEdge(pressed, 'outside', blank.hand);
    const stops = head.stops.filter((stop) => stop.side === side);
    if (stops.length === 0) {
      const reason = say.noSquaringStop({ machine: head.name, side });
      return { parameter: 'stops', needed: null, reason };
    }
    const places = line.map((bore) => bore.u);
    const offsets = new Set(stops.flatMap((stop) => offsetsFor(places, head.pitch, head.spindles, stop.range)));
    // Counted from the stop: spindle 0 on the left hand, the last spindle on the right.
    const counted = (place: number): number => (side === 'left' ? place : last - place);
    const ways = [...offsets]
      .sort((a, b) => Number(b === preferredOffset) - Number(a === preferredOffset) || a - b)
      .map((offset): Way => {
        const wanted = line.map((bore) => ({ head: 0, spindle: counted((bore.u - offset) / head.pitch), bore }));
        return {
          down: 'outside',
          edge: 'front',
          end: pressed,
          side,
          position: offset,
          strokes: [{ moved: 0, wanted }],
          extent: panel.width,
          load: loadFor(head, wanted, ({ spindle }) => outside(offset + counted(spindle) * head.pitch, panel.width)),
        };
      });
    if (ways.length > 0) return { fence: [], height: first.v, ways };
    const deepest = Math.max(...places);
    const most = Math.max(...stops.map(({ range }) => range.max)) + last * head.pitch;
    if (deepest > most) {
      const reason = say.endTooFar({ machine: head.name, spindles: head.spindles, most, needed: deepest });
      return { parameter: 'spindles', needed: deepest, reason };
    }
    const reason = say.squaringStops({ machine: head.name, side, needed: first.u });
    return { parameter: 'stops', needed: first.u, reason };
  });
}
