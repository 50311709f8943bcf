import type { Micrometres } from '../../length/units.js';
import type { HoldingClamp } from '../../shop/model.js';
import type { Operation, PlannedStroke, Way } from './operation.js';

/** How the clamps of a machine come down on a panel: one with its whole pad, or only in part, or none of them at all. */
export type Held = 'held' | 'in-part' | 'not';

/**
 * How well a panel is held in the best of an operation's ways, over all strokes of it; 'held' on a machine without clamps in
 * the shop file, since nothing is known of how it holds.
 */
export function heldIn(operation: Operation): Held {
  if (clampsOf(operation).length === 0) return 'held';
  const inWays = operation.ways.map((way) => worst(way.strokes.map((stroke) => heldAt(operation, way, stroke))));
  return best(inWays);
}

export const clampsOf = ({ machine }: Operation): readonly HoldingClamp[] =>
  machine.kind === 'cup' ? [] : machine.clamps;

const best = (all: readonly Held[]): Held =>
  all.includes('held') ? 'held' : all.includes('in-part') ? 'in-part' : 'not';
const worst = (all: readonly Held[]): Held =>
  all.includes('not') ? 'not' : all.includes('in-part') ? 'in-part' : 'held';

/** How far the panel reaches away from the fence, or from the plate of a horizontal head. */
export const depthOnTable = ({ machine, blank, ways }: Operation): Micrometres =>
  machine.kind === 'horizontal' || isEnd(ways[0]?.edge) ? blank.length : blank.width;

const isEnd = (edge: Way['edge'] | undefined): boolean => edge === 'reference-end' || edge === 'far-end';

/** In the table frame of the set-up: X from the first spindle, and the distance from the fence. */
function heldAt(operation: Operation, way: Way, { moved }: PlannedStroke): Held {
  const { machine } = operation;
  const line = machine.kind === 'line' || machine.kind === 'horizontal' ? (machine.spindles - 1) * machine.pitch : 0;
  const from = moved + (way.side === 'left' ? -way.position : line + way.position - way.extent);
  const [to, deep] = [from + way.extent, depthOnTable(operation)];
  return best(
    clampsOf(operation).map(({ along, across, pad }) => {
      const inside = Math.min(along - from, to - along, across, deep - across);
      return 2 * inside >= pad ? 'held' : 2 * inside > -pad ? 'in-part' : 'not';
    }),
  );
}
