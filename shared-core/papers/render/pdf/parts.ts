import { heightOf, SLACK, type Piece, type Room } from './flow.js';

/**
 * The parts of a paper, as few pages as they go on without any of them being parted: one that goes on a page with its pictures a
 * little smaller has them so, and parts that follow each other share a page where all of them go on it whole.
 */
export function packed(pieces: readonly Piece[], room: Room): readonly Piece[] {
  return pages(partsOf(pieces), room).flatMap((parts) => {
    const together = parts.flatMap((part, i) => (i === 0 ? part : besideOthers(part)));
    return squeezed(together, room.height - SLACK);
  });
}

type Part = readonly Piece[];

/** What begins pages of its own, with all that follows it. */
function partsOf(pieces: readonly Piece[]): readonly Part[] {
  const parts: Piece[][] = [];
  for (const piece of pieces) {
    if (piece.opensPage === true || parts.length === 0) parts.push([]);
    parts.at(-1)!.push(piece);
  }
  return parts;
}

/** Parts that share a page; one that is longer stands by itself. */
function pages(parts: readonly Part[], room: Room): readonly (readonly Part[])[] {
  const found: Part[][] = [];
  let left = 0;
  for (const part of parts) {
    const height = leastOf(part);
    if (height <= left) found.at(-1)!.push(part);
    else found.push([part]);
    left = height <= left ? left - height : room.height - SLACK - height;
  }
  return found;
}

const besideOthers = (part: Part): Part => part.map((piece) => ({ ...piece, opensPage: false }));

const leastOf = (part: Part): number =>
  heightOf(part) - part.reduce((sum, { height, least }) => sum + height - (least ?? height), 0);

/** With its pictures smaller by the same share of what they can give, so that all go on one page; as it is where that is too little. */
function squeezed(part: Part, height: number): Part {
  const over = heightOf(part) - height;
  const most = heightOf(part) - leastOf(part);
  if (over <= 0 || over > most) return part;
  const share = over / most;
  return part.map((piece) =>
    piece.least === undefined ? piece : (piece.within?.(piece.height - share * (piece.height - piece.least)) ?? piece),
  );
}
