import { sequence } from '../../machining/order/random.js';
import type { CuttingPlan, CuttingProblem } from '../model.js';
import { bedsOf, type Bed } from '../staged/lie.js';
import { goodPattern, type SheetPattern } from '../staged/pattern.js';
import { areaBound, costBound, coverOf, payable, type Column } from './bound.js';
import { StockSets } from './stock-sets.js';
import type { CoverSolver } from './cover.js';
import { layOut } from './lay-out.js';

/** What the host lets the search do. */
export interface Effort {
  /** Rounds of improvement. The same number gives the same plan. */
  readonly rounds: number;
  /** Asked between steps; false ends the search with what there is. */
  readonly mayGoOn: () => boolean;
  /** Time left for one step of the solver, in seconds; null for as long as it takes, which gives the same plan each time. */
  readonly secondsLeft?: () => number | null;
  /** Told of the first plan, of each better one and of each better bound, in the smallest coins: what it costs, and what no plan can undercut. */
  readonly found?: (cost: number, bound: number) => void;
}

/**
 * Lays pieces out on sheets at the least cost, and says what no plan can undercut. Whole plans are made sheet by sheet with
 * pieces priced by how badly they went in before (sequential value correction, Mukhacheva and Zalgaller 1993; Belov and
 * Scheithauer 2007); now and then the patterns of all plans are chosen from anew as a covering program, and sheets that are used
 * badly are emptied and filled again. Among plans of one cost the one with the largest offcuts is taken.
 */
export function planCutting(
  problem: CuttingProblem,
  solver: CoverSolver | null,
  seed: number,
  effort: Effort,
): CuttingPlan {
  const beds = bedsOf(problem);
  const holds = problem.pieces.map((_, i) =>
    beds.some(({ columns }) => columns.some(({ lies }) => lies.some(({ piece }) => piece === i))),
  );
  const wanted = problem.pieces.map(({ count }, i) => (holds[i]! ? count : 0));
  const misfits = problem.pieces.filter((_, i) => !holds[i]!).map(({ id }) => id);
  const search = new Search(problem, beds, wanted, seed);
  search.start();
  const prices = problem.stocks.map(({ price }) => price);
  let bound = payable(areaBound(problem, wanted, search.areas), prices);
  const isDone = (): boolean => search.best !== null && search.best.cost <= bound;
  let sets: StockSets | null = null;
  if (!isDone() && solver !== null && effort.mayGoOn()) {
    const generation = { start: search.pool, solver, rounds: 60, mayGoOn: effort.mayGoOn };
    const lower = costBound(beds, wanted, null, generation);
    bound = Math.max(bound, payable(lower.bound, prices));
    sets = new StockSets(problem, beds, wanted, search.areas, { bound, columns: lower.columns });
  }
  if (search.best !== null) effort.found?.(search.best.cost, bound);
  for (let round = 0; round < effort.rounds && !isDone() && effort.mayGoOn(); round += 1) {
    const before = { cost: search.best?.cost ?? Infinity, bound };
    search.step(round);
    if (solver !== null && round % 40 === 19) search.recombine(solver, effort.secondsLeft?.() ?? null);
    if (solver !== null && sets !== null && search.best !== null && round % SET_EVERY === SET_EVERY - 1) {
      const isMore = sets.step(search.best.cost, solver, effort.mayGoOn);
      bound = Math.max(bound, sets.bound);
      if (!isMore) sets = null;
    }
    if (search.best !== null && (search.best.cost < before.cost || bound > before.bound))
      effort.found?.(search.best.cost, bound);
  }
  const { patterns, left } = search.best === null ? search.asFarAsItGoes() : { ...search.best, left: [] };
  const sheets = patterns.map((pattern) => layOut(pattern, problem));
  const cost = costOf(patterns);
  const lacking = left.flatMap((count, i) => (count > 0 ? [{ piece: problem.pieces[i]!.id, count }] : []));
  return { sheets, cost, bound: Math.min(bound, cost), misfits, lacking };
}

interface Plan {
  readonly patterns: readonly SheetPattern[];
  readonly cost: number;
  /** Squares of the areas that no strip takes: the greater, the more in one piece. */
  readonly free: number;
}

