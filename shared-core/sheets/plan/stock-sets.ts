import type { CuttingProblem, Stock } from '../model.js';
import type { Bed } from '../staged/lie.js';
import { costBound, usableArea, type Column } from './bound.js';
import type { CoverSolver } from './cover.js';

/** So many sheets of each stock, in the order of the stocks. */
interface StockSet {
  readonly counts: readonly number[];
  readonly cost: number;
}

/** More sets of sheets are not looked through: with many prices nearly every sum is some set's. */
const MOST_SETS = 4000;
/** Steps of column generation for one set; it starts with the patterns of those before. */
const ROUNDS = 30;
/** Leaving a piece out costs as much as so many times the dearest sheet room that it takes. */
const DEAR = 20;

/**
 * What is paid is paid for a set of whole sheets: sets that cost less than the best plan are proven too small one after the
 * other, the cheapest first, and the first that is not is the bound. A set is too small by its area, or where the cheapest mix of its
 * patterns that leaves pieces out, which are dear, costs more than the set.
 */
export class StockSets {
  /** No plan costs less. */
  bound: number;
  #sets: readonly StockSet[] | null = null;
  #at = 0;
  #columns: readonly Column[];

  constructor(
    readonly problem: CuttingProblem,
    readonly beds: readonly Bed[],
    readonly wanted: readonly number[],
    readonly areas: readonly number[],
    lower: { readonly bound: number; readonly columns: readonly Column[] },
  ) {
    this.bound = lower.bound;
    this.#columns = lower.columns;
  }

  /**
   * Looks at the next set, and says whether there may be more.
   * @param best what the best plan costs: what costs as much needs no proof
   */
  step(best: number, solver: CoverSolver, mayGoOn: () => boolean): boolean {
    this.#sets ??= setsOf(this.problem, this.#need(), this.bound, best);
    const set = this.#sets?.[this.#at];
    if (this.#sets === null || this.bound >= best) return false;
    if (set === undefined || set.cost >= best) {
      this.bound = best;
      return false;
    }
    this.bound = Math.max(this.bound, set.cost);
    if (!this.#isTooSmall(set, solver, mayGoOn)) {
      this.#sets = null;
      this.#at = Infinity;
      return false;
    }
    this.#at += 1;
    this.bound = Math.max(this.bound, Math.min(this.#sets[this.#at]?.cost ?? best, best));
    return this.bound < best;
  }

  #need(): number {
    return this.wanted.reduce((sum, count, i) => sum + count * this.areas[i]!, 0);
  }

  #isTooSmall({ counts, cost }: StockSet, solver: CoverSolver, mayGoOn: () => boolean): boolean {
    const { problem, wanted, areas } = this;
    const limited = new Map(problem.stocks.map((stock, i) => [stock, { ...stock, count: counts[i]! }]));
    const within = new Map<Bed, Bed>();
    for (const bed of this.beds) {
      const stock = limited.get(bed.stock)!;
      if (stock.count > 0) within.set(bed, { ...bed, stock });
    }
    const dearest = Math.max(...problem.stocks.map((stock) => stock.price / usableArea(stock, problem.saw)));
    const outside = new Map([...within].map(([whole, bed]) => [bed, whole]));
    const { bound, columns } = costBound(
      [...within.values()],
      wanted,
      areas.map((area) => DEAR * dearest * area),
      {
        start: this.#columns.flatMap(({ bed, counts: copies }) => {
          const its = within.get(bed);
          return its === undefined ? [] : [{ bed: its, counts: copies }];
        }),
        solver,
        rounds: ROUNDS,
        mayGoOn,
        enough: cost * (1 + 1e-9) + 1e-3,
      },
    );
    const others = this.#columns.filter(({ bed }) => !within.has(bed));
    this.#columns = [
      ...others,
      ...columns.map(({ bed, counts: copies }) => ({ bed: outside.get(bed)!, counts: copies })),
    ];
    return bound > cost * (1 + 1e-9) + 1e-3;
  }
}

/** Sets of sheets with room for an area that cost at least `from` and less than `below`, the cheapest first; null where there are too many. */
function setsOf(
  { stocks, saw }: CuttingProblem,
  area: number,
  from: number,
  below: number,
): readonly StockSet[] | null {
  const sets: StockSet[] = [];
  let looked = 0;
  const add = (index: number, counts: readonly number[], cost: number, room: number): void => {
    looked += 1;
    const stock: Stock | undefined = stocks[index];
    if (looked > MOST_SETS) return;
    if (stock === undefined) {
      if (cost >= from && room >= area) sets.push({ counts, cost });
      return;
    }
    const each = usableArea(stock, saw);
    const most = Math.min(stock.count ?? Infinity, Math.ceil((below - cost) / stock.price) - 1);
    for (let count = 0; count <= most; count += 1)
      add(index + 1, [...counts, count], cost + count * stock.price, room + count * each);
  };
  add(0, [], 0, 0);
  return looked > MOST_SETS ? null : sets.sort((a, b) => a.cost - b.cost);
}
