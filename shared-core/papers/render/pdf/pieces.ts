import { textPieces } from './text-pieces.js';
import { tablePieces } from './table-pieces.js';
import { picturePiece } from './picture-piece.js';
import type { Block } from '../../paper.js';
import type { Piece, Room } from './flow.js';
import type { Fonts } from './fonts.js';

/** The pieces of one block, in the order to read. `width` and `height` are the room of a page, in millimetres. */
export function piecesOf(block: Block<string>, fonts: Fonts, room: Room): readonly Piece[] {
  switch (block.kind) {
    case 'table':
      return tablePieces(block, fonts, room);
    case 'labels':
      return tablePieces(block.table, fonts, room);
    case 'picture':
      return [picturePiece(block, fonts, room)];
    default:
      return textPieces(block, fonts, room.width);
  }
}