/** Sheets, and how many copies of each piece are in none of them. */
interface Filled {
  readonly patterns: readonly SheetPattern[];
  readonly left: readonly number[];
}

const POOL_LIMIT = 3000;
/** The search for a cheaper plan and the proof that there is none take turns. */
const SET_EVERY = 5;

class Search {
  best: Plan | null = null;
  readonly pool: Column[] = [];
  readonly areas: readonly number[];
  readonly #patterns = new Map<string, SheetPattern>();
  readonly #random: () => number;
  #values: number[];

  constructor(
    readonly problem: CuttingProblem,
    readonly beds: readonly Bed[],
    readonly wanted: readonly number[],
    seed: number,
  ) {
    const { kerf } = problem.saw;
    this.areas = problem.pieces.map(({ length, width }) => (length + kerf) * (width + kerf));
    const next = sequence(seed);
    this.#random = () => next(1_000_000) / 1_000_000;
    this.#values = this.areas.slice();
  }

  start(): void {
    for (const width of [1, 4]) this.#take(this.#fillAll(this.wanted, this.areas, width));
  }

  step(round: number): void {
    const plan = this.best;
    if (plan !== null && round % 3 !== 0 && plan.patterns.length > 1) {
      this.#take(this.#refill(plan));
      return;
    }
    const some = this.#someStocks();
    const made = this.#fillAll(this.wanted, this.#values, round % 2 === 0 ? 1 : 3, some);
    this.#take(made);
    if (made !== null) this.#reprice(made);
  }

  /** The patterns of all plans so far, chosen from anew; what is cut too often is left out, the plan then filled up. */
  recombine(solver: CoverSolver, seconds: number | null): void {
    const columns = [...this.#patterns.values()].slice(-POOL_LIMIT);
    const amounts = solver.whole(coverOf(columns, this.wanted), seconds);
    if (amounts === null) return;
    let left = this.wanted;
    const patterns: SheetPattern[] = [];
    for (const [i, pattern] of columns.entries())
      for (let copy = 0; copy < Math.round(amounts[i]!); copy += 1) {
        const counts = pattern.counts.map((count, piece) => Math.min(count, left[piece]!));
        // Covering may cut a piece once too often: the sheet is then filled with what is really wanted.
        const fitting = counts.every((count, piece) => count === pattern.counts[piece])
          ? pattern
          : goodPattern(pattern.bed, counts, this.areas, 4);
        if (fitting.value <= 0) continue;
        patterns.push(fitting);
        left = less(left, fitting.counts);
      }
    const rest = left.some((count) => count > 0) ? this.#fillAll(left, this.areas, 4, stockUsed(patterns)) : [];
    if (rest !== null) this.#take([...patterns, ...rest]);
  }

  /** What the stock is enough for, where no plan was found for all. */
  asFarAsItGoes(): Filled {
    return this.#fill(this.wanted, this.areas, 4);
  }

  /** Fills sheets until nothing is left; null where stock runs out. */
  #fillAll(
    wanted: readonly number[],
    values: readonly number[],
    width: number,
    used?: Map<string, number>,
  ): readonly SheetPattern[] | null {
    const { patterns, left } = this.#fill(wanted, values, width, used);
    return left.some((count) => count > 0) ? null : patterns;
  }

