import type { CuttingProblem } from '../model.js';
import type { Bed } from '../staged/lie.js';
import { mostWorth } from '../staged/most-worth.js';
import type { CoverProgram, CoverSolver } from './cover.js';

/** A pattern as the bound sees it: which bed, and copies of each piece. */
export interface Column {
  readonly bed: Bed;
  readonly counts: readonly number[];
}

/** The least cost that the areas alone allow: all pieces poured into the sheets that are cheapest by area. */
export function areaBound(
  { stocks, saw }: CuttingProblem,
  wanted: readonly number[],
  areas: readonly number[],
): number {
  let left = wanted.reduce((sum, count, i) => sum + count * areas[i]!, 0);
  let cost = 0;
  const usable = stocks
    .map((stock) => ({
      ...stock,
      area: (stock.length - 2 * saw.trim + saw.kerf) * (stock.width - 2 * saw.trim + saw.kerf),
    }))
    .sort((a, b) => a.price * b.area - b.price * a.area);
  for (const stock of usable) {
    if (left <= 0) break;
    const sheets = Math.min(left / stock.area, stock.count ?? Infinity);
    cost += sheets * stock.price;
    left -= sheets * stock.area;
  }
  return cost;
}

/**
 * A lower bound on the cost by column generation: patterns are added while one is worth more than its sheet costs. At each
 * step the prices, made as much smaller as the best pattern is worth too much, prove a bound (Farley 1990); the greatest is kept.
 * @param rounds the most steps; with fewer than it takes the bound is still true, only lower
 * @param mayGoOn asked before each step
 */
export function costBound(
  beds: readonly Bed[],
  wanted: readonly number[],
  start: readonly Column[],
  solver: CoverSolver,
  rounds: number,
  mayGoOn: () => boolean,
): { readonly bound: number; readonly columns: readonly Column[] } {
  const columns = [...start];
  const scarce = [...new Set(beds.map(({ stock }) => stock))].filter(({ count }) => count !== null);
  let bound = 0;
  for (let round = 0; round < rounds && mayGoOn(); round += 1) {
    const program = coverOf(columns, wanted);
    const solution = solver.relaxed(program);
    if (solution === null) break;
    const prices = solution.prices.map((price) => Math.max(0, price));
    const rents = scarce.map((_, i) => Math.max(0, -(solution.scarcity[i] ?? 0)));
    let ratio = 1;
    let grew = false;
    for (const bed of beds) {
      const rent = rents[scarce.indexOf(bed.stock)] ?? 0;
      const most = mostWorth(bed, wanted, prices);
      ratio = Math.max(ratio, most.bound / (bed.stock.price + rent));
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

/** The choice of patterns as a covering program. */
export function coverOf(columns: readonly Column[], wanted: readonly number[]): CoverProgram {
  const scarce = [...new Set(columns.map(({ bed }) => bed.stock))].filter(({ count }) => count !== null);
  return {
    columns: columns.map(({ bed, counts }) => ({
      cost: bed.stock.price,
      most: bed.stock.count,
      gives: counts.flatMap((count, row) => (count > 0 ? [[row, count] as const] : [])),
      uses: bed.stock.count === null ? null : scarce.indexOf(bed.stock),
    })),
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
