/** A priority queue (binary heap). `sooner(a, b)` says that a comes out before b; make it a total order for determinism. */
export class Heap<T> {
  readonly #items: T[] = [];

  readonly #sooner: (a: T, b: T) => boolean;

  constructor(sooner: (a: T, b: T) => boolean) {
    this.#sooner = sooner;
  }

  get size(): number {
    return this.#items.length;
  }

  /** What is queued, in no order that means anything. */
  values(): readonly T[] {
    return this.#items;
  }

  push(item: T): void {
    const items = this.#items;
    let at = items.length;
    items.push(item);
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!this.#sooner(item, items[above]!)) break;
      items[at] = items[above]!;
      at = above;
    }
    items[at] = item;
  }

  pop(): T | undefined {
    const items = this.#items;
    const top = items[0];
    const last = items.pop();
    if (last === undefined || items.length === 0) return top;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= items.length) break;
      if (below + 1 < items.length && this.#sooner(items[below + 1]!, items[below]!)) below += 1;
      if (!this.#sooner(items[below]!, last)) break;
      items[at] = items[below]!;
      at = below;
    }
    items[at] = last;
    return top;
  }
}
