import type { PDFDocument } from '@cantoo/pdf-lib';
import type { Fonts } from './fonts.js';
import { POINTS_PER_MM } from './fonts.js';
import type { PageSize } from '../page-size.js';
import { Pen } from './pen.js';

/** Millimetres left free about what a page says, for the grip of a printer and for a clip. */
export const MARGIN = 14;

/** A piece of a paper that is never parted by the end of a page. All measures are in millimetres. */
export interface Piece {
  readonly height: number;
  /** Blank space above it, which falls away at the head of a page. */
  readonly above: number;
  /** Draws it with its top left corner at (x, y). */
  draw(pen: Pen, x: number, y: number): void;
  /** True where it may not be the last on its page: a heading, the head of a table. */
  readonly leads: boolean;
  /** Begins a page of its own. */
  readonly opensPage?: boolean;
  /** Is drawn again at the head of the next page where what follows it is parted: the head of a table. */
  readonly again?: Piece;
}

/** Fills pages from top to bottom, and opens the next where a piece has no room. */
export class Flow {
  readonly #pens: Pen[] = [];
  #y = 0;

  readonly #document: PDFDocument;
  readonly #fonts: Fonts;
  readonly #size: PageSize;

  constructor(document: PDFDocument, fonts: Fonts, size: PageSize) {
    this.#document = document;
    this.#fonts = fonts;
    this.#size = size;
  }

  get width(): number {
    return this.#size.width - 2 * MARGIN;
  }

  /** Room from the head to the foot of an empty page. */
  get height(): number {
    return this.#size.height - 2 * MARGIN - FOOT;
  }

  /** How many pages there are. */
  get pages(): number {
    return this.#pens.length;
  }

  pen(page: number): Pen {
    return this.#pens[page]!;
  }

  /** Draws pieces one under the other; a piece that leads goes to the next page with what it leads. */
  add(pieces: readonly Piece[]): void {
    pieces.forEach((piece, i) => {
      const group = together(pieces, i);
      const needed = group.reduce((sum, one) => sum + one.above + one.height, 0);
      const isFirst = this.#pens.length === 0;
      if (isFirst || piece.opensPage === true || this.#y + Math.min(needed, this.height) > this.height) {
        if (isFirst || this.#y > 0) this.open();
        if (piece.again !== undefined) this.#draw(piece.again);
      }
      this.#draw(piece);
    });
  }

  /** A new page. */
  open(): void {
    const { width, height } = this.#size;
    const page = this.#document.addPage([width * POINTS_PER_MM, height * POINTS_PER_MM]);
    this.#pens.push(new Pen(page, this.#fonts));
    this.#y = 0;
  }

  #draw(piece: Piece): void {
    const above = this.#y === 0 ? 0 : piece.above;
    piece.draw(this.#pens.at(-1)!, MARGIN, MARGIN + this.#y + above);
    this.#y += above + piece.height;
  }
}

/** Room at the foot of each page for its number. */
const FOOT = 8;

/** A piece with all that must not be parted from it. */
function together(pieces: readonly Piece[], from: number): readonly Piece[] {
  let to = from;
  while (pieces[to]?.leads === true && to + 1 < pieces.length) to += 1;
  return pieces.slice(from, to + 1);
}
