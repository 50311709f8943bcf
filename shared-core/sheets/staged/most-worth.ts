import { fill } from './knapsack.js';
import type { Bed } from './lie.js';

/**
 * What one sheet can be worth at the most, at a price a piece, and the copies of a pattern that comes near it. Each stack
 * heeds how many copies are wanted, each strip how many of one run; the strips of a sheet heed it no more, so that the
 * bound holds for every pattern (the staged knapsacks of Gilmore and Gomory 1965, relaxed in the copies).
 */
export function mostWorth(bed: Bed, wanted: readonly number[], prices: readonly number[]): MostWorth {
  const exact = mostOf(bed, wanted, prices);
  if (exact !== null) return exact;
  // A bound with all pieces a little lower, and copies that fit with all a little higher.
  const [lower, higher] = (['down', 'up'] as const).map((way) => mostOf(onGrid(bed, way), wanted, prices, Infinity)!);
  return { bound: lower!.bound, value: higher!.value, counts: higher!.counts };
}

interface MostWorth {
  readonly bound: number;
  readonly value: number;
  readonly counts: readonly number[];
}

/** More towers than these are not told apart to the micrometre: there are as many as sums of the heights of their pieces. */
const MOST_TOWERS = 4000;
/** So many steps has the grid that heights are then rounded to. */
const GRID_STEPS = 1000;

/** The bed with the heights of what lies on it rounded to a grid; no higher than may be. */
function onGrid(bed: Bed, way: 'down' | 'up'): Bed {
  const step = Math.ceil(bed.highest / GRID_STEPS);
  const rounded = (rise: number): number =>
    way === 'down' ? Math.max(1, Math.floor(rise / step) * step) : Math.min(bed.highest, Math.ceil(rise / step) * step);
  const columns = bed.columns.map(({ run, lies }) => ({
    run,
    lies: lies.map((lie) => ({ ...lie, rise: rounded(lie.rise) })),
  }));
  return { ...bed, columns };
}

/** null where there are more than so many towers. */
function mostOf(
  bed: Bed,
  wanted: readonly number[],
  prices: readonly number[],
  mostTowers = MOST_TOWERS,
): MostWorth | null {
  let room = mostTowers;
  const columns: Standing[] = [];
  for (const { run, lies } of bed.columns) {
    const built = (bed.stages === 2 ? single : towers)(lies, bed.highest, wanted, prices, room);
    if (built === null) return null;
    room -= built.length;
    columns.push({ run, most: lies.reduce((sum, { piece }) => sum + wanted[piece]!, 0), towers: built });
  }
  const strips = stripsOf(bed, columns);
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
    if (count > 0) for (const piece of strips[i]!.pieces()) counts[piece] = counts[piece]! + count;
  });
  return { bound, value: filling.value, counts };
}

/** What may stand side by side in a strip: the towers of one run, the lowest first. */
interface Standing {
  readonly run: number;
  readonly most: number;
  readonly towers: readonly Tower[];
}

interface StripWorth {
  readonly rise: number;
  readonly value: number;
  readonly bound: number;
  readonly pieces: () => readonly number[];
}

/** The strips of every rise that is worth more than a lower one. */
function stripsOf(bed: Bed, columns: readonly Standing[]): readonly StripWorth[] {
  const rises = [...new Set(columns.flatMap(({ towers: each }) => each.map(({ rise }) => rise)))].sort((a, b) => a - b);
  const strips: StripWorth[] = [];
  const passed = columns.map(() => 0);
  let before = 0;
  for (const rise of rises) {
    const tallest = columns.map(({ towers: each }, i) => {
      while (passed[i]! < each.length && each[passed[i]!]!.rise <= rise) passed[i] = passed[i]! + 1;
      const tower = each[passed[i]! - 1];
      return bed.stages === 2 && tower?.rise !== rise ? undefined : tower;
    });
    const items = columns.map(({ run, most }, i) => ({ size: run, value: tallest[i]?.value ?? 0, most }));
    const filling = fill(items, bed.run, 1500);
    // A higher strip that is worth no more than a lower one is never needed.
    if (bed.stages === 3 && filling.bound <= before) continue;
    before = Math.max(before, filling.bound);
    const pieces = (): readonly number[] =>
      filling.counts.flatMap((count, i) => Array.from({ length: count }, () => tallest[i]?.pieces() ?? []).flat());
    strips.push({ rise, value: filling.value, bound: filling.bound, pieces });
  }
  return strips;
}

interface Tower {
  readonly rise: number;
  readonly value: number;
  readonly pieces: () => readonly number[];
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
      best.set(rise, { rise, value: prices[piece]!, pieces: () => [piece] });
  return [...best.values()].sort((a, b) => a.rise - b.rise);
}

/** A tower while it is built: copies of one piece on one that stood before. */
interface Growing {
  readonly rise: number;
  readonly value: number;
  readonly on: Growing | null;
  readonly piece: number;
  readonly copies: number;
}

/**
 * The best towers of the pieces of one run for every rise, lowest first, each worth more than those below it; null where there
 * are more than so many.
 */
function towers(
  lies: Bed['columns'][number]['lies'],
  highest: number,
  wanted: readonly number[],
  prices: readonly number[],
  mostTowers: number,
): readonly Tower[] | null {
  let all: readonly Growing[] = [{ rise: 0, value: 0, on: null, piece: -1, copies: 0 }];
  for (const { piece, rise } of lies) {
    const price = prices[piece]!;
    if (price <= 0) continue;
    const grown = [...all];
    for (const on of all)
      for (let copies = 1; copies <= wanted[piece]! && on.rise + copies * rise <= highest; copies += 1)
        grown.push({ rise: on.rise + copies * rise, value: on.value + copies * price, on, piece, copies });
    all = rising(grown);
    if (all.length > mostTowers + 1) return null;
  }
  return all.slice(1).map((tower) => ({ rise: tower.rise, value: tower.value, pieces: () => piecesOf(tower) }));
}

/** Those that are worth more than all that are no higher: on another one the same would stand for less. */
function rising(all: readonly Growing[]): readonly Growing[] {
  const best: Growing[] = [];
  for (const one of all.toSorted((a, b) => a.rise - b.rise || b.value - a.value))
    if (best.length === 0 || one.value > best.at(-1)!.value) best.push(one);
  return best;
}

function piecesOf(tower: Growing): readonly number[] {
  const pieces: number[] = [];
  for (let at: Growing | null = tower; at !== null; at = at.on)
    for (let copy = 0; copy < at.copies; copy += 1) pieces.push(at.piece);
  return pieces;
}
