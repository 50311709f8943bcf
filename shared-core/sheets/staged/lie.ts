import type { CuttingProblem, Saw, Stock } from '../model.js';

/**
 * A piece as it may lie, kerf included, seen from the first cut: `run` along the strip, `rise` across it. With every size
 * and the sheet itself larger by the kerf, cuts take no room and sums are exact.
 */
export interface Lie {
  /** Index of the piece in the problem. */
  readonly piece: number;
  readonly turned: boolean;
  readonly run: number;
  readonly rise: number;
}

/** A stock as the first cuts find it. */
export interface Bed {
  readonly stock: Stock;
  readonly first: 'along' | 'across';
  /** Along the first cuts, and across them; trim taken off, kerf added. */
  readonly run: number;
  readonly rise: number;
  /** Greatest strip and greatest part of a strip that the saw cuts off, kerf added. */
  readonly highest: number;
  readonly longest: number;
  /** The lies that fit, those of one run together. */
  readonly columns: readonly Column[];
  readonly stages: Saw['stages'];
}

/** All lies of one run: what can stand one above the other in a part of a strip. */
export interface Column {
  readonly run: number;
  readonly lies: readonly Lie[];
}

/** Every way in which the first cuts can run over every stock. */
export function bedsOf(problem: CuttingProblem): readonly Bed[] {
  const { saw } = problem;
  const ways = saw.first === 'either' ? (['along', 'across'] as const) : [saw.first];
  return problem.stocks.flatMap((stock) => ways.map((first) => bedOf(problem, stock, first)));
}

function bedOf({ pieces, saw }: CuttingProblem, stock: Stock, first: 'along' | 'across'): Bed {
  const { kerf } = saw;
  const length = stock.length - 2 * saw.trim + kerf;
  const width = stock.width - 2 * saw.trim + kerf;
  const [run, rise] = first === 'along' ? [length, width] : [width, length];
  const highest = Math.min(rise, saw.rip === null ? rise : saw.rip + kerf);
  const longest = Math.min(run, saw.crosscut === null ? run : saw.crosscut + kerf);
  const lies = pieces.flatMap((piece, index): Lie[] => {
    const [along, across] = [piece.length + kerf, piece.width + kerf];
    const flat = { piece: index, turned: false, run: along, rise: across };
    const turned = { piece: index, turned: true, run: across, rise: along };
    const ways = piece.turns && along !== across ? [flat, turned] : [flat];
    const seen = first === 'along' ? ways : ways.map((lie) => ({ ...lie, run: lie.rise, rise: lie.run }));
    return seen.filter((lie) => lie.run <= longest && lie.rise <= highest);
  });
  const runs = [...new Set(lies.map((lie) => lie.run))].sort((a, b) => b - a);
  const columns = runs.map((each) => ({
    run: each,
    lies: lies.filter((lie) => lie.run === each).sort((a, b) => b.rise - a.rise || a.piece - b.piece),
  }));
  return { stock, first, run, rise, highest, longest, columns, stages: saw.stages };
}
