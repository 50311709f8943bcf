import { otherHand } from '../../carcass/hands.js';
import type { Hand } from '../../shop/model.js';
import type { Handedness } from '../../carcass/model.js';

type End = 'reference-end' | 'far-end';

/**
 * The hand on which an end lies when the front edge is against the fence. With the outside face down, t points up; with a
 * far fence u points to the operator; v = t x u then points to the right for a right-handed panel frame, so its reference
 * end lies left. Each of the three turned about turns the answer about.
 */
export function handOfEnd(end: End, down: 'inside' | 'outside', panel: Handedness, fence: 'far' | 'near'): Hand {
  let hand: Hand = 'left';
  if (down === 'inside') hand = otherHand(hand);
  if (panel === 'left') hand = otherHand(hand);
  if (fence === 'near') hand = otherHand(hand);
  return end === 'reference-end' ? hand : otherHand(hand);
}

/**
 * The hand on which the front edge lies when an end is against the fence, the panel turned by a quarter. With the outside face
 * down and a right-handed frame, v = t x u; the reference end at a far fence has v point to the operator and u to the left, so
 * the front edge lies right. Each of the three turned about turns the answer about, and so does the other end.
 */
export function handOfFrontAtFence(
  end: End,
  down: 'inside' | 'outside',
  panel: Handedness,
  fence: 'far' | 'near',
): Hand {
  return otherHand(handOfEnd(end, down, panel, fence));
}

/**
 * The hand on which the front edge lies when an end is pressed away from the operator against a horizontal head. Far end
 * away: v points away, and u = v x t points to the right for a right-handed frame with the outside face down, so the front
 * edge lies left.
 */
export function handOfFrontEdge(pressed: End, down: 'inside' | 'outside', panel: Handedness): Hand {
  let hand: Hand = 'left';
  if (down === 'inside') hand = otherHand(hand);
  if (panel === 'left') hand = otherHand(hand);
  return pressed === 'far-end' ? hand : otherHand(hand);
}
