import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { VerticalHead } from '../../shop/model.js';
import type { Blank } from '../set-up.js';
import { loadFor } from './load.js';
import { planLines, type Found, type LinePlan, type Obstacle } from './lines.js';
import { say } from './messages.js';
import { modulo, offsetsFor, outside } from './numbers.js';
import { within } from '../../schema/in-span.js';
import type { Way } from './operation.js';
import { handOfEnd } from './orientation.js';

/** A line this near to the far end belongs to the horizontal that closes the box there and is set out from that end. */
const BELONGS_TO_END: Micrometres = 64_000;

/**
 * Construction bores in faces on a vertical head: all bores of one face that stand at one v, one depth and one pitch are one
 * line under the head, made in one stroke. Diameters may differ from spindle to spindle.
 * @param allowance how far a bit goes on beyond a bore that goes through
 * @param preferredOffset the fence offset to take where the places allow several: the shop's usual first bore.
 */
export function faceOperations(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  head: VerticalHead,
  preferredOffset: Micrometres,
  allowance: Micrometres,
): Found {
  const keyOf = (bore: Bore): string => `${bore.v}|${modulo(bore.u, head.pitch)}`;
  return planLines({ carcass, panel, blank, allowance }, head, bores, keyOf, (line, first): LinePlan | Obstacle => {
    const places = line.map((bore) => bore.u);
    const offsets = offsetsFor(places, head.pitch, head.spindles, head.fenceOffset);
    const offset = offsets.includes(preferredOffset) ? preferredOffset : offsets[0];
    if (offset === undefined) {
      const deepest = Math.max(...places);
      const most = head.fenceOffset.max + (head.spindles - 1) * head.pitch;
      if (deepest > most) {
        const reason = say.faceTooFar({ machine: head.name, spindles: head.spindles, most, needed: deepest });
        return { parameter: 'spindles', needed: deepest, reason };
      }
      const reason = say.fenceOffset({ machine: head.name, range: head.fenceOffset, needed: first.u });
      return { parameter: 'fence-offset', needed: first.u, reason };
    }
    const wanted = line.map((bore) => ({ head: 0, spindle: (bore.u - offset) / head.pitch, bore }));
    const load = loadFor(head, wanted, ({ spindle }) => outside(offset + spindle * head.pitch, panel.width));
    const bored = first.face as 'inside' | 'outside';
    const opposite = bored === 'inside' ? 'outside' : 'inside';
    const down = head.from === 'above' ? opposite : bored;
    const wayFrom = (end: Way['end']): Way => ({
      down,
      end,
      side: handOfEnd(end, down, blank.hand, head.fence),
      position: end === 'reference-end' ? first.v : panel.length - first.v,
      strokes: [{ moved: 0, wanted }],
      extent: panel.length,
      load,
    });
    const fromFarEnd = panel.length - first.v < Math.min(first.v, BELONGS_TO_END);
    const ends = fromFarEnd ? (['far-end', 'reference-end'] as const) : (['reference-end', 'far-end'] as const);
    const tries = ends.map(wayFrom);
    const way = firstReachable(tries, head);
    if (way) return { fence: [offset], height: null, ways: [way] };
    const { side, position: needed } = tries.reduce((a, b) => (b.position < a.position ? b : a));
    return { parameter: 'stops', needed, reason: say.faceStops({ machine: head.name, side, needed }) };
  });
}

/**
 * The first way that a stop serves, without the extension if any can do without. Only that one is offered: left and right
 * panels must be set out from the same end, or a difference in their lengths would set their joints out of level.
 */
function firstReachable(ways: readonly Way[], head: VerticalHead): Way | undefined {
  const served = (way: Way, extension: Micrometres): boolean =>
    head.stops.some(
      (s) => s.side === way.side && within(way.position, { min: s.range.min, max: s.range.max + extension }),
    );
  return ways.find((way) => served(way, 0)) ?? ways.find((way) => served(way, head.extension));
}
