import type { Bed } from './lie.js';
import { bestStrip, type Strip } from './strip.js';

/** The strips of one sheet, from its corner. */
export interface SheetPattern {
  readonly bed: Bed;
  readonly strips: readonly Strip[];
  readonly value: number;
  /** Copies of each piece. */
  readonly counts: readonly number[];
}

interface Begun {
  readonly strips: readonly Strip[];
  readonly left: readonly number[];
  readonly room: number;
  readonly value: number;
  /** Value, and what the room left over would be worth at the usual worth of its area. */
  readonly promise: number;
}

/**
 * A valuable pattern of one sheet out of what is left of each piece: strips one after the other, the `width` most promising
 * beginnings kept at each step (beam search). Copies are never exceeded; each piece fits.
 */
export function goodPattern(bed: Bed, left: readonly number[], values: readonly number[], width: number): SheetPattern {
  let best: Begun = { strips: [], left, room: bed.rise, value: 0, promise: 0 };
  let beam: Begun[] = [best];
  const strips = new Map<string, Strip>();
  while (beam.length > 0) {
    const next: Begun[] = [];
    for (const begun of beam)
      for (const rise of risesFor(bed, begun, values)) {
        const key = `${rise}|${begun.left.join()}`;
        const strip = strips.get(key) ?? bestStrip(bed, rise, begun.left, values);
        strips.set(key, strip);
        if (strip.value > 0) next.push(grown(bed, begun, strip));
      }
    for (const begun of next) if (begun.value > best.value) best = begun;
    beam = distinct(next.sort((a, b) => b.promise - a.promise || b.value - a.value)).slice(0, width);
  }
  return { bed, strips: best.strips, value: best.value, counts: left.map((count, i) => count - best.left[i]!) };
}

/** So many rises are tried at each step: those of the pieces that are worth most, which are the hardest to place later. */
const RISES = 10;

/** The rises that a next strip may have: those of the most valuable pieces left, and all the room that there is. */
function risesFor(bed: Bed, { left, room }: Begun, values: readonly number[]): readonly number[] {
  const most = Math.min(room, bed.highest);
  const worth = new Map<number, number>();
  for (const { lies } of bed.columns)
    for (const { piece, rise } of lies)
      if (left[piece]! > 0 && rise <= most) worth.set(rise, Math.max(worth.get(rise) ?? 0, values[piece]!));
  const rises = [...worth].sort((a, b) => b[1] - a[1] || b[0] - a[0]).map(([rise]) => rise);
  const tried = new Set(rises.slice(0, RISES));
  if (rises.length > 0 && bed.stages === 3) tried.add(most);
  return [...tried];
}

function grown(bed: Bed, begun: Begun, strip: Strip): Begun {
  const left = begun.left.slice();
  for (const { lies } of strip.stacks) for (const { piece } of lies) left[piece] = left[piece]! - 1;
  const room = begun.room - strip.rise;
  const value = begun.value + strip.value;
  return { strips: [...begun.strips, strip], left, room, value, promise: value / (bed.rise - room) };
}

function distinct(begun: readonly Begun[]): Begun[] {
  const seen = new Set<string>();
  return begun.filter(({ left, room }) => {
    const key = `${room}|${left.join()}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
