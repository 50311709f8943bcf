import type { Hand } from '../shop/model.js';

export const HANDS: readonly Hand[] = ['left', 'right'];

export const otherHand = (hand: Hand): Hand => (hand === 'left' ? 'right' : 'left');

/** The hands that something is said of, from the left. */
export const handsSaid = (said: Readonly<Record<Hand, object | null>>): readonly Hand[] =>
  HANDS.filter((hand) => said[hand] !== null);
