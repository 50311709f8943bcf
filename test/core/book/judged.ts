import type { PatternTask } from '../../../shared-core/book/pattern.js';

/** What a load bores into a panel whose last spindle over wood is `room`, with its front edge at the left or the right stop. */
function boredBy(load: ReadonlySet<number>, spindles: number, room: number, hand: 'left' | 'right'): number[] {
  const places = Array.from({ length: Math.min(room, spindles - 1) + 1 }, (_, place) => place);
  return places.filter((place) => load.has(hand === 'left' ? place : spindles - 1 - place));
}

/** Dowels and pitches behind the last ones, in all rooms; null where a room is bored unlike from left and right, or held badly. */
export function judged(
  load: ReadonlySet<number>,
  { spindles, rooms, longest, tail }: PatternTask,
): [number, number] | null {
  let [dowels, behind] = [0, 0];
  for (const room of rooms) {
    const bored = boredBy(load, spindles, room, 'left');
    if (String(bored) !== String(boredBy(load, spindles, room, 'right'))) return null;
    const open = Math.min(room, spindles - 1) - bored.at(-1)!;
    if (bored[0] !== 0 || (room > 0 && spindles > 1 && bored.length < 2) || open > tail) return null;
    if (bored.some((place, index) => index > 0 && place - bored[index - 1]! > longest)) return null;
    dowels += bored.length;
    behind += open;
  }
  return [dowels, behind];
}
