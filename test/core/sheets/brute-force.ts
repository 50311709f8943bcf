import type { CuttingProblem } from '../../../shared-core/sheets/model.js';

/**
 * The least cost of a small problem, by trying every set of copies on every sheet: whether a set can be sawn from a rectangle
 * in so many stages is found by trying every place of every cut. It knows no strips, columns or bounds.
 */
export function cheapestByBruteForce({ pieces, stocks, saw }: CuttingProblem): number {
  const copies = pieces.flatMap((piece, i) =>
    Array.from({ length: piece.count }, () => i).filter(() =>
      stocks.some((stock) => holds([i], stock.length, stock.width)),
    ),
  );
  const all = (1 << copies.length) - 1;
  const oneSheet = stocks.map(({ length, width }) =>
    Array.from({ length: all + 1 }, (_, set) =>
      holds(
        copies.filter((_piece, bit) => (set >> bit) & 1),
        length,
        width,
      ),
    ),
  );
  const known = new Map<string, number>();
  return cheapest(
    all,
    stocks.map(({ count }) => count ?? copies.length),
  );

  /** Of the copies left the first goes on some sheet that is left. */
  function cheapest(set: number, left: readonly number[]): number {
    if (set === 0) return 0;
    const key = `${set}|${left.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let least = Infinity;
    for (let part = set; part > 0; part = (part - 1) & set)
      if ((part & (set & -set)) !== 0)
        stocks.forEach(({ price }, i) => {
          if (left[i]! > 0 && oneSheet[i]![part]!)
            least = Math.min(least, price + cheapest(set & ~part, left.with(i, left[i]! - 1)));
        });
    known.set(key, least);
    return least;
  }

  function holds(which: readonly number[], length: number, width: number): boolean {
    const ways = saw.first === 'either' ? (['along', 'across'] as const) : [saw.first];
    return ways.some((way) => sawn(which, length, width, way, 1));
  }

  /** Whether these copies come out of a rectangle whose next cuts run this way; places of cuts are whole numbers. */
  function sawn(
    which: readonly number[],
    length: number,
    width: number,
    way: 'along' | 'across',
    stage: number,
  ): boolean {
    if (which.length === 0) return true;
    if (which.length === 1 && isPiece(which[0]!, length, width)) return true;
    if (stage > saw.stages) return false;
    const next = way === 'along' ? 'across' : 'along';
    if (sawn(which, length, width, next, stage + 1)) return true;
    const extent = way === 'along' ? width : length;
    // Of the copies on this side of the first cut the first is always one: the parts could stand in any order.
    for (let cut = 1; cut < extent; cut += 1) {
      const rest = Math.max(0, extent - cut - saw.kerf);
      for (const part of partsWithFirst(which)) {
        const others = which.filter((_, i) => !part.includes(i));
        const inside = part.map((i) => which[i]!);
        const first = way === 'along' ? ([length, cut] as const) : ([cut, width] as const);
        const second = way === 'along' ? ([length, rest] as const) : ([rest, width] as const);
        if (
          sawn(inside, ...first, next, stage + 1) &&
          (others.length === 0 || (rest > 0 && sawn(others, ...second, way, stage)))
        )
          return true;
      }
    }
    return false;
  }

  function isPiece(i: number, length: number, width: number): boolean {
    const piece = pieces[i]!;
    return (
      (piece.length === length && piece.width === width) ||
      (piece.turns && piece.length === width && piece.width === length)
    );
  }
}

function partsWithFirst(which: readonly number[]): readonly (readonly number[])[] {
  const rest = which.slice(1).map((_, i) => i + 1);
  return Array.from({ length: 1 << rest.length }, (_, set) => [0, ...rest.filter((_each, bit) => (set >> bit) & 1)]);
}
