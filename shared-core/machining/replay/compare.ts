import type { Hole } from './bore.js';
import type { Message } from '../../words/message.js';
import { say } from './messages.js';

/** Where the holes of a replay and the bores that were wanted part; both lists in a fixed order. */
export interface Difference<B extends Hole> {
  /** Wanted, but no stroke makes it. */
  readonly missing: readonly B[];
  /** Made, but not wanted. */
  readonly extra: readonly Hole[];
  /** Whole sentences with figures. */
  readonly message: Message;
}

/** Two holes are one where the keys are equal. */
export const holeKey = ({ face, u, v, diameter, depth, through }: Hole): string =>
  `${face} ${u} ${v} ${diameter} ${through ? 'through' : depth}`;

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
  const holes = { missing, extra };
  const tell = extra.length === 0 ? say.missing : missing.length === 0 ? say.extra : say.missingAndExtra;
  return { ...holes, message: tell(holes) };
}

function take(counts: Map<string, number>, key: string): boolean {
  const count = counts.get(key) ?? 0;
  if (count > 0) counts.set(key, count - 1);
  return count > 0;
}
