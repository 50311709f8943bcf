import type { CuttingProblem, Saw, Stock } from '../model.js';
import type { Bed } from '../staged/lie.js';
import { mostWorth } from '../staged/most-worth.js';
import type { CoverProgram, CoverSolver } from './cover.js';

/** A pattern as the bound sees it: which bed, and copies of each piece. */
export interface Column {
  readonly bed: Bed;
  readonly counts: readonly number[];
}

/** What a sheet has room for: trim taken off, and a kerf added, as pieces have one each. */
export const usableArea = ({ length, width }: Stock, { trim, kerf }: Saw): number =>
  (length - 2 * trim + kerf) * (width - 2 * trim + kerf);

/** The least cost that the areas alone allow: all pieces poured into the sheets that are cheapest by area. */
export function areaBound(
  { stocks, saw }: CuttingProblem,
  wanted: readonly number[],
  areas: readonly number[],
): number {
  let left = wanted.reduce((sum, count, i) => sum + count * areas[i]!, 0);
  let cost = 0;
  const usable = stocks
    .map((stock) => ({ ...stock, area: usableArea(stock, saw) }))
    .sort((a, b) => a.price * b.area - b.price * a.area);
  for (const stock of usable) {
    if (left <= 0) break;
    const sheets = Math.min(left / stock.area, stock.count ?? Infinity);
    cost += sheets * stock.price;
    left -= sheets * stock.area;
  }
  return cost;
}

/** What the column generation starts from, and how far it may go. */
export interface Generation {
  readonly start: readonly Column[];
  readonly solver: CoverSolver;
  /** The most steps; with fewer than it takes the bound is still true, only lower. */
  readonly rounds: number;
  /** Asked before each step. */
  readonly mayGoOn: () => boolean;
  /** Ends it as soon as the bound is over this. */
  readonly enough?: number;
}

/**
 * A lower bound on the cost by column generation: patterns are added while one is worth more than its sheet costs. At each
 * step the prices, made as much smaller as the best pattern is worth too much, prove a bound (Farley 1990); the greatest is kept.
 * @param without what it costs to leave out one copy of each piece; null where all are to be cut
 */
export function costBound(
  beds: readonly Bed[],
  wanted: readonly number[],
  without: readonly number[] | null,
  { start, solver, rounds, mayGoOn, enough = Infinity }: Generation,
): { readonly bound: number; readonly columns: readonly Column[] } {
  const columns = [...start];
  const scarce = [...new Set(beds.map(({ stock }) => stock))].filter(({ count }) => count !== null);
  let bound = 0;
  for (let round = 0; round < rounds && bound <= enough && mayGoOn(); round += 1) {
    const solution = solver.relaxed(coverOf(columns, wanted, without));
    if (solution === null) break;
    const prices = solution.prices.map((price, i) => Math.min(Math.max(0, price), without?.[i] ?? Infinity));
    const named = [...new Set(columns.map(({ bed }) => bed.stock))].filter(({ count }) => count !== null);
    const rents = scarce.map((stock) => Math.max(0, -(solution.scarcity[named.indexOf(stock)] ?? 0)));
    // A sheet costs its price and the rent of its stock; all of both shrinks until no pattern is worth more.
    let ratio = 1;
    let grew = false;
    for (const bed of beds) {
      const rent = rents[scarce.indexOf(bed.stock)] ?? 0;
      const most = mostWorth(bed, wanted, prices);
      ratio = Math.max(ratio, (most.bound - rent) / bed.stock.price);
      if (most.value > bed.stock.price + rent + 1e-6) {
        columns.push({ bed, counts: most.counts });
        grew = true;
      }
    }
    const worth =
      prices.reduce((sum, price, i) => sum + price * wanted[i]!, 0) -
      rents.reduce((sum, rent, i) => sum + rent * scarce[i]!.count!, 0);
    bound = Math.max(bound, worth / ratio);
    if (!grew) break;
  }
  return { bound, columns };
}

/** The choice of patterns as a covering program; behind them, where that is allowed, what it costs to go without a copy. */
export function coverOf(
  columns: readonly Column[],
  wanted: readonly number[],
  without: readonly number[] | null = null,
): CoverProgram {
  const scarce = [...new Set(columns.map(({ bed }) => bed.stock))].filter(({ count }) => count !== null);
  const patterns = columns.map(({ bed, counts }) => ({
    cost: bed.stock.price,
    most: bed.stock.count,
    gives: counts.flatMap((count, row) => (count > 0 ? [[row, count] as const] : [])),
    uses: bed.stock.count === null ? null : scarce.indexOf(bed.stock),
  }));
  const left = (without ?? []).map((cost, row) => ({ cost, most: null, gives: [[row, 1] as const], uses: null }));
  return {
    columns: [...patterns, ...left],
    needs: wanted,
    scarce: scarce.map(({ count }) => count!),
  };
}

/** The least sum of sheet prices that is not under `bound`: what is paid is paid in whole sheets. */
export function payable(bound: number, prices: readonly number[]): number {
  const least = Math.max(0, Math.ceil(bound - 1e-4));
  const dearest = Math.max(...prices, 1);
  // Sums of prices up to one sheet over the bound; past that some sum is always reached.
  const limit = least + dearest;
  if (limit > 5_000_000) return least;
  const reached = new Uint8Array(limit + 1);
  reached[0] = 1;
  for (const price of new Set(prices))
    for (let sum = price; sum <= limit; sum += 1) if (reached[sum - price] === 1) reached[sum] = 1;
  for (let sum = least; sum <= limit; sum += 1) if (reached[sum] === 1) return sum;
  return least;
}
