import { Heap } from '../../../shared-core/machining/heap.js';
import { boundsOf, byDensity, poured } from './bounds.js';
import type { OneSheet, Pattern, Rectangle } from './problem.js';

export interface BestSheet {
  /** null where nothing fits. */
  readonly pattern: Pattern | null;
  readonly value: number;
  /** No pattern is worth more; equal to `value` where the search came to its end. */
  readonly bound: number;
}

interface Block {
  readonly pattern: Pattern;
  readonly value: number;
  /** What the whole sheet can be worth with this block in its corner. */
  readonly promise: number;
  readonly counts: readonly number[];
}

/**
 * The most valuable guillotine pattern of one sheet, with no more copies of a piece than are wanted and any number of stages.
 * Blocks are put together from below, the most promising first, until none promises more than the best found (best-first
 * search of Viswanathan and Bagchi 1993). Sizes are whole numbers of a coarse unit: the tables grow with their sums.
 * @param effort the number of blocks that may be looked at; with fewer than it takes, value and bound stay apart
 */
export function bestSheet(sheet: OneSheet, effort = 200_000): BestSheet {
  const { rectangles } = sheet;
  const search = new Search(sheet);
  rectangles.forEach((one, index) => {
    if (one.most < 1) return;
    const counts = rectangles.map((_, i) => (i === index ? 1 : 0));
    search.offer({ kind: 'rectangle', index, length: one.length, width: one.width }, one.value, counts);
  });
  return search.run(effort);
}

class Search {
  readonly #sheet: OneSheet;
  readonly #bounds;
  readonly #dense: readonly Rectangle[];
  readonly #open = new Heap<Block>(isSooner);
  readonly #closed: Block[] = [];
  /** For each set of copies the sizes of the blocks that hold it; a larger block with the same copies is of no use. */
  readonly #seen = new Map<string, Pattern[]>();
  #best: Block | null = null;

  constructor(sheet: OneSheet) {
    this.#sheet = sheet;
    this.#bounds = boundsOf(sheet);
    this.#dense = byDensity(sheet.rectangles);
  }

  run(effort: number): BestSheet {
    for (let looked = 0; looked < effort; looked += 1) {
      const block = this.#open.pop();
      if (block === undefined || block.promise <= this.#value()) return this.#result(this.#value());
      this.#closed.push(block);
      for (const other of this.#closed) this.#join(block, other);
    }
    return this.#result(Math.max(this.#value(), this.#open.pop()?.promise ?? 0));
  }

  offer(pattern: Pattern, value: number, counts: readonly number[]): void {
    const promise = this.#promise(pattern, value, counts);
    if (promise < 0 || (promise <= this.#value() && this.#best !== null)) return;
    if (this.#isKnown(pattern, counts)) return;
    const block = { pattern, value, promise, counts };
    if (this.#best === null || value > this.#best.value) this.#best = block;
    this.#open.push(block);
  }

  #value(): number {
    return this.#best?.value ?? 0;
  }

  #result(bound: number): BestSheet {
    return { pattern: this.#best?.pattern ?? null, value: this.#value(), bound };
  }

  #join(a: Block, b: Block): void {
    const { length, width } = this.#sheet;
    const beside = a.pattern.length + b.pattern.length <= length;
    const above = a.pattern.width + b.pattern.width <= width;
    if (!beside && !above) return;
    const counts = a.counts.map((count, i) => count + b.counts[i]!);
    if (counts.some((count, i) => count > this.#sheet.rectangles[i]!.most)) return;
    const value = a.value + b.value;
    const wider = Math.max(a.pattern.width, b.pattern.width);
    const longer = Math.max(a.pattern.length, b.pattern.length);
    const parts = { first: a.pattern, second: b.pattern };
    if (beside)
      this.offer(
        { kind: 'beside', ...parts, length: a.pattern.length + b.pattern.length, width: wider },
        value,
        counts,
      );
    if (above)
      this.offer({ kind: 'above', ...parts, length: longer, width: a.pattern.width + b.pattern.width }, value, counts);
  }

  #promise(pattern: Pattern, value: number, counts: readonly number[]): number {
    const { length, width, rectangles } = this.#sheet;
    if (pattern.length > length || pattern.width > width) return -1;
    const { along, across, outside } = this.#bounds;
    const around = outside(along.below(pattern.length), across.below(pattern.width));
    const left = new Map(rectangles.map((one, i) => [one, one.most - counts[i]!]));
    const area = length * width - pattern.length * pattern.width;
    const rest = poured(
      area,
      this.#dense.map((one) => ({ ...one, most: left.get(one)! })),
      () => true,
    );
    return value + Math.min(around, rest);
  }

  #isKnown(pattern: Pattern, counts: readonly number[]): boolean {
    const key = counts.join();
    const sizes = this.#seen.get(key);
    if (sizes === undefined) {
      this.#seen.set(key, [pattern]);
      return false;
    }
    if (sizes.some((one) => one.length <= pattern.length && one.width <= pattern.width)) return true;
    sizes.push(pattern);
    return false;
  }
}

/** The greater promise first; among equals the block that holds more already, so that the search comes to whole sheets soon. */
function isSooner(a: Block, b: Block): boolean {
  if (a.promise !== b.promise) return a.promise > b.promise;
  return a.value > b.value;
}
