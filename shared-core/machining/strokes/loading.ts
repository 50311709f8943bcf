import type { Cover } from './cover.js';
import type { Row } from './request.js';
import { readBack, Tables, type Taken } from './tables.js';
import type { Weights } from './weights.js';

/**
 * Which spindles to load, for strokes whose starts are known, taken up one stroke after the other along the row.
 *
 * In a plan with the fewest strokes no stroke lies within the reach of its two neighbours, or it could be left out. So a
 * hole is reached by one stroke, and then its spindle is loaded, or by two that follow each other, and then there is a
 * choice: the first bores it, the second does, or (where holes may be met twice) both do. A spindle over a place that
 * wants no hole is empty. Whether a spindle changes between two strokes hangs on two choices at most: a `Tables` sum,
 * whose least is the least number of changes.
 *
 * Where holes may be met twice, the number of those that are is what all strokes bore together less the wanted holes. The spindles of the
 * first stroke are charged once for every stroke to come, and a spindle loaded or emptied later is charged or refunded for
 * those that are left: the same sum, but known as soon as the loading settles. `unit` is what each is charged; another unit
 * than the true one makes another account of the same plans.
 *
 * A stage holds the strokes up to one of them, with the choices that nothing later hangs on already taken out.
 */
export interface Stage {
  readonly starts: readonly number[];
  /** Columns of the last stroke, counted from its first spindle, that no later stroke reaches: already compared. */
  readonly sure: number;
  readonly tables: Tables;
  /** Choices that later strokes still hang on. */
  readonly kept: readonly number[];
}

/** The state of a spindle: EMPTY, LOADED, or twice the choice that it hangs on, and 1 more for the second stroke of it. */
type SpindleState = number;
const EMPTY: SpindleState = -1;
const LOADED: SpindleState = -2;

const FIRST_ONLY = 0;
const SECOND_ONLY = 1;

/** A choice with more neighbours than this is taken out only where a bound or the plan needs it. */
const MOST_NEIGHBOURS = 2;

/** Whether the first (0) or the second (1) of two strokes bores, for a value of a choice; value 2 is both. */
function bores(value: number, side: number): 0 | 1 {
  return value === (side === 0 ? SECOND_ONLY : FIRST_ONLY) ? 0 : 1;
}

export class Loading {
  readonly #domain: number;
  readonly #known = new Map<string, Prices>();
  readonly #rough: RoughSum;
  readonly #base: number;
  /** Rank of the wanted hole at each place from `base` on; -1 where none is wanted. */
  readonly #rankAt: Int32Array;

  readonly #row: Row;
  readonly #cover: Cover;
  readonly #weights: Weights;
  readonly #unit: number;

  constructor(row: Row, cover: Cover, weights: Weights, unit: number) {
    this.#row = row;
    this.#cover = cover;
    this.#weights = weights;
    this.#unit = unit;
    this.#domain = row.twice ? 3 : 2;
    this.#rough = new RoughSum(this.#domain, row.holes.length);
    const first = row.holes[0]!;
    const last = row.holes[row.holes.length - 1]!;
    this.#base = first - row.spindles;
    this.#rankAt = new Int32Array(last - first + 1 + 2 * row.spindles).fill(-1);
    row.holes.forEach((hole, rank) => {
      this.#rankAt[hole - this.#base] = rank;
    });
  }

