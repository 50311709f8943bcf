import { isRow } from '../../fittings/purposes.js';
import type { Panel } from '../../carcass/model.js';
import { extentsOf } from '../../carcass/pose.js';
import { grouped } from '../../findings/lookups.js';
import { figure, showLength } from '../../length/show.js';
import type { Micrometres, Unit } from '../../length/units.js';
import type { Tolerances } from '../../shop/model.js';
import { surfaceWord } from '../../drawing/words.js';
import type { BuiltCarcass } from '../built.js';
import { manyWords } from '../pieces.js';
import { column, figuresColumn, heading, paragraph, type Block, type Paper } from '../paper.js';

/** The limits of one measure, and room to write what it came to. */
type Row = readonly [what: string, measure: string, from: string, to: string, found: string];

/** Room to write a figure by hand. */
const BLANK = '____________';

/**
 * What to measure before the next step is taken, with the least and the greatest that the shop's tolerances allow: of a
 * panel its size and its first and last bores, of a box its outside, its diagonals and how it closes.
 */
export function checkingPaper(
  carcasses: readonly BuiltCarcass[],
  tolerances: Tolerances,
  title: string,
  unit: Unit,
): Paper {
  return {
    title,
    blocks: [
      paragraph(
        `In ${unit === 'mm' ? 'millimetres' : 'inches'}. Limits follow from the tolerances of the shop file. What is outside them is put right before the next step; nothing is forced.`,
      ),
      ...carcasses.flatMap((one) => carcassBlocks(one, tolerances, unit)),
    ],
  };
}

function carcassBlocks(one: BuiltCarcass, tolerances: Tolerances, unit: Unit): readonly Block[] {
  return [
    heading(2, `${one.name}${manyWords(one.carcass.count)}`),
    heading(3, 'Panels, when bored'),
    table(
      one.carcass.panels.flatMap((panel) => panelRows(panel, one, tolerances, unit)),
      'Panel',
    ),
    heading(3, 'The box, in the clamp'),
    table(boxRows(one, tolerances, unit), 'Box'),
  ];
}

function table(rows: readonly Row[], head: string): Block {
  return {
    kind: 'table',
    columns: [column(head), column('Measure'), figuresColumn('From'), figuresColumn('To'), column('Found')],
    rows: rows.map((row, i) => [rows[i - 1]?.[0] === row[0] ? null : row[0], ...row.slice(1)]),
  };
}

function panelRows(panel: Panel, { boring }: BuiltCarcass, tolerances: Tolerances, unit: Unit): readonly Row[] {
  const row = (measure: string, size: Micrometres, stray: Micrometres): Row => [
    panel.key,
    measure,
    figure(size - stray, unit),
    figure(size + stray, unit),
    BLANK,
  ];
  const { width, length, thickness, stop, drill } = tolerances;
  const bores = boring.bores.filter((bore) => bore.panel === panel.key);
  const faces = grouped(bores, ({ face, purpose }) => `${face} ${isRow({ purpose })}`);
  return [
    row('length', panel.length, length),
    row('width', panel.width, width),
    row('thickness', panel.thickness, thickness),
    ...faces.map((of) => {
      const bore = of.reduce((first, other) =>
        other.v < first.v || (other.v === first.v && other.u < first.u) ? other : first,
      );
      const what = isRow(bore) ? 'first row hole' : 'first bore';
      // A stop and a bit can stray at once; a fence strays as a stop does.
      return row(`${what} in the ${surfaceWord(panel, bore.face)}, from the front edge`, bore.u, stop + drill);
    }),
  ];
}

function boxRows({ name, spec, carcass }: BuiltCarcass, tolerances: Tolerances, unit: Unit): readonly Row[] {
  const [width, height, depth] = outside(carcass.panels);
  const diagonal = Math.round(Math.hypot(width, height));
  const { length, width: across, frontLimit, stepLimit, gapLimit } = tolerances;
  const between = (what: string, size: Micrometres, stray: Micrometres): Row => [
    name,
    what,
    figure(size - stray, unit),
    figure(size + stray, unit),
    BLANK,
  ];
  const most = (what: string, limit: Micrometres): Row => [name, what, '', showLength(limit, unit), BLANK];
  return [
    between('width over all', width, length),
    between('height over all, without plinth', height, length),
    between('depth over all', depth, across),
    [name, 'diagonals at the front, both alike', figure(diagonal, unit), '', BLANK],
    most('offset of front edges', frontLimit),
    most('step at the outside', stepLimit),
    most('gap in a joint', gapLimit),
    ...(spec.looseShelves.length > 0
      ? ([[name, 'loose shelves drop in and lie on all pins', '', '', BLANK]] satisfies Row[])
      : []),
  ];
}

/** Width, height and depth of what the panels fill, plinths left aside. */
export function outside(panels: readonly Panel[]): readonly [Micrometres, Micrometres, Micrometres] {
  const boxes = panels.filter(({ role }) => role !== 'plinth').map(extentsOf);
  const along = (axis: 'x' | 'y' | 'z'): Micrometres =>
    Math.max(0, ...boxes.map((box) => box[axis].to)) - Math.min(...boxes.map((box) => box[axis].from), Infinity);
  return boxes.length === 0 ? [0, 0, 0] : [along('x'), along('z'), along('y')];
}
