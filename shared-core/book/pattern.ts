/** What a pattern of spindles has to serve; all in whole pitches from the first place of a joint. */
export interface PatternTask {
  /** Spindles of the head for ends. */
  readonly spindles: number;
  /** Last spindle over wood, joint by joint of those that are usual; 0 where there is room for one alone. */
  readonly rooms: readonly number[];
  /** Greatest distance between neighbours. */
  readonly longest: number;
  /** Greatest distance from the last bore of a joint to the last spindle over wood. */
  readonly tail: number;
  /** Spindles that carry a bit in any case (true), or in no case (false). */
  readonly pinned?: ReadonlyMap<number, boolean>;
}

/** A load with what it costs. */
export interface Pattern {
  readonly load: readonly number[];
  readonly cost: Cost;
}

/** Dowels in all usual joints, then pitches behind their last bores. Sums of costs compare as their parts do. */
export type Cost = readonly [dowels: number, behind: number];

/**
 * The spindles that carry a bit, so that one load serves every room from either hand: what lies over wood is bored, what lies
 * over air does nothing, and the load reads the same from both ends of the head. Spindle 0 carries one. A room for two gets two.
 * Of all such loads it has the fewest dowels in the rooms together, then the fewest pitches behind the last ones.
 * A shortest path: each step of the near half is made in the far half too, and what both cost depends on the step alone.
 * @returns null where no load serves all rooms.
 */
export function sharedPattern(task: PatternTask): Pattern | null {
  const { spindles } = task;
  if (spindles < 1) return null;
  const last = spindles - 1;
  const costs = new Costs(task);
  const { must, never } = pinnedPairs(task);
  if (never.has(0)) return null;
  const passes = (from: number, to: number): boolean => must.every((k) => k <= from || k >= to);

  const best: ({ cost: Cost; path: readonly number[] } | null)[] = [{ cost: [costs.bits(0), 0], path: [0] }];
  for (let k = 1; k <= last - k; k++) {
    best.push(null);
    if (never.has(k)) continue;
    for (let from = 0; from < k; from++) {
      const before = best[from];
      const open = passes(from, k) ? costs.bothBehind(from, k) : null;
      if (!before || open === null) continue;
      const cost: Cost = [before.cost[0] + costs.bits(k), before.cost[1] + open];
      if (isLess(cost, best[k]?.cost)) best[k] = { cost, path: [...before.path, k] };
    }
  }

  let chosen: { cost: Cost; path: readonly number[] } | null = null;
  for (const [k, way] of best.entries()) {
    const open = k === last - k ? 0 : costs.behind(k, last - k);
    if (way === null || open === null || !passes(k, Infinity)) continue;
    const cost: Cost = [way.cost[0], way.cost[1] + open];
    if (isLess(cost, chosen?.cost)) chosen = { cost, path: way.path };
  }
  if (chosen === null) return null;
  const { path, cost } = chosen;
  return { load: ascending([...path, ...path.map((k) => last - k)]), cost };
}

/**
 * A load for joints that stand back to back with joints of another, so that it shares no spindle with it: as few spindles as
 * keep neighbours within the longest distance, where that can be, and the same from both ends of the head.
 * @param never further spindles that carry no bit
 */
export function besideLoad(
  load: readonly number[],
  { spindles, longest }: Pick<PatternTask, 'spindles' | 'longest'>,
  never: readonly number[] = [],
): readonly number[] {
  const last = spindles - 1;
  const taken = new Set([...load, ...never].flatMap((k) => [k, last - k]));
  const free = Array.from({ length: Math.ceil(spindles / 2) }, (_, k) => k).filter((k) => !taken.has(k));
  const near: number[] = [];
  // Each step goes as far as it may: no other way needs fewer.
  for (let at = free[0]; at !== undefined;) {
    const from = at;
    near.push(from);
    at = free.findLast((k) => k > from && k <= from + longest) ?? free.find((k) => k > from);
  }
  return ascending(near.flatMap((k) => [k, last - k]));
}

const ascending = (spindles: readonly number[]): readonly number[] => [...new Set(spindles)].sort((a, b) => a - b);

/** The pinned spindles, each as the one of its pair that stands nearer to spindle 0; one that is pinned both ways is never there. */
function pinnedPairs({ spindles, pinned }: PatternTask): { must: readonly number[]; never: ReadonlySet<number> } {
  const must: number[] = [];
  const never = new Set<number>();
  for (const [k, there] of pinned ?? []) {
    const pair = Math.min(k, spindles - 1 - k);
    if (there) must.push(pair);
    else never.add(pair);
  }
  return { must, never };
}

/** What bits and steps cost in all rooms. */
class Costs {
  readonly #reached: readonly number[];
  readonly #last: number;
  readonly #task: PatternTask;

  constructor(task: PatternTask) {
    this.#task = task;
    this.#last = task.spindles - 1;
    this.#reached = task.rooms.map((room) => Math.min(room, this.#last));
  }

  /** Dowels of a spindle and its image, in all rooms. */
  bits(k: number): number {
    const bit = (at: number): number => this.#reached.filter((room) => at <= room).length;
    return bit(k) + (k === this.#last - k ? 0 : bit(this.#last - k));
  }

  /** Pitches left open where a room ends between two neighbours; null where a room cannot have these neighbours. */
  behind(a: number, b: number): number | null {
    const { longest, tail } = this.#task;
    let sum = 0;
    for (const room of this.#reached) {
      if (room < a) continue;
      if (room >= b && b - a > longest) return null;
      if (room >= b) continue;
      if (room - a > tail || (a === 0 && room > 0)) return null;
      sum += room - a;
    }
    return sum;
  }

  bothBehind(a: number, b: number): number | null {
    const [near, far] = [this.behind(a, b), this.behind(this.#last - b, this.#last - a)];
    return near === null || far === null ? null : near + far;
  }
}

export function isLess(a: Cost, b: Cost | undefined): boolean {
  return b === undefined || a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);
}
