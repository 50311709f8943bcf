/** What loads of a head have to serve; all in whole pitches from the first place of a joint. */
export interface PatternTask {
  /** Spindles of the head for ends. */
  readonly spindles: number;
  /** Last spindle over wood, joint by joint of those that are usual; 0 where there is room for one alone. */
  readonly rooms: readonly number[];
  /** How often a dowel in each of these rooms counts; once where nothing is said. */
  readonly weights?: readonly number[];
  /** The same of joints that may stand back to back with others: these get a load beside the first one. */
  readonly backToBack?: readonly number[];
  /** Greatest distance between neighbours. */
  readonly longest: number;
  /** Greatest distance from the last bore of a joint to the last spindle over wood. */
  readonly tail: number;
  /** Spindles that carry a bit in no load. */
  readonly never?: readonly number[];
  /** Spindles that carry a bit of the first load in any case (true), or none of that load (false). */
  readonly pinned?: ReadonlyMap<number, boolean>;
}

/** Loads with what they cost; `beside` is empty where nothing stands back to back. */
export interface Pattern {
  readonly load: readonly number[];
  readonly beside: readonly number[];
  readonly cost: Cost;
}

/**
 * Dowels of the first load in all usual joints, by their weights, pitches behind their last bores, and both of the load beside it, in that order
 * of weight. Sums of costs compare as their parts do.
 */
export type Cost = readonly [dowels: number, behind: number, besideDowels: number, besideBehind: number];

/** The most spindles that the first place of a joint back to back with another stands behind the first that finds room. */
export const mostMoved = ({ longest }: Pick<PatternTask, 'longest'>): number => Math.max(1, Math.floor(longest / 2));

/**
 * The spindles that carry a bit, so that one load serves every room from either hand: what lies over wood is bored, what lies
 * over air does nothing, and the load reads the same from both ends of the head. Spindle 0 carries one. A room for two gets two.
 * Where joints stand back to back, the load beside it serves these in the same way, shares no spindle with the first, and has
 * its first bit within half the longest distance of spindle 0. Of all such loads these have the least cost.
 * A shortest path from the ends of the head to its middle: each step of the near half is made in the far half too, and what
 * both cost depends on the last spindle of each load alone.
 * @returns null where no loads serve all rooms.
 */
export function sharedPattern(task: PatternTask): Pattern | null {
  if (task.spindles < 1) return null;
  const half = new Half(task);
  if (!task.backToBack?.length) return half.best(null);
  let best: Pattern | null = null;
  for (let first = 1; first <= mostMoved(task); first++) {
    const found = half.best(first);
    if (found && isLess(found.cost, best?.cost)) best = found;
  }
  return best;
}

/** The near halves of two loads, up to some spindle. */
interface Way {
  readonly cost: Cost;
  readonly load: readonly number[];
  readonly beside: readonly number[];
}

/** Shortest paths over the near half of a head. */
class Half {
  readonly #last: number;
  readonly #load: Steps;
  readonly #beside: Steps;
  readonly #must: ReadonlySet<number>;
  readonly #notInLoad: ReadonlySet<number>;
  readonly #never: ReadonlySet<number>;