  /** Before the first stroke. */
  begin(): Stage {
    const tables = new Tables(this.#domain);
    tables.constant = -this.#row.holes.length * this.#unit;
    return { starts: [], sure: 0, tables, kept: [] };
  }

  /** The least start that a stroke after the last of `starts` can have. */
  leastNext(starts: readonly number[]): number {
    const cover = this.#cover;
    const row = this.#row;
    const j = starts.length;
    if (j === cover.strokes) return Infinity;
    return Math.max(
      cover.earliest[j]!,
      j > 0 ? starts[j - 1]! + 1 : -Infinity,
      // Nearer, the last stroke would lie within the reach of its neighbours.
      j > 1 ? starts[j - 2]! + row.spindles + 1 : -Infinity,
    );
  }

  /** The greatest start that a stroke after the last of `starts` can have: it must reach the next hole not reached yet. */
  greatestNext(starts: readonly number[]): number {
    const cover = this.#cover;
    const row = this.#row;
    const j = starts.length;
    const reached = j > 0 ? starts[j - 1]! + row.spindles - 1 : -Infinity;
    const next = row.holes.find((hole) => hole > reached) ?? -Infinity;
    return Math.min(next, cover.latest[j]!);
  }

  /** What a stroke at `start` makes of the cost at least: quick, and not above what `advance` and `finish` give. */
  roughly(stage: Stage, start: number): number {
    const starts = [...stage.starts, start];
    const rough = this.#rough;
    rough.constant = stage.tables.constant;
    stage.tables.eachSingle((choice, costs) => rough.addOne(choice, costs));
    this.#addStroke(rough, stage, starts, this.#sure(starts));
    return rough.take();
  }

  /**
   * Adds a stroke at `start`, with all costs that then are certain, and leaves the tables as they are. `finish` takes out
   * what it can.
   */
  advance(stage: Stage, start: number): Stage {
    const { spindles } = this.#row;
    const last = stage.starts.length - 1;
    const starts = [...stage.starts, start];
    const tables = stage.tables.copy();
    const sure = this.#sure(starts);
    this.#addStroke(tables, stage, starts, sure);
    const kept: number[] = [];
    if (starts.length < this.#cover.strokes && last >= 0) {
      // Choices of the stroke before, in columns of the last one that are still to be compared; and those of this one.
      if (last > 0) this.#ranks(starts[last]! + sure, starts[last - 1]! + spindles, kept);
      this.#ranks(start, starts[last]! + spindles, kept);
    }
    return { starts, sure, tables, kept };
  }

  /** Takes out every choice that nothing later hangs on. With `taken`, notes how it follows from the others. */
  finish(stage: Stage, taken?: Taken[]): void {
    const { starts, sure, kept } = stage;
    const { holes, spindles } = this.#row;
    const keep = new Set(kept);
    const last = starts.length - 1;
    // A spindle weighs on one later comparison for each bit that is not yet compared with the next stroke's.
    const weight = this.#weights.change + this.#cover.strokes * Math.abs(this.#unit);
    stage.tables.reduce(
      (choice, better, worse) => {
        if (!keep.has(choice)) return null;
        const hole = holes[choice]!;
        const own = hole >= starts[last]!;
        const column = hole - starts[last - 1]!;
        const first = own && column >= sure && column < spindles ? 1 : 0;
        let bits = bores(better, 1) === bores(worse, 1) ? 0 : 1;
        if (first === 1 && bores(better, 0) !== bores(worse, 0)) bits += 1;
        return bits * weight;
      },
      starts.length === this.#cover.strokes ? Infinity : MOST_NEIGHBOURS,
      taken,
    );
  }

  /**
   * What the beginning costs at least if the last stroke of all stands at `end`: its spindles that are certain must be
   * reached from the loading so far, at one change for each that differs.
   */
  leastWithEnd(stage: Stage, end: number): number {
    const { starts, sure } = stage;
    const cover = this.#cover;
    const row = this.#row;
    const weights = this.#weights;
    const last = starts.length - 1;
    if (starts.length === cover.strokes) return stage.tables.least();
    const tables = stage.tables.copy();
    const weight = weights.change - cover.strokes * this.#unit;
    const prices = this.#prices(0, weight, weight, 0);
    const ownFrom = cover.strokes < 2 ? -Infinity : Math.min(cover.latest[cover.strokes - 2]!, end - 1) + row.spindles;
    for (let column = 0; column < row.spindles; column += 1) {
      const wanted = this.#rank(end + column) >= 0;
      if (wanted && end + column < ownFrom) continue;
      let state: SpindleState;
      if (column < sure) state = this.#state(starts, last, column);
      else if (last > 0) state = this.#state(starts, last - 1, column);
      else continue;
      count(tables, state, wanted ? LOADED : EMPTY, prices);
    }
    return tables.least();
  }

  /** For the whole plan: which spindles are loaded in each stroke. */
  loaded(starts: readonly number[]): boolean[][] {
    const taken: Taken[] = [];
    let stage = this.begin();
    for (const start of starts) {
      stage = this.advance(stage, start);
      this.finish(stage, taken);
    }
    const values = readBack(this.#domain, taken);
    return starts.map((_, stroke) =>
      Array.from({ length: this.#row.spindles }, (_unused, column) => {
        const state = this.#state(starts, stroke, column);
        if (state < 0) return state === LOADED;
        // A choice that nothing hangs on goes to the earlier stroke.
        return bores(values.get(state >> 1) ?? FIRST_ONLY, state & 1) === 1;
      }),
    );
  }

  /** Equal for stages that have the same ways to go on, at costs that differ by the same. */
  name(stage: Stage): string {
    const { starts, sure, kept, tables } = stage;
    return `${starts.length}|${starts.at(-2) ?? ''}|${starts.at(-1) ?? ''}|${sure}|${kept.join()}|${tables.signature()}`;
  }

  /** Columns of the last stroke that no later stroke can reach. */
  #sure(starts: readonly number[]): number {
    return Math.max(0, Math.min(this.#row.spindles, this.leastNext(starts) - starts.at(-1)!));
  }

  #rank(place: number): number {
    return this.#rankAt[place - this.#base] ?? -1;
  }

  /** What spindle `column` of stroke `stroke` is, as far as `starts` tells. */
  #state(starts: readonly number[], stroke: number, column: number): SpindleState {
    const place = starts[stroke]! + column;
    const rank = this.#rank(place);
    if (rank < 0) return EMPTY;
    if (stroke > 0 && place < starts[stroke - 1]! + this.#row.spindles) return 2 * rank + 1;
    return stroke + 1 < starts.length && place >= starts[stroke + 1]! ? 2 * rank : LOADED;
  }

  /** Ranks of the wanted holes in [from, to). */
  #ranks(from: number, to: number, into: number[]): void {
    for (let place = from; place < to; place += 1) {
      const rank = this.#rank(place);
      if (rank >= 0) into.push(rank);
    }
  }

  /** Counts the changes between stroke `stroke` and the next one, in the columns [from, to). */
  #compare(sum: Sum, starts: readonly number[], stroke: number, from: number, to: number): void {
    const { change } = this.#weights;
    const onward = (this.#cover.strokes - 1 - stroke) * this.#unit;
    const prices = this.#prices(0, change + onward, change - onward, 0);
    for (let column = from; column < to; column += 1) {
      count(sum, this.#state(starts, stroke, column), this.#state(starts, stroke + 1, column), prices);
    }
  }

  /** Counts what is loaded and emptied before the first stroke, in the columns [from, to). */
  #compareWithLoaded(sum: Sum, starts: readonly number[], from: number, to: number): void {
    const { loading } = this.#weights;
    const onward = this.#cover.strokes * this.#unit;
    const prices = this.#prices(0, loading + onward, loading, onward);
    for (let column = from; column < to; column += 1) {
      count(sum, this.#row.loaded?.[column] === true ? LOADED : EMPTY, this.#state(starts, 0, column), prices);
    }
  }

  /** All costs that `advance` adds for a stroke at `start`. */
  #addStroke(sum: Sum, stage: Stage, starts: readonly number[], sure: number): void {
    const { spindles } = this.#row;
    const last = starts.length - 2;
    if (last < 0) {
      this.#compareWithLoaded(sum, starts, 0, sure);
    } else {
      if (last > 0) this.#compare(sum, starts, last - 1, stage.sure, spindles);
      else this.#compareWithLoaded(sum, starts, stage.sure, spindles);
      this.#compare(sum, starts, last, 0, sure);
    }
  }

  /** What a spindle costs that is empty both times, loaded then, emptied then, loaded both times. */
  #prices(none: number, load: number, empty: number, both: number): Prices {
    const name = `${load} ${empty} ${both}`;
    let prices = this.#known.get(name);
    if (prices === undefined) {
      prices = tabulate([none, load, empty, both], this.#domain);
      this.#known.set(name, prices);
    }
    return prices;
  }
}

/** Costs of a pair of spindle states, ready to be added: of two certain ones, of one that is a choice, of two. */
interface Prices {
  readonly certain: readonly number[];
  /** [side of the choice][the other is loaded]: first state a choice, then second state a choice. */
  readonly firstOpen: readonly (readonly Float64Array[])[];
  readonly secondOpen: readonly (readonly Float64Array[])[];
  /** [side of the first][side of the second]. */
  readonly open: readonly (readonly Float64Array[])[];
}

function tabulate(costs: readonly number[], domain: number): Prices {
  const values = Array.from({ length: domain }, (_, value) => value);
  const table = (cost: (value: number) => number): Float64Array => Float64Array.from(values, cost);
  return {
    certain: costs,
    firstOpen: [0, 1].map((side) => [0, 1].map((other) => table((v) => costs[2 * bores(v, side) + other]!))),
    secondOpen: [0, 1].map((side) => [0, 1].map((other) => table((v) => costs[2 * other + bores(v, side)]!))),
    open: [0, 1].map((a) =>
      [0, 1].map((b) =>
        Float64Array.from(values.flatMap((v) => values.map((w) => costs[2 * bores(v, a) + bores(w, b)]!))),
      ),
    ),
  };
}

/** Where costs are added up: the tables, or a rough sum. */
interface Sum {
  constant: number;
  addOne(choice: number, costs: Float64Array): void;
  addTwo(a: number, b: number, costs: Float64Array): void;
}

/** Adds what it costs that one spindle is as `a` and then as `b`. */
function count(sum: Sum, a: SpindleState, b: SpindleState, prices: Prices): void {
  if (a < 0 && b < 0) sum.constant += prices.certain[(a === LOADED ? 2 : 0) + (b === LOADED ? 1 : 0)]!;
  else if (b < 0) sum.addOne(a >> 1, prices.firstOpen[a & 1]![b === LOADED ? 1 : 0]!);
  else if (a < 0) sum.addOne(b >> 1, prices.secondOpen[b & 1]![a === LOADED ? 1 : 0]!);
  else sum.addTwo(a >> 1, b >> 1, prices.open[a & 1]![b & 1]!);
}

/** A sum in which each choice is made for itself, as if no two hung together: never above the least sum of the tables. */
class RoughSum implements Sum {
  constant = 0;
  readonly #costs: Float64Array;
  readonly #touched: number[] = [];
  readonly #isTouched: Uint8Array;

  readonly #domain: number;

  constructor(domain: number, choices: number) {
    this.#domain = domain;
    this.#costs = new Float64Array(choices * domain);
    this.#isTouched = new Uint8Array(choices);
  }

  addOne(choice: number, costs: Float64Array): void {
    const domain = this.#domain;
    if (this.#isTouched[choice] === 0) {
      this.#isTouched[choice] = 1;
      this.#touched.push(choice);
    }
    for (let value = 0; value < domain; value += 1) this.#costs[choice * domain + value]! += costs[value]!;
  }

  addTwo(): void {
    // What hangs on two choices costs nothing at the least.
  }

  /** The least sum, and everything back to nothing. */
  take(): number {
    const domain = this.#domain;
    const costs = this.#costs;
    let sum = this.constant;
    for (const choice of this.#touched) {
      let least = Infinity;
      for (let at = choice * domain; at < (choice + 1) * domain; at += 1) {
        least = Math.min(least, costs[at]!);
        costs[at] = 0;
      }
      sum += least;
      this.#isTouched[choice] = 0;
    }
    this.#touched.length = 0;
    this.constant = 0;
    return sum;
  }
}