  /** Fills sheets while any holds what is left: each time the sheet whose pieces are worth most for its price. */
  #fill(wanted: readonly number[], values: readonly number[], width: number, used = new Map<string, number>()): Filled {
    const patterns: SheetPattern[] = [];
    let left = wanted;
    while (left.some((count) => count > 0)) {
      const free = this.beds.filter(({ stock }) => (used.get(stock.name) ?? 0) < (stock.count ?? Infinity));
      const tried = free.map((bed) => goodPattern(bed, left, values, width)).filter(({ value }) => value > 0);
      const whole = tried.filter(({ counts }) => counts.every((count, i) => count === left[i]));
      const [pattern] = whole.length > 0 ? whole.sort(byPrice) : tried.sort(byWorth);
      if (pattern === undefined) break;
      patterns.push(pattern);
      this.#remember(pattern);
      used.set(pattern.bed.stock.name, (used.get(pattern.bed.stock.name) ?? 0) + 1);
      left = less(left, pattern.counts);
    }
    return { patterns, left };
  }

  /**
   * All stocks, or some counted as used up: the cheapest sheet for what is left is not always in the cheapest plan. With one
   * stock there is nothing to choose.
   */
  #someStocks(): Map<string, number> {
    const { stocks } = this.problem;
    if (stocks.length < 2 || this.#random() < 0.5) return new Map();
    return new Map(stocks.flatMap(({ name }) => (this.#random() < 0.4 ? [[name, Infinity] as const] : [])));
  }

  /** Empties a few sheets, the badly used ones more often, and fills their pieces in anew. */
  #refill(plan: Plan): readonly SheetPattern[] | null {
    const count = Math.min(plan.patterns.length, 2 + Math.floor(this.#random() * 3));
    const order = plan.patterns
      .map((pattern) => ({ pattern, key: this.#use(pattern) * (0.6 + this.#random()) }))
      .sort((a, b) => a.key - b.key);
    const kept = order.slice(count).map(({ pattern }) => pattern);
    const emptied = order.slice(0, count).map(({ pattern }) => pattern);
    const wanted = emptied.reduce(
      (sum, { counts }) => sum.map((n, i) => n + counts[i]!),
      this.wanted.map(() => 0),
    );
    const values = this.#values.map((value) => value * (0.85 + 0.3 * this.#random()));
    const used = stockUsed(kept);
    for (const [name, count] of this.#someStocks()) used.set(name, count);
    const again = this.#fillAll(wanted, values, 3, used);
    return again === null ? null : [...kept, ...again];
  }

  #use({ bed, counts }: SheetPattern): number {
    return counts.reduce((sum, count, i) => sum + count * this.areas[i]!, 0) / (bed.run * bed.rise);
  }

  /** Pieces of a sheet that is used badly become dearer: the next plan sees to them sooner. */
  #reprice(patterns: readonly SheetPattern[]): void {
    for (const pattern of patterns) {
      const use = Math.max(0.05, this.#use(pattern));
      pattern.counts.forEach((count, i) => {
        if (count === 0) return;
        const target = this.areas[i]! ** 1.03 / use;
        const keep = 0.5 + 0.4 * this.#random();
        this.#values[i] = keep * this.#values[i]! + (1 - keep) * target;
      });
    }
  }

  #remember(pattern: SheetPattern): void {
    const key = `${pattern.bed.stock.name}|${pattern.counts.join()}`;
    if (this.#patterns.has(key)) return;
    this.#patterns.set(key, pattern);
    this.pool.push(pattern);
  }

  #take(patterns: readonly SheetPattern[] | null): void {
    if (patterns === null) return;
    const cost = costOf(patterns);
    const free = patterns.reduce((sum, { bed, strips }) => {
      const room = bed.rise - strips.reduce((high, { rise }) => high + rise, 0);
      return sum + (room * bed.run) ** 2;
    }, 0);
    const { best } = this;
    if (best === null || cost < best.cost || (cost === best.cost && free > best.free))
      this.best = { patterns, cost, free };
  }
}

const costOf = (patterns: readonly SheetPattern[]): number =>
  patterns.reduce((sum, { bed }) => sum + bed.stock.price, 0);

const byPrice = (a: SheetPattern, b: SheetPattern): number =>
  a.bed.stock.price - b.bed.stock.price || b.value - a.value;
const byWorth = (a: SheetPattern, b: SheetPattern): number =>
  b.value * a.bed.stock.price - a.value * b.bed.stock.price || a.bed.stock.price - b.bed.stock.price;

function less(from: readonly number[], what: readonly number[]): readonly number[] {
  return from.map((count, i) => count - what[i]!);
}

function stockUsed(patterns: readonly SheetPattern[]): Map<string, number> {
  const used = new Map<string, number>();
  for (const { bed } of patterns) used.set(bed.stock.name, (used.get(bed.stock.name) ?? 0) + 1);
  return used;
}
