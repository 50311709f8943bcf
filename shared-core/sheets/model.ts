import type { Micrometres } from '../length/units.js';

/** A size to be cut from sheets of one board. */
export interface Piece {
  /** Unique in the problem. */
  readonly id: string;
  /** Cut size. `length` runs along the sheet's length unless the piece is turned. */
  readonly length: Micrometres;
  readonly width: Micrometres;
  readonly count: number;
  /** True where it may lie across the sheet: the board has no grain. */
  readonly turns: boolean;
}

/** Sheets of one size, bought or left over from another job. */
export interface Stock {
  readonly name: string;
  readonly length: Micrometres;
  readonly width: Micrometres;
  /** Price of one sheet in whole pence, cents or other smallest coins; over 0. */
  readonly price: number;
  /** How many there are; null where more can be bought. */
  readonly count: number | null;
}

/** How the saw cuts. */
export interface Saw {
  /** Width of a cut. */
  readonly kerf: Micrometres;
  /** What is taken off each of the four edges of a sheet before anything else; 0 for nothing. */
  readonly trim: Micrometres;
  /**
   * 2: strips are ripped off the sheet, and pieces as wide as the strip cut from them. 3: the cross-cut parts may be cut once
   * more, into pieces that lie one above the other, or to a lesser width.
   */
  readonly stages: 2 | 3;
  /** Greatest width of a strip between fence and blade; null for any. */
  readonly rip: Micrometres | null;
  /** Greatest length that is cross-cut off a strip; null for any. */
  readonly crosscut: Micrometres | null;
  /** Whether the first cuts may run along the sheet, across it, or as it comes out cheaper. */
  readonly first: 'along' | 'across' | 'either';
}

/** Pieces of one board, the sheets that there are, and the saw. */
export interface CuttingProblem {
  readonly pieces: readonly Piece[];
  readonly stocks: readonly Stock[];
  readonly saw: Saw;
  /** The least length and width of an offcut that is kept. */
  readonly offcut: { readonly length: Micrometres; readonly width: Micrometres };
}

/** What one cut leaves: a piece, a part that is cut further, or an offcut. Sizes without the kerf around them. */
export type Part =
  | {
      readonly kind: 'piece';
      readonly piece: string;
      readonly turned: boolean;
      readonly at: Corner;
      readonly size: Size;
    }
  /** What is left; `kept` where it is large enough to be stock for another job. */
  | { readonly kind: 'offcut'; readonly kept: boolean; readonly at: Corner; readonly size: Size }
  | {
      readonly kind: 'cut';
      /** `along`: the cuts run along the sheet's length and the parts lie one above the other; `across`: side by side. */
      readonly cuts: 'along' | 'across';
      readonly at: Corner;
      readonly size: Size;
      /** In the order in which they come off the saw, from the sheet's corner. */
      readonly parts: readonly Part[];
    };

/** The corner nearest to the sheet's own: x along its length, y along its width, from the edge of the untrimmed sheet. */
export interface Corner {
  readonly x: Micrometres;
  readonly y: Micrometres;
}
export interface Size {
  readonly length: Micrometres;
  readonly width: Micrometres;
}

/** One sheet with its cuts. */
export interface SheetLayout {
  readonly stock: string;
  readonly part: Part;
}

export interface CuttingPlan {
  readonly sheets: readonly SheetLayout[];
  readonly cost: number;
  /** No way to cut these pieces with this saw costs less. */
  readonly bound: number;
  /** Ids of pieces that no sheet can hold. */
  readonly misfits: readonly string[];
  /** Pieces that no sheet is left for, where no plan was found that has one for all. */
  readonly lacking: readonly { readonly piece: string; readonly count: number }[];
}
