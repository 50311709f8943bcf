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
 * Where holes may be met twice, their number is what all strokes bore together less the wanted holes. The spindles of the
 * first stroke are charged once for every stroke to come, and a spindle loaded or emptied later is charged or refunded for
 * those that are left: the same sum, but known as soon as the loading settles.
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

/** Costs of a spindle that is empty both times, loaded then, emptied then, loaded both times. */
type Costs = readonly [number, number, number, number];

/** Whether the first (0) or the second (1) of two strokes bores, for a value of a choice; value 2 is both. */
function bores(value: number, side: number): 0 | 1 {
  return value === (side === 0 ? SECOND_ONLY : FIRST_ONLY) ? 0 : 1;
}

export class Loading {
  private readonly domain: number;
  private readonly base: number;
  /** Rank of the wanted hole at each place from `base` on; -1 where none is wanted. */
  private readonly rankAt: Int32Array;

  constructor(
    private readonly row: Row,
    private readonly cover: Cover,
    private readonly weights: Weights,
  ) {
    this.domain = row.twice ? 3 : 2;
    const first = row.holes[0]!;
    const last = row.holes[row.holes.length - 1]!;
    this.base = first - row.spindles;
    this.rankAt = new Int32Array(last - first + 1 + 2 * row.spindles).fill(-1);
    row.holes.forEach((hole, rank) => {
      this.rankAt[hole - this.base] = rank;
    });
  }

  /** Before the first stroke. */
  begin(): Stage {
    const tables = new Tables(this.domain);
    if (this.row.twice) tables.constant = -this.row.holes.length * this.weights.twice;
    return { starts: [], sure: 0, tables, kept: [] };
  }

  /** The least start that a stroke after the last of `starts` can have. */
  leastNext(starts: readonly number[]): number {
    const { cover, row } = this;
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
    const { cover, row } = this;
    const j = starts.length;
    const reached = j > 0 ? starts[j - 1]! + row.spindles - 1 : -Infinity;
    const next = row.holes.find((hole) => hole > reached) ?? -Infinity;
    return Math.min(next, cover.latest[j]!);
  }

  /**
   * Adds a stroke at `start`, with all costs that then are certain, and leaves the tables as they are. `finish` takes out
   * what it can.
   */
  advance(stage: Stage, start: number): Stage {
    const { spindles } = this.row;
    const last = stage.starts.length - 1;
    const starts = [...stage.starts, start];
    const tables = stage.tables.copy();
    const sure = Math.max(0, Math.min(spindles, this.leastNext(starts) - start));
    if (last < 0) {
      this.compareWithLoaded(tables, starts, 0, sure);
    } else {
      if (last > 0) this.compare(tables, starts, last - 1, stage.sure, spindles);
      else this.compareWithLoaded(tables, starts, stage.sure, spindles);
      this.compare(tables, starts, last, 0, sure);
    }
    const kept: number[] = [];
    if (starts.length < this.cover.strokes && last >= 0) {
      // Choices of the stroke before, in columns of the last one that are still to be compared; and those of this one.
      if (last > 0) this.ranks(starts[last]! + sure, starts[last - 1]! + spindles, kept);
      this.ranks(start, starts[last]! + spindles, kept);
    }
    return { starts, sure, tables, kept };
  }

  /** Takes out every choice that nothing later hangs on. With `taken`, notes how it follows from the others. */
  finish(stage: Stage, taken?: Taken[]): void {
    const { starts, sure, kept } = stage;
    const { holes, spindles } = this.row;
    const keep = new Set(kept);
    const last = starts.length - 1;
    // A spindle weighs on one later comparison for each bit that is not yet compared with the next stroke's.
    const weight = this.weights.change + this.cover.strokes * this.weights.twice;
    stage.tables.reduce((choice, better, worse) => {
      if (!keep.has(choice)) return null;
      const hole = holes[choice]!;
      const own = hole >= starts[last]!;
      const column = hole - starts[last - 1]!;
      const first = own && column >= sure && column < spindles ? 1 : 0;
      let bits = bores(better, 1) === bores(worse, 1) ? 0 : 1;
      if (first === 1 && bores(better, 0) !== bores(worse, 0)) bits += 1;
      return bits * weight;
    }, taken);
  }

