import { edgesWithBand } from '../../carcass/banded.js';
import type { Panel } from '../../carcass/model.js';
import { edgeWord } from '../../drawing/words.js';
import { showSizes } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { SetUp } from '../../machining/set-up.js';
import type { CutSize } from '../../sheets/cut-list.js';
import { LABEL_PAGES, labelRuns } from '../../shop/label-sheet.js';
import type { Band, LabelSheet, Board } from '../../shop/model.js';
import { tellerTo } from '../../words/message.js';
import { asItIs, joined, type Told } from '../../words/told.js';
import type { BuiltCarcass } from '../built.js';
import { bandsOf } from '../cut-list/bands.js';
import { letters } from '../letters.js';
import { column, figuresColumn, paragraph, type Cell, type DrawnLabel, type LabelPage, type Paper } from '../paper.js';
import { codeText } from './code-text.js';
import { codeSquares } from './code.js';
import { labelShapes, type Line } from './label.js';
import { HEADS, OPERATIONS, say } from './messages.js';

/** What labels are made from. */
export interface LabelledJob {
  readonly carcasses: readonly BuiltCarcass[];
  readonly boards: ReadonlyMap<Board, readonly CutSize[]>;
  /** In the order to run. */
  readonly setUps: readonly SetUp[];
  /** Name of the job file, without its folders. */
  readonly file: string;
  readonly sheet: LabelSheet;
}

interface Piece {
  readonly carcass: string;
  readonly panel: Panel;
  readonly number: number;
  readonly of: number;
  /** Of its size in the cut list. */
  readonly letter: Told;
  readonly bands: Told;
}

/** A label for every piece, in the order in which the cut list has them. */
export function labelsPaper(job: LabelledJob, title: Told, jobTitle: Told, reader: Reader): Paper {
  const page = pageOf(job.sheet);
  const told = tellerTo(reader);
  const made = piecesOf(job, reader).map((piece) => labelOf(piece, job, jobTitle, page, reader));
  return {
    title,
    blocks: [
      paragraph(told(say.about({ labels: made.length, sheets: Math.ceil(made.length / page.places.length) }))),
      paragraph(told(say.code())),
      {
        kind: 'labels',
        sheet: page,
        labels: made.map(({ label }) => label),
        table: {
          kind: 'table',
          columns: [
            column(HEADS.job),
            column(HEADS.carcass),
            column(HEADS.panel),
            column(HEADS.piece),
            figuresColumn(HEADS.size),
            column(HEADS.board),
            column(HEADS.cutList),
            column(HEADS.bands),
            column(HEADS.operations),
            column(HEADS.code),
          ],
          rows: made.map(({ row }) => row),
        },
      },
    ],
  };
}

/** The places of the labels on a sheet, row by row, in millimetres. */
function pageOf(sheet: LabelSheet): LabelPage {
  const { across, down } = labelRuns(sheet);
  const { width, height } = LABEL_PAGES[sheet.page];
  const mm = (length: number): number => length / 1000;
  const places = Array.from({ length: sheet.rows }, (_, row) =>
    Array.from({ length: sheet.columns }, (__, at) => ({
      x: mm(across.from + at * (sheet.labelWidth + sheet.gapAcross)),
      y: mm(down.from + row * (sheet.labelHeight + sheet.gapDown)),
      width: mm(sheet.labelWidth),
      height: mm(sheet.labelHeight),
    })),
  ).flat();
  return { width: mm(width), height: mm(height), places };
}

function piecesOf({ carcasses, boards }: LabelledJob, reader: Reader): readonly Piece[] {
  const panels = new Map(
    carcasses.flatMap(({ name, carcass }) => carcass.panels.map((panel) => [`${name}\n${panel.key}`, panel] as const)),
  );
  return [...boards.values()].flatMap((sizes) =>
    sizes.flatMap((size, index) =>
      size.panels.flatMap(({ carcass, panel: key, pieces }) => {
        const panel = panels.get(`${carcass}\n${key}`);
        if (panel === undefined) return [];
        const bands = tellerTo(reader)(bandsOf(panel.bands, (edge) => edgeWord(panel, edge), onCut(panel)));
        return Array.from({ length: pieces }, (_, at): Piece => ({
          carcass,
          panel,
          number: at + 1,
          of: pieces,
          letter: letters(index),
          bands,
        }));
      }),
    ),
  );
}

/** The band on the edge of a corner that is sawn off. */
const onCut = ({ corner }: Panel): Band | null => corner?.band ?? null;

/** What is done with a panel once it is cut, in order: the set-ups by their names, as the set-up list has them. */
function operationsOf({ carcass, panel }: Piece, setUps: readonly SetUp[]): readonly [Told, ...Told[]] {
  const bored = setUps.filter(({ runs }) => runs.some((run) => run.carcass === carcass && run.panel === panel.key));
  return [
    ...(Object.values(panel.bands).some((band) => band !== null) ? [OPERATIONS.band] : []),
    ...(panel.grooves.length > 0 ? [OPERATIONS.groove] : []),
    ...bored.map(({ id }) => asItIs(id)),
    ...(panel.corner === undefined ? [] : [OPERATIONS.corner]),
    ...(onCut(panel) === null ? [] : [OPERATIONS.band]),
    OPERATIONS.assemble,
  ] as unknown as readonly [Told, ...Told[]];
}

function labelOf(
  piece: Piece,
  { setUps, file }: LabelledJob,
  jobTitle: Told,
  { places }: LabelPage,
  reader: Reader,
): { readonly label: DrawnLabel; readonly row: readonly Cell[] } {
  const { carcass, panel, number, of, letter, bands } = piece;
  const told = tellerTo(reader);
  const operations = operationsOf(piece, setUps);
  const [next, ...then] = operations;
  const name = asItIs(`${carcass} ${panel.key}`);
  const size = asItIs(showSizes([panel.length, panel.width, panel.thickness], reader));
  const code = codeText({ file, carcass, panel: panel.key });
  const count = told(say.piece({ number, of }));
  const banded = edgesWithBand(panel).length > 0;
  const line = (text: Told, height: number, strong = false): Line => ({ text, height, strong });
  const lines = [
    line(name, 4, true),
    line(size, 3, true),
    line(joined([asItIs(panel.board.name), letter, ...(of > 1 ? [count] : [])], ' · '), 2.5),
    line(told(banded ? say.bands({ bands }) : say.noBands()), 2.2),
    line(told(say.next({ next, then })), 2.2, true),
    line(jobTitle, 2.2),
  ];
  const { width, height } = places[0]!;
  return {
    label: {
      about: told(say.described({ panel: name, size })),
      shapes: labelShapes({ panel, lines, code: codeSquares(code) }, width, height),
    },
    row: [
      jobTitle,
      asItIs(carcass),
      asItIs(panel.key),
      count,
      size,
      asItIs(panel.board.name),
      letter,
      banded ? bands : '',
      joined(operations, ', '),
      asItIs(code),
    ],
  };
}
