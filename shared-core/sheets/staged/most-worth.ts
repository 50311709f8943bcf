import { fill } from './knapsack.js';
import type { Bed } from './lie.js';

/**
 * What one sheet can be worth at the most, at a price a piece, and the copies of a pattern that comes near it. Each stack
 * heeds how many copies are wanted, each strip how many of one run; the strips of a sheet heed it no more, so that the
 * bound holds for every pattern (the staged knapsacks of Gilmore and Gomory 1965, relaxed in the copies).
 */
export function mostWorth(
  bed: Bed,
  wanted: readonly number[],
  prices: readonly number[],
): { readonly bound: number; readonly value: number; readonly counts: readonly number[] } {
  const columns = bed.columns.map((column) => ({
    run: column.run,
    most: column.lies.reduce((sum, { piece }) => sum + wanted[piece]!, 0),
    towers: (bed.stages === 2 ? single : towers)(column.lies, bed.highest, wanted, prices),
  }));
  const rises = [...new Set(columns.flatMap(({ towers: each }) => each.map(({ rise }) => rise)))].sort((a, b) => a - b);
  const strips: { rise: number; value: number; bound: number; pieces: readonly number[] }[] = [];
  let before = 0;
  for (const rise of rises) {
    const tallest = columns.map((column) =>
      bed.stages === 2
        ? column.towers.find((tower) => tower.rise === rise)
        : column.towers.findLast((tower) => tower.rise <= rise),
    );
    const items = columns.map(({ run, most }, i) => ({ size: run, value: tallest[i]?.value ?? 0, most }));
    const filling = fill(items, bed.run, 1500);
    // A higher strip that is worth no more than a lower one is never needed.
    if (bed.stages === 3 && filling.bound <= before) continue;
    before = Math.max(before, filling.bound);
    const pieces = filling.counts.flatMap((count, i) =>
      Array.from({ length: count }, () => tallest[i]?.pieces ?? []).flat(),
    );
    strips.push({ rise, value: filling.value, bound: filling.bound, pieces });
  }
  const across = (value: (strip: (typeof strips)[number]) => number): ReturnType<typeof fill> =>
    fill(
      strips.map((strip) => ({ size: strip.rise, value: value(strip), most: Math.floor(bed.rise / strip.rise) })),
      bed.rise,
      20_000,
    );
  const filling = across((strip) => strip.value);
  const exact = strips.every((strip) => strip.value === strip.bound);
  const bound = exact ? filling.bound : across((strip) => strip.bound).bound;
  const counts = prices.map(() => 0);
  filling.counts.forEach((count, i) => {
    for (const piece of strips[i]!.pieces) counts[piece] = counts[piece]! + count;
  });
  return { bound, value: filling.value, counts };
}

interface Tower {
  readonly rise: number;
  readonly value: number;
  readonly pieces: readonly number[];
}

/** With two stages nothing stands on another piece: the dearest piece of each rise. */
function single(
  lies: Bed['columns'][number]['lies'],
  highest: number,
  wanted: readonly number[],
  prices: readonly number[],
): readonly Tower[] {
  const best = new Map<number, Tower>();
  for (const { piece, rise } of lies)
    if (rise <= highest && wanted[piece]! > 0 && prices[piece]! > (best.get(rise)?.value ?? 0))
      best.set(rise, { rise, value: prices[piece]!, pieces: [piece] });
  return [...best.values()];
}

/** The best towers of the pieces of one run for every rise, lowest first, each worth more than those below it. */
function towers(
  lies: Bed['columns'][number]['lies'],
  highest: number,
  wanted: readonly number[],
  prices: readonly number[],
): readonly Tower[] {
  let all = new Map<number, Tower>([[0, { rise: 0, value: 0, pieces: [] }]]);
  for (const { piece, rise } of lies) {
    if (prices[piece]! <= 0) continue;
    const grown = new Map(all);
    for (const tower of all.values())
      for (let copies = 1; copies <= wanted[piece]! && tower.rise + copies * rise <= highest; copies += 1) {
        const next = {
          rise: tower.rise + copies * rise,
          value: tower.value + copies * prices[piece]!,
          pieces: [...tower.pieces, ...Array.from({ length: copies }, () => piece)],
        };
        if ((grown.get(next.rise)?.value ?? 0) < next.value) grown.set(next.rise, next);
      }
    all = grown;
  }
  const rising: Tower[] = [];
  for (const tower of [...all.values()].sort((a, b) => a.rise - b.rise))
    if (tower.pieces.length > 0 && tower.value > (rising.at(-1)?.value ?? 0)) rising.push(tower);
  return rising;
}