  /**
   * What the beginning costs at least if the last stroke of all stands at `end`: its spindles that are certain must be
   * reached from the loading so far, at one change for each that differs.
   */
  leastWithEnd(stage: Stage, end: number): number {
    const { starts, sure } = stage;
    const { cover, row, weights } = this;
    const last = starts.length - 1;
    if (starts.length === cover.strokes) return stage.tables.least();
    const tables = stage.tables.copy();
    const weight = weights.change - cover.strokes * weights.twice;
    const ownFrom = cover.strokes < 2 ? -Infinity : Math.min(cover.latest[cover.strokes - 2]!, end - 1) + row.spindles;
    for (let column = 0; column < row.spindles; column += 1) {
      const wanted = this.rank(end + column) >= 0;
      if (wanted && end + column < ownFrom) continue;
      let state: SpindleState;
      if (column < sure) state = this.state(starts, last, column);
      else if (last > 0) state = this.state(starts, last - 1, column);
      else continue;
      this.count(tables, state, wanted ? LOADED : EMPTY, [0, weight, weight, 0]);
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
    const values = readBack(this.domain, taken);
    return starts.map((_, stroke) =>
      Array.from({ length: this.row.spindles }, (_unused, column) => {
        const state = this.state(starts, stroke, column);
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

  private rank(place: number): number {
    return this.rankAt[place - this.base] ?? -1;
  }

  /** What spindle `column` of stroke `stroke` is, as far as `starts` tells. */
  private state(starts: readonly number[], stroke: number, column: number): SpindleState {
    const place = starts[stroke]! + column;
    const rank = this.rank(place);
    if (rank < 0) return EMPTY;
    if (stroke > 0 && place < starts[stroke - 1]! + this.row.spindles) return 2 * rank + 1;
    return stroke + 1 < starts.length && place >= starts[stroke + 1]! ? 2 * rank : LOADED;
  }

  /** Ranks of the wanted holes in [from, to). */
  private ranks(from: number, to: number, into: number[]): void {
    for (let place = from; place < to; place += 1) {
      const rank = this.rank(place);
      if (rank >= 0) into.push(rank);
    }
  }

  /** Counts the changes between stroke `stroke` and the next one, in the columns [from, to). */
  private compare(tables: Tables, starts: readonly number[], stroke: number, from: number, to: number): void {
    const { change, twice } = this.weights;
    const onward = this.row.twice ? (this.cover.strokes - 1 - stroke) * twice : 0;
    const costs: Costs = [0, change + onward, change - onward, 0];
    for (let column = from; column < to; column += 1) {
      this.count(tables, this.state(starts, stroke, column), this.state(starts, stroke + 1, column), costs);
    }
  }

  /** Counts what is loaded and emptied before the first stroke, in the columns [from, to). */
  private compareWithLoaded(tables: Tables, starts: readonly number[], from: number, to: number): void {
    const { loading, twice } = this.weights;
    const onward = this.row.twice ? this.cover.strokes * twice : 0;
    const costs: Costs = [0, loading + onward, loading, onward];
    for (let column = from; column < to; column += 1) {
      this.count(tables, this.row.loaded?.[column] === true ? LOADED : EMPTY, this.state(starts, 0, column), costs);
    }
  }

  /** Adds what it costs that one spindle is as `a` and then as `b`. */
  private count(tables: Tables, a: SpindleState, b: SpindleState, costs: Costs): void {
    const { domain } = this;
    if (a < 0 && b < 0) {
      tables.constant += costs[(a === LOADED ? 2 : 0) + (b === LOADED ? 1 : 0)]!;
    } else if (a < 0 || b < 0) {
      const own = new Float64Array(domain);
      for (let value = 0; value < domain; value += 1) {
        const first = a < 0 ? (a === LOADED ? 1 : 0) : bores(value, a & 1);
        const second = b < 0 ? (b === LOADED ? 1 : 0) : bores(value, b & 1);
        own[value] = costs[2 * first + second]!;
      }
      tables.addOne((a < 0 ? b : a) >> 1, own);
    } else {
      const both = new Float64Array(domain * domain);
      for (let v = 0; v < domain; v += 1) {
        for (let w = 0; w < domain; w += 1) both[v * domain + w] = costs[2 * bores(v, a & 1) + bores(w, b & 1)]!;
      }
      tables.addTwo(a >> 1, b >> 1, both);
    }
  }
}
