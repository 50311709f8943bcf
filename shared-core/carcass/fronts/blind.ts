import type { Micrometres } from '../../length/units.js';
import type { Hand } from '../../shop/model.js';
import { handsSaid } from '../hands.js';
import type { Interval } from '../interval.js';
import type { CarcassSpec } from '../spec.js';

/** The hands on which a carcass is blind, from the left. */
export const blindHands = ({ blind }: Pick<CarcassSpec, 'blind'>): readonly Hand[] => handsSaid(blind);

/** How far from the outside of the side the edge of the blind panel stands: what is covered, and the strip that is seen. */
export function reachOf({ blind }: CarcassSpec, hand: Hand): Micrometres {
  const covered = blind[hand];
  return covered === null ? 0 : covered.value + blind.strip.value;
}

/** Between the edges of the blind panels, where fronts and what comes out of the carcass may be; as wide as the carcass without them. */
export function openFront(spec: CarcassSpec): Interval {
  return { from: reachOf(spec, 'left'), to: spec.width.value - reachOf(spec, 'right') };
}

/** A front between the blind panels, a gap off each. */
export function besideBlind(spec: CarcassSpec, { from, to }: Interval): Interval {
  const open = openFront(spec);
  const gap = spec.doors.gap.value;
  return {
    from: spec.blind.left === null ? from : Math.max(from, open.from + gap),
    to: spec.blind.right === null ? to : Math.min(to, open.to - gap),
  };
}