  constructor(task: PatternTask) {
    const { spindles, rooms, weights, backToBack, never, pinned } = task;
    this.#last = spindles - 1;
    this.#load = new Steps(rooms, weights, task);
    this.#beside = new Steps(backToBack ?? [], undefined, task);
    const pair = (k: number): number => Math.min(k, this.#last - k);
    const pinnedTo = (there: boolean): number[] =>
      [...(pinned ?? [])].filter((pin) => pin[1] === there).map(([k]) => k);
    this.#never = new Set((never ?? []).map(pair));
    this.#must = new Set(pinnedTo(true).map(pair));
    this.#notInLoad = new Set([...this.#never, ...pinnedTo(false).map(pair)]);
  }

  /** @param first the first spindle of the load beside; null where there is none */
  best(first: number | null): Pattern | null {
    if (this.#notInLoad.has(0)) return null;
    // Of all ways with the same last spindles only the best can be part of the best whole.
    let ways: Way[] = [{ cost: [this.#load.bits(0), 0, 0, 0], load: [0], beside: [] }];
    for (let k = 1; k <= this.#last - k; k++) ways = this.#on(ways, k, first);

    let chosen: Way | null = null;
    for (const way of ways) {
      const cost = first !== null && way.beside.length === 0 ? null : this.#closed(way, first);
      if (cost && isLess(cost, chosen?.cost)) chosen = { ...way, cost };
    }
    if (chosen === null) return null;
    const { cost } = chosen;
    return { load: mirrored(chosen.load, this.#last), beside: mirrored(chosen.beside, this.#last), cost };
  }

  /** The best ways to the next spindle: with a bit of the first load, of the one beside, or none. */
  #on(ways: readonly Way[], k: number, first: number | null): Way[] {
    const isFirst = k === first;
    const [loads, besides] = [new Map<number, Way>(), new Map<number, Way>()];
    for (const way of ways) {
      if (!isFirst && !this.#notInLoad.has(k)) keep(loads, way.beside.at(-1) ?? 0, this.#withLoad(way, k));
      const isOpen = first !== null && k >= first && !this.#must.has(k) && !this.#never.has(k);
      if (isOpen) keep(besides, way.load.at(-1)!, this.#withBeside(way, k, first));
    }
    const resting = isFirst || this.#must.has(k) ? [] : ways;
    return [...resting, ...loads.values(), ...besides.values()];
  }

  #withLoad({ cost, load, beside }: Way, k: number): Way | null {
    const from = load.at(-1)!;
    const open = this.#load.bothBehind(from, k, from === 0);
    return open === null ? null : { cost: plus(cost, [this.#load.bits(k), open, 0, 0]), load: [...load, k], beside };
  }

  #withBeside({ cost, load, beside }: Way, k: number, first: number): Way | null {
    const from = beside.at(-1);
    const open = from === undefined ? this.#beside.outside(k) : this.#beside.bothBehind(from, k, from === first);
    return open === null
      ? null
      : { cost: plus(cost, [0, 0, this.#beside.bits(k), open]), load, beside: [...beside, k] };
  }

  /** The cost with the step over the middle of the head; null where that is too far. */
  #closed({ cost, load, beside }: Way, first: number | null): Cost | null {
    const over = (steps: Steps, near: number | undefined, isFirst: boolean): number | null => {
      const far = near === undefined ? 0 : this.#last - near;
      return near === undefined || near === far ? 0 : steps.behind(near, far, isFirst);
    };
    const [a, b] = [load.at(-1)!, beside.at(-1)];
    const [open, besideOpen] = [over(this.#load, a, a === 0), over(this.#beside, b, b === first)];
    return open === null || besideOpen === null ? null : plus(cost, [0, open, 0, besideOpen]);
  }
}

/** Spindles with their images at the other end of the head, whose last one is `last`; ascending. */
export const mirrored = (spindles: readonly number[], last: number): readonly number[] =>
  [...new Set(spindles.flatMap((k) => [k, last - k]))].sort((a, b) => a - b);

/** What bits of one load, and steps between neighbours, cost in the rooms that it serves. */
class Steps {
  readonly #reached: readonly number[];
  readonly #weights: readonly number[];
  readonly #last: number;
  readonly #longest: number;
  readonly #tail: number;

  constructor(rooms: readonly number[], weights: PatternTask['weights'], { spindles, longest, tail }: PatternTask) {
    this.#last = spindles - 1;
    this.#reached = rooms.map((room) => Math.min(room, this.#last));
    this.#weights = weights ?? rooms.map(() => 1);
    this.#longest = longest;
    this.#tail = tail;
  }

  /** Dowels of a spindle and its image, in all rooms. */
  bits(k: number): number {
    const bit = (at: number): number =>
      this.#reached.reduce((sum, room, index) => sum + (at <= room ? this.#weights[index]! : 0), 0);
    return bit(k) + (k === this.#last - k ? 0 : bit(this.#last - k));
  }

  /** Pitches left open behind the image of the first bit; null where a room cannot do with these two outermost bits. */
  outside(first: number): number | null {
    const final = this.#last - first;
    let sum = 0;
    for (const room of this.#reached) {
      if (room < first || (room > 0 && first === final)) return null;
      if (room - final > this.#tail) return null;
      sum += Math.max(0, room - final);
    }
    return sum;
  }

  /** Pitches left open where a room ends between two neighbours; null where a room cannot have these neighbours. */
  behind(a: number, b: number, isFirst: boolean): number | null {
    let sum = 0;
    for (const room of this.#reached) {
      if (room < a) continue;
      if (room >= b && b - a > this.#longest) return null;
      if (room >= b) continue;
      if (room - a > this.#tail || (isFirst && room > 0)) return null;
      sum += room - a;
    }
    return sum;
  }

  /** The same for a step of the near half and its image. */
  bothBehind(a: number, b: number, isFirst: boolean): number | null {
    const [near, far] = [this.behind(a, b, isFirst), this.behind(this.#last - b, this.#last - a, false)];
    return near === null || far === null ? null : near + far;
  }
}

/** Keeps the better of two ways that end alike. */
function keep(ways: Map<number, Way>, end: number, way: Way | null): void {
  if (way && isLess(way.cost, ways.get(end)?.cost)) ways.set(end, way);
}

const plus = (a: Cost, b: Cost): Cost => [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]];

/** Whether the first figure that differs is the less in `a`; so is everything beside nothing. */
export function isLess(a: readonly number[], b: readonly number[] | undefined): boolean {
  if (b === undefined) return true;
  const differs = a.findIndex((part, index) => part !== b[index]);
  return differs >= 0 && a[differs]! < b[differs]!;
}
