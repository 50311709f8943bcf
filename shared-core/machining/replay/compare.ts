import type { Hole } from './bore.js';
import { mm, sideWords } from './words.js';

/** Where the holes of a replay and the bores that were wanted part; both lists in a fixed order. */
export interface Difference<B extends Hole> {
  /** Wanted, but no stroke makes it. */
  readonly missing: readonly B[];
  /** Made, but not wanted. */
  readonly extra: readonly Hole[];
  /** One sentence with figures. */
  readonly message: string;
}

/** Two holes are one where the keys are equal. */
export const holeKey = ({ face, u, v, diameter, depth, through }: Hole): string =>
  `${face} ${u} ${v} ${diameter} ${through ? 'through' : depth}`;

/** A hole in words, for a difference. */
export const holeWords = ({ face, u, v, diameter, depth, through }: Hole): string =>
  `${mm(diameter)} ${through ? 'through' : `x ${mm(depth)}`} at ${mm(u)}, ${mm(v)} in the ${sideWords(face)}`;

/**
 * Holes made against bores wanted, as multisets: each bore once, and nothing else.
 * @returns null where they are the same.
 */
export function compareHoles<B extends Hole>(made: readonly Hole[], wanted: readonly B[]): Difference<B> | null {
  const left = new Map<string, number>();
  for (const hole of made) left.set(holeKey(hole), (left.get(holeKey(hole)) ?? 0) + 1);
  const missing = wanted.filter((bore) => !take(left, holeKey(bore)));
  const extra = made.filter((hole) => take(left, holeKey(hole)));
  if (missing.length === 0 && extra.length === 0) return null;
  const parts = [sayHoles('not bored', missing), sayHoles('bored but not wanted', extra)];
  return { missing, extra, message: parts.filter((part) => part !== null).join('; ') };
}

function take(counts: Map<string, number>, key: string): boolean {
  const count = counts.get(key) ?? 0;
  if (count > 0) counts.set(key, count - 1);
  return count > 0;
}

const SHOWN = 3;

function sayHoles(what: string, holes: readonly Hole[]): string | null {
  if (holes.length === 0) return null;
  const more = holes.length > SHOWN ? ` and ${holes.length - SHOWN} more` : '';
  return `${what}: ${holes.slice(0, SHOWN).map(holeWords).join(', ')}${more}`;
}
