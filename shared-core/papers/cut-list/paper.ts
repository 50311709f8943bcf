import { figure } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { CutSize } from '../../sheets/cut-list.js';
import type { Board, Shop } from '../../shop/model.js';
import { tell, tellerTo } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { letters } from '../letters.js';
import { panelsNamed } from '../pieces.js';
import { bandsOf } from './bands.js';
import { EDGES, HEADS, say } from './messages.js';
import { milledWords } from './milled.js';
import { UNNAMED, column, figuresColumn, heading, paragraph, type Block, type Paper } from '../paper.js';

/**
 * What the saw has to give, board by board, the longest pieces first: sizes as cut, bands taken off, and as they are to be
 * when banded. The letters are those of the sheet layouts.
 */
export function cutListPaper(
  boards: ReadonlyMap<Board, readonly CutSize[]>,
  shop: Shop,
  title: Told,
  reader: Reader,
): Paper {
  return {
    title,
    blocks: [
      paragraph(tell(say.about(), reader)),
      ...milledWords(shop, reader),
      ...[...boards].flatMap(([board, sizes]) => boardBlocks(board, sizes, reader)),
    ],
  };
}

function boardBlocks(board: Board, sizes: readonly CutSize[], reader: Reader): readonly Block[] {
  const pieces = sizes.reduce((sum, one) => sum + one.pieces, 0);
  const square = sizes.reduce((sum, one) => sum + (one.length / 1e6) * (one.width / 1e6) * one.pieces, 0);
  const told = tellerTo(reader);
  return [
    heading(
      2,
      told(say.board({ board: board.name, thickness: board.thickness, hasGrain: board.grain !== 'none' })),
      told(say.total({ pieces, squareMetres: square })),
    ),
    {
      kind: 'table',
      columns: [
        UNNAMED,
        figuresColumn(HEADS.pieces),
        figuresColumn(HEADS.cutLength),
        figuresColumn(HEADS.cutWidth),
        figuresColumn(HEADS.finishedLength),
        figuresColumn(HEADS.finishedWidth),
        column(HEADS.bands),
        column(HEADS.panels),
      ],
      rows: sizes.map((size, i) => [
        letters(i),
        asItIs(String(size.pieces)),
        ...[size.length, size.width, size.finishedLength, size.finishedWidth].map((each) =>
          asItIs(figure(each, reader)),
        ),
        told(bandsOf(size.bands, (edge) => EDGES[edge])),
        panelsNamed(size.panels),
      ]),
    },
  ];
}
