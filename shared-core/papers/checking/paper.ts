import { isRow } from '../../fittings/purposes.js';
import type { Panel } from '../../carcass/model.js';
import { frontDiagonal, outerSize } from '../../carcass/outer-size.js';
import { grouped } from '../../findings/lookups.js';
import { figure, showLength } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import type { Tolerances } from '../../shop/model.js';
import { edgeWord, surfaceWord } from '../../drawing/words.js';
import { tell } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import type { BuiltCarcass } from '../built.js';
import { carcassNamed } from '../pieces.js';
import { BLANK, column, figuresColumn, heading, paragraph, type Block, type Paper } from '../paper.js';
import { HEADS, MEASURES, say } from './messages.js';

/** The limits of one measure, and room to write what it came to. */
type Row = readonly [what: Told, measure: Told, from: Told | '', to: Told | '', found: Told];

/**
 * What to measure before the next step is taken, with the least and the greatest that the shop's tolerances allow: of a
 * panel its size and its first and last bores, of a box its outside, its diagonals and how it closes.
 */
export function checkingPaper(
  carcasses: readonly BuiltCarcass[],
  tolerances: Tolerances,
  title: Told,
  reader: Reader,
): Paper {
  return {
    title,
    blocks: [
      paragraph(tell(say.about(), reader)),
      ...carcasses.flatMap((one) => carcassBlocks(one, tolerances, reader)),
    ],
  };
}

function carcassBlocks(one: BuiltCarcass, tolerances: Tolerances, reader: Reader): readonly Block[] {
  return [
    heading(2, carcassNamed(one.name, one.carcass.count)),
    heading(3, HEADS.panels),
    table(
      one.carcass.panels.flatMap((panel) => panelRows(panel, one, tolerances, reader)),
      HEADS.panel,
    ),
    heading(3, HEADS.boxInClamp),
    table(boxRows(one, tolerances, reader), HEADS.box),
  ];
}

function table(rows: readonly Row[], head: Told): Block {
  return {
    kind: 'table',
    columns: [
      column(head),
      column(HEADS.measure),
      figuresColumn(HEADS.from),
      figuresColumn(HEADS.to),
      column(HEADS.found),
    ],
    rows: rows.map((row, i) => [rows[i - 1]?.[0] === row[0] ? null : row[0], ...row.slice(1)]),
  };
}

function panelRows(panel: Panel, { boring }: BuiltCarcass, tolerances: Tolerances, reader: Reader): readonly Row[] {
  const row = (measure: Told, size: Micrometres, stray: Micrometres): Row => [
    asItIs(panel.key),
    measure,
    asItIs(figure(size - stray, reader)),
    asItIs(figure(size + stray, reader)),
    BLANK,
  ];
  const { width, length, thickness, stop, drill } = tolerances;
  const bores = boring.bores.filter((bore) => bore.panel === panel.key);
  const faces = grouped(bores, ({ face, purpose }) => `${face} ${isRow({ purpose })}`);
  return [
    row(MEASURES.length, panel.length, length),
    row(MEASURES.width, panel.width, width),
    row(MEASURES.thickness, panel.thickness, thickness),
    ...faces.map((of) => {
      const bore = of.reduce((first, other) =>
        other.v < first.v || (other.v === first.v && other.u < first.u) ? other : first,
      );
      const what = say.firstBore({
        surface: surfaceWord(panel, bore.face),
        edge: edgeWord(panel, 'front'),
        isRow: isRow(bore),
      });
      // A stop and a bit can stray at once; a fence strays as a stop does.
      return row(tell(what, reader), bore.u, stop + drill);
    }),
  ];
}

function boxRows({ name, spec, carcass }: BuiltCarcass, tolerances: Tolerances, reader: Reader): readonly Row[] {
  const box = asItIs(name);
  const { width, height, depth } = outerSize(carcass);
  const diagonal = frontDiagonal(carcass);
  const { length, width: across, frontLimit, stepLimit, gapLimit } = tolerances;
  const between = (what: Told, size: Micrometres, stray: Micrometres): Row => [
    box,
    what,
    asItIs(figure(size - stray, reader)),
    asItIs(figure(size + stray, reader)),
    BLANK,
  ];
  const most = (what: Told, limit: Micrometres): Row => [box, what, '', asItIs(showLength(limit, reader)), BLANK];
  return [
    between(MEASURES.widthOverAll, width, length),
    between(MEASURES.heightOverAll, height, length),
    between(MEASURES.depthOverAll, depth, across),
    [box, MEASURES.diagonals, asItIs(figure(diagonal, reader)), '', BLANK],
    most(MEASURES.frontOffset, frontLimit),
    most(MEASURES.step, stepLimit),
    most(MEASURES.gap, gapLimit),
    ...(spec.looseShelves.length > 0 ? ([[box, MEASURES.looseShelves, '', '', BLANK]] satisfies Row[]) : []),
  ];
}
