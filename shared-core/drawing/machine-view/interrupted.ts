/** A stretch of one axis, `from` below `to`. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Places that must be seen, merged into stretches where less than `least` lies between them. Ascending. */
export function kept(stretches: readonly Stretch[], least: number): Stretch[] {
  const sorted = [...stretches].sort((a, b) => a.from - b.from || a.to - b.to);
  const merged: Stretch[] = [];
  for (const { from, to } of sorted) {
    const last = merged.at(-1);
    if (last !== undefined && (from <= last.to || from - last.to < least))
      merged[merged.length - 1] = { ...last, to: Math.max(last.to, to) };
    else merged.push({ from, to });
  }
  return merged;
}

/**
 * One axis of an interrupted view: true to scale along the kept stretches, while what lies between two of them is shortened
 * to `gap`. Rises with its argument, so that order and contact stay what they are.
 */
export class Interrupted {
  readonly #stretches: readonly Stretch[];
  readonly #gap: number;

  /** Where the page is broken, as page coordinates of the middle of each gap, ascending. */
  readonly breaks: readonly number[];
  readonly #starts: readonly number[];

  /** @param stretches ascending, apart from each other, at least one */
  constructor(stretches: readonly Stretch[], gap: number) {
    this.#stretches = stretches;
    this.#gap = gap;

    const starts: number[] = [];
    const breaks: number[] = [];
    let page = stretches[0]!.from;
    for (const { from, to } of stretches) {
      if (starts.length > 0) {
        breaks.push(page + gap / 2);
        page += gap;
      }
      starts.push(page);
      page += to - from;
    }
    this.#starts = starts;
    this.breaks = breaks;
  }

  /** Page coordinate of a place; beyond the first and the last stretch true to scale again. */
  at(place: number): number {
    const stretches = this.#stretches;
    const starts = this.#starts;
    for (let index = stretches.length - 1; index > 0; index -= 1) {
      const { from } = stretches[index]!;
      if (place >= from) return starts[index]! + (place - from);
      const before = stretches[index - 1]!;
      if (place > before.to) {
        const part = (place - before.to) / (from - before.to);
        return starts[index]! - this.#gap + part * this.#gap;
      }
    }
    return starts[0]! + (place - stretches[0]!.from);
  }

  leavesOut(place: number): boolean {
    const stretches = this.#stretches;
    return (
      place > stretches[0]!.to &&
      place < stretches.at(-1)!.from &&
      !stretches.some(({ from, to }) => from <= place && place <= to)
    );
  }

  /** Length on the page of all that is kept, breaks not counted. */
  static seen(stretches: readonly Stretch[]): number {
    return stretches.reduce((sum, { from, to }) => sum + to - from, 0);
  }
}
