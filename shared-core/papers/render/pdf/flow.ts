import type { PageSize } from '../page-size.js';
import type { Pen } from './pen.js';

/** Millimetres left free about what a page says, for the grip of a printer and for a clip. */
export const MARGIN = 14;

/** A heading as readers of a PDF list it. */
export interface Mark {
  readonly level: 1 | 2 | 3;
  readonly text: string;
}

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
  /** The heading that it is. */
  readonly mark?: Mark;
  /** The same, only smaller, where that has room in a height; null where it would be too small to read. */
  readonly within?: (height: number) => Piece | null;
  /** The smallest height that `within` takes. */
  readonly least?: number;
  /** Is drawn again at the head of the next page where what follows it is parted: the head of a table. */
  readonly again?: Piece;
}

/** A piece where it stands: its page, counted from 0, and how far down it, in millimetres from its upper edge. */
export interface Placed {
  readonly piece: Piece;
  readonly page: number;
  readonly y: number;
}

/** Room on a page between its margins, in millimetres. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

export const roomOn = ({ width, height }: PageSize): Room => ({
  width: width - 2 * MARGIN,
  height: height - 2 * MARGIN - FOOT,
});

/**
 * Where pieces stand that fill pages from top to bottom, one under the other: the next page is opened where a piece has no room, and
 * a piece that leads goes there with what it leads.
 */
export function placed(pieces: readonly Piece[], room: Room): readonly Placed[] {
  const found: Placed[] = [];
  let page = -1;
  let y = 0;
  const place = (piece: Piece): void => {
    const above = y === 0 ? 0 : piece.above;
    found.push({ piece, page, y: MARGIN + y + above });
    y += above + piece.height;
  };
  pieces.forEach((piece, i) => {
    const needed = heightOf(together(pieces, i));
    const left = room.height - y - piece.above;
    const smaller = page >= 0 && y > 0 && piece.height > left ? (piece.within?.(left) ?? null) : null;
    if (smaller !== null) {
      place(smaller);
      return;
    }
    if (page < 0 || piece.opensPage === true || y + Math.min(needed, room.height) > room.height + SLACK) {
      if (page < 0 || y > 0) {
        page += 1;
        y = 0;
      }
      if (piece.again !== undefined) place(piece.again);
    }
    place(piece);
  });
  return found;
}

/** Sums of the same heights in another order differ by less, in millimetres. */
export const SLACK = 1e-6;

/** Of pieces that stand under each other. */
export const heightOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { above, height }) => sum + above + height, 0);

/** Room at the foot of each page for its number. */
const FOOT = 8;

/** A piece with all that must not be parted from it. */
function together(pieces: readonly Piece[], from: number): readonly Piece[] {
  let to = from;
  while (pieces[to]?.leads === true && to + 1 < pieces.length) to += 1;
  return pieces.slice(from, to + 1);
}
