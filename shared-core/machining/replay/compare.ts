import type { Hole } from './bore.js';
import { HoleMap } from './hole-map.js';
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

/**
 * Holes made against bores wanted, as multisets: each bore once, and nothing else.
 * @returns null where they are the same.
 */
export function compareHoles<B extends Hole>(made: readonly Hole[], wanted: readonly B[]): Difference<B> | null {
  const left = new HoleMap<number>();
  for (const hole of made) left.set(hole, (left.get(hole) ?? 0) + 1);
  const missing = wanted.filter((bore) => !take(left, bore));
  const extra = made.filter((hole) => take(left, hole));
  if (missing.length === 0 && extra.length === 0) return null;
  const holes = { missing, extra };
  const tell = extra.length === 0 ? say.missing : missing.length === 0 ? say.extra : say.missingAndExtra;
  return { ...holes, message: tell(holes) };
}

function take(counts: HoleMap<number>, hole: Hole): boolean {
  const count = counts.get(hole) ?? 0;
  if (count > 0) counts.set(hole, count - 1);
  return count > 0;
}
