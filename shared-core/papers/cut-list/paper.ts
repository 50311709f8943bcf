import type { EdgeName } from '../../job/model.js';
import { figure } from '../../length/show.js';
import type { Unit } from '../../length/units.js';
import type { CutSize } from '../../sheets/cut-list.js';
import type { Board } from '../../shop/model.js';
import { counted } from '../../words/english.js';
import { letters } from '../letters.js';
import { panelsNamed } from '../pieces.js';
import { column, figuresColumn, heading, paragraph, type Block, type Paper } from '../paper.js';

/**
 * What the saw has to give, board by board, the longest pieces first: sizes as cut, bands taken off, and as they are to be
 * when banded. The letters are those of the sheet layouts.
 */
export function cutListPaper(boards: ReadonlyMap<Board, readonly CutSize[]>, title: string, unit: Unit): Paper {
  return {
    title,
    blocks: [
      paragraph(
        `Sizes in ${unit === 'mm' ? 'millimetres' : 'inches'}, length first; on a board with grain the length runs along it.`,
      ),
      ...[...boards].flatMap(([board, sizes]) => boardBlocks(board, sizes, unit)),
    ],
  };
}

function boardBlocks(board: Board, sizes: readonly CutSize[], unit: Unit): readonly Block[] {
  const pieces = sizes.reduce((sum, one) => sum + one.pieces, 0);
  const square = sizes.reduce((sum, one) => sum + (one.length / 1e6) * (one.width / 1e6) * one.pieces, 0);
  const grain = board.grain === 'none' ? 'no grain' : 'with grain';
  return [
    heading(
      2,
      `${board.name}, ${figure(board.thickness, unit)} ${unit} thick, ${grain}`,
      `${counted(pieces, 'piece')}, ${square.toFixed(2)} m²`,
    ),
    {
      kind: 'table',
      columns: [
        column(''),
        figuresColumn('Pieces'),
        figuresColumn('Cut length'),
        figuresColumn('Cut width'),
        figuresColumn('Finished length'),
        figuresColumn('Finished width'),
        column('Bands'),
        column('Panels'),
      ],
      rows: sizes.map((size, i) => [
        letters(i),
        String(size.pieces),
        figure(size.length, unit),
        figure(size.width, unit),
        figure(size.finishedLength, unit),
        figure(size.finishedWidth, unit),
        bandWords(size),
        panelsNamed(size.panels),
      ]),
    },
  ];
}

const EDGES: readonly (readonly [EdgeName, string])[] = [
  ['front', 'front'],
  ['back', 'back'],
  ['reference-end', 'bottom or left end'],
  ['far-end', 'top or right end'],
];

/** 'front white-1', 'front and back white-1, far end birch-2' */
function bandWords({ bands }: CutSize): string {
  const edgesOf = new Map<string, string[]>();
  for (const [edge, words] of EDGES) {
    const band = bands[edge];
    if (band !== null) edgesOf.set(band.name, [...(edgesOf.get(band.name) ?? []), words]);
  }
  return [...edgesOf].map(([band, edges]) => `${edges.join(' and ')} ${band}`).join(', ') || 'none';
}
