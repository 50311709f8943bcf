import type { Bore } from '../../boring/model.js';
import { otherHand } from '../../carcass/hands.js';
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
import { handOfEnd, handOfFrontAtFence } from './orientation.js';

/** A line this near to the far end belongs to the horizontal that closes the box there and is set out from that end. */
const BELONGS_TO_END: Micrometres = 64_000;

/**
 * Construction bores in faces on a vertical head: all bores of one face that stand in one line under the head, of one depth and
 * one pitch, are made in one stroke. Diameters may differ from spindle to spindle. Lines run across the panel, at one v; those of
 * joints that run along it, at one u, are bored with the panel turned by a quarter, an end against the fence.
 * @param alongPanel ids of the joints that run along the panel
 * @param allowance how far a bit goes on beyond a bore that goes through
 * @param preferredOffset the fence offset to take where the places allow several: the shop's usual first bore.
 */
export function faceOperations(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  alongPanel: ReadonlySet<string>,
  head: VerticalHead,
  preferredOffset: Micrometres,
  allowance: Micrometres,
): Found {
  const where = { carcass, panel, blank, allowance };
  const [along, across] = [true, false].map((is) => bores.filter(({ group }) => alongPanel.has(group) === is));
  const found = [across!, along!].map((some) => {
    const lies = some === along ? turned(panel, blank, head) : square(panel, blank, head);
    const keyOf = (bore: Bore): string => `${lies.atStop(bore)}|${modulo(lies.underHead(bore), head.pitch)}`;
    return planLines(where, head, some, keyOf, (line, first) => planLine(head, lies, line, first, preferredOffset));
  });
  return {
    operations: found.flatMap(({ operations }) => operations),
    unreachable: found.flatMap(({ unreachable }) => unreachable),
  };
}

/** One of the ways that a panel may lie for a line of bores: what of a bore counts in which direction. */
interface Lies {
  /** From the fence, along the line of spindles. */
  readonly underHead: (bore: Bore) => Micrometres;
  /** From the reference end or the front edge, along the fence. */
  readonly atStop: (bore: Bore) => Micrometres;
  /** How far the panel reaches from the fence, and along it. */
  readonly deep: Micrometres;
  readonly extent: Micrometres;
  /** How it can be laid for a line at a stop, best first. */
  readonly laid: (at: Micrometres, down: Way['down']) => readonly Laid[];
}

type Laid = Pick<Way, 'edge' | 'end' | 'side' | 'position'> & {
  /** Where a bore lies from the fence. */
  readonly fromFence: (bore: Bore) => Micrometres;
};

/**
 * Across the table as usual, the front edge at the fence. A panel with a cut corner has no front that anything is flush with, so its
 * back edge may lie there where the spindles do not reach from the front.
 */
function square({ length, width, corner }: Panel, { hand }: Blank, { fence }: VerticalHead): Lies {
  const edges = corner === undefined ? (['front'] as const) : (['front', 'back'] as const);
  return {
    underHead: ({ u }) => u,
    atStop: ({ v }) => v,
    deep: width,
    extent: length,
    laid: (at, down) => {
      const fromFarEnd = length - at < Math.min(at, BELONGS_TO_END);
      const ends = fromFarEnd ? (['far-end', 'reference-end'] as const) : (['reference-end', 'far-end'] as const);
      return edges.flatMap((edge) =>
        ends.map((end): Laid => {
          const side = handOfEnd(end, down, hand, fence);
          return {
            edge,
            end,
            side: edge === 'front' ? side : otherHand(side),
            position: end === 'reference-end' ? at : length - at,
            fromFence: ({ u }) => (edge === 'front' ? u : width - u),
          };
        }),
      );
    },
  };
}

/** Turned by a quarter: the front edge stays the reference, now at the stop; either end may lie at the fence. */
function turned({ length, width }: Panel, { hand }: Blank, { fence }: VerticalHead): Lies {
  return {
    underHead: ({ v }) => v,
    atStop: ({ u }) => u,
    deep: length,
    extent: width,
    laid: (at, down) =>
      (['reference-end', 'far-end'] as const).map((edge) => ({
        edge,
        end: 'front',
        side: handOfFrontAtFence(edge, down, hand, fence),
        position: at,
        fromFence: ({ v }) => (edge === 'reference-end' ? v : length - v),
      })),
  };
}

function planLine(
  head: VerticalHead,
  lies: Lies,
  line: readonly Bore[],
  first: Bore,
  preferredOffset: Micrometres,
): LinePlan | Obstacle {
  const bored = first.face as 'inside' | 'outside';
  const opposite = bored === 'inside' ? 'outside' : 'inside';
  const down = head.from === 'above' ? opposite : bored;
  const tries = lies.laid(lies.atStop(first), down).map((laid) => {
    const offsets = offsetsFor(line.map(laid.fromFence), head.pitch, head.spindles, head.fenceOffset);
    return { laid, offset: offsets.includes(preferredOffset) ? preferredOffset : offsets[0] };
  });
  const able = tries.flatMap(({ laid, offset }) => {
    if (offset === undefined) return [];
    const wanted = line.map((bore) => ({ head: 0, spindle: (laid.fromFence(bore) - offset) / head.pitch, bore }));
    const { edge, end, side, position } = laid;
    const way: Way = {
      down,
      edge,
      end,
      side,
      position,
      strokes: [{ moved: 0, wanted }],
      extent: lies.extent,
      load: loadFor(head, wanted, ({ spindle }) => outside(offset + spindle * head.pitch, lies.deep)),
    };
    return [{ offset, way }];
  });
  if (able.length === 0) return tooFar(head, lies, line);
  const ways = able.map((one) => one.way);
  const way = firstReachable(ways, head);
  if (way) return { fence: [able.find((one) => one.way === way)!.offset], height: null, ways: [way] };
  const { side, position: needed } = ways.reduce((a, b) => (b.position < a.position ? b : a));
  return { parameter: 'stops', needed, reason: say.faceStops({ machine: head.name, side, needed }) };
}

/** What stands in the way of a line for which the fence has no place. */
function tooFar(head: VerticalHead, { underHead }: Lies, line: readonly Bore[]): Obstacle {
  const deepest = Math.max(...line.map(underHead));
  const most = head.fenceOffset.max + (head.spindles - 1) * head.pitch;
  if (deepest > most) {
    const reason = say.faceTooFar({ machine: head.name, spindles: head.spindles, most, needed: deepest });
    return { parameter: 'spindles', needed: deepest, reason };
  }
  const needed = underHead(line[0]!);
  const reason = say.fenceOffset({ machine: head.name, range: head.fenceOffset, needed });
  return { parameter: 'fence-offset', needed, reason };
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
