import { tellerTo } from '../../words/message.js';
import { MIXED_ENDS } from '../../words/names.js';
import { asItIs } from '../../words/told.js';
import { edgeWord } from '../words.js';
import { FACTS, say } from './messages.js';
import { inShort } from '../../machining/caution.js';
import type { Panel } from '../../carcass/model.js';
import { isUpright } from '../../carcass/roles.js';
import type { Box, Medium, Pane, Point, Scene, Shape } from '../scene/scene.js';
import { frameOf, shapeBox } from '../scene/extent.js';
import { ownNote, sizeText } from './bore-map.js';
import { boresOf, faceToShow, findingsFor, Sources, type Drawn } from '../drawn.js';
import { around, grow } from '../scene/boxes.js';
import { holeGroups, tableHeads } from './hole-table.js';
import { textWidth } from '../scene/lettering.js';
import { drawPanel, shownEnds } from './panel-shapes.js';
import { Pen } from '../scene/pen.js';
import { mm, SCALES } from '../scene/scale.js';
import { PanelView } from './panel-view.js';

/** Room on paper for the panels of one carcass, in millimetres: an A4 page less its margins, head and foot. */
const ROOM = { width: 190, height: 230 };
/** Scales tried for a pane, each a little smaller than the one before. */
const FINER_SCALES = Array.from({ length: 70 }, (_, step) => 1.06 ** step);
const END_GAP = 3;
const BETWEEN = { x: 9, y: 8 };
const LINE = 4;
/** Between the panels and the borders of a pane. */
const MARGIN = 4;

/** A panel drawn, and the box that it takes. */
interface Cell extends Box {
  readonly shapes: readonly Shape[];
}

/** Every panel of the carcass on one page and to one scale, uprights first, row by row, each with name and size. */
export function allPanelsScene(drawn: Drawn, medium: Medium = 'paper'): Scene {
  // Uprights first: rows of panels that are alike in height waste the least room.
  const panels = [...drawn.carcass.panels].sort((a, b) => Number(isUpright(b)) - Number(isUpright(a)));
  const hasDrawers = panels.some(({ role }) => role === 'drawer-side');
  const ends = hasDrawers ? MIXED_ENDS.drawers : MIXED_ENDS.boxes;
  const sources = new Sources();
  const findings = findingsFor(drawn, panels, sources);
  const groups = panels.map((panel) => holeGroups(drawn.carcass, drawn.boring, panel, drawn.reader));
  // Lines of the table are numbered through all panels.
  let number = 0;
  const numbered = groups.map((lines) =>
    lines.map(({ line, bores }) => ({ bores, line: { ...line, number: ++number } })),
  );
  const faces = panels.map((panel) => faceToShow(boresOf(drawn, panel)));
  const room = medium === 'paper' ? ROOM : inner(medium.pane);
  const scales = medium === 'paper' ? SCALES : FINER_SCALES;
  const fits = (scale: number): boolean => {
    const sizes = panels.map((panel) => sizeAt(panel, drawn, scale));
    return rowsOf(sizes, scale, room).fits;
  };
  const scale = scales.find(fits) ?? SCALES.at(-1)!;
  const cells = panels.map((panel, index): Cell => {
    const pen = new Pen(panel.key, scale, 'plain');
    const view = new PanelView(panel, faces[index]!, pen.paper(END_GAP));
    drawPanel(pen, view, drawn, numbered[index]!, findings, sources);
    drawName(pen, view, drawn);
    const shapes = pen.painted();
    const { x, y, width, height } = frameOf(shapes, scale);
    return { shapes, x, y, width, height };
  });
  const shapes = layOut(cells, scale, room);
  const bores = drawn.boring.bores.length;
  const told = tellerTo(drawn.reader);
  return {
    view: 'all-panels',
    carcass: drawn.name,
    panel: null,
    title: asItIs(drawn.name),
    facts: [
      { word: FACTS.panels, value: asItIs(String(panels.length)) },
      { word: FACTS.bores, value: asItIs(String(bores)) },
      { word: FACTS.boards, value: asItIs(boards(panels)) },
    ],
    caption: told(say.allPanels()),
    reader: drawn.reader,
    scale,
    frame: grow(frameOf(shapes, scale), MARGIN * scale),
    shapes,
    heads: tableHeads(drawn.reader, [...new Set(panels.map((panel) => edgeWord(panel, 'front')))], ends, true),
    table: numbered.flat().map(({ line }) => line),
    findings,
    shelves: [],
    notes: [
      ...ownNote(drawn),
      told(say.allFolded()),
      told(say.allFigures({ hasDrawers })),
      ...(bores > 0 ? [inShort()] : []),
    ],
    sources: sources.record(),
  };
}

/** A pane less its margins. */
const inner = ({ width, height }: Pane): Pane => ({ width: width - 2 * MARGIN, height: height - 2 * MARGIN });

/** Room that a panel takes on the page at a scale, before it is drawn; a little more than it will take. */
function sizeAt(panel: Panel, drawn: Drawn, scale: number): Size {
  const ends = shownEnds(boresOf(drawn, panel)).length;
  const along = mm(panel.length) + ends * (mm(panel.thickness) + END_GAP * scale) + 4 * scale;
  const across = mm(panel.width) + 4 * scale;
  const [width, height] = isUpright(panel) ? [across, along] : [along, across];
  const label = textWidth(sizeText(panel, drawn), 2.5, false) * scale;
  return { width: Math.max(width, label), height: height + (4.1 + LINE + 1) * scale };
}

function drawName(pen: Pen, view: PanelView, drawn: Drawn): void {
  const { panel } = view;
  const drawnBox = around(pen.shapes.map((shape) => shapeBox(shape, pen.scale)))!;
  const middle = view.face.width / 2;
  const base = drawnBox.y + drawnBox.height + pen.paper(2.5 + 1.6);
  const style = { anchor: 'middle' } as const;
  const what = { key: `${panel.key}:name`, class: 'panel-name', source: pen.shapes[0]!.source! } as const;
  pen.text(what, panel.key, middle, base, { ...style, strong: true });
  pen.text(
    { ...what, key: `${panel.key}:size`, class: 'label' },
    sizeText(panel, drawn),
    middle,
    base + pen.paper(LINE),
    style,
  );
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Rows as wide as the paper, and whether they all go on it. */
function rowsOf<T extends Size>(
  cells: readonly T[],
  scale: number,
  paper: Size,
): { readonly rows: readonly (readonly T[])[]; readonly fits: boolean } {
  const room = paper.width * scale;
  const rows: T[][] = [];
  let used = Infinity;
  for (const cell of cells) {
    used += BETWEEN.x * scale + cell.width;
    if (used > room) {
      rows.push([]);
      used = cell.width;
    }
    rows.at(-1)!.push(cell);
  }
  const height = rows.reduce((sum, row) => sum + highest(row) + BETWEEN.y * scale, -BETWEEN.y * scale);
  return { rows, fits: height <= paper.height * scale && cells.every(({ width }) => width <= room) };
}

const highest = (row: readonly Size[]): number => Math.max(...row.map(({ height }) => height));

/** Puts the cells into rows, each centred; the feet of a row's panels stand on one line. */
function layOut(cells: readonly Cell[], scale: number, paper: Size): Shape[] {
  const gap = { x: BETWEEN.x * scale, y: BETWEEN.y * scale };
  const { rows } = rowsOf(cells, scale, paper);
  const widths = rows.map((row) => row.reduce((sum, { width }) => sum + width + gap.x, -gap.x));
  const widest = Math.max(0, ...widths);
  const shapes: Shape[] = [];
  let top = 0;
  rows.forEach((row, index) => {
    const height = highest(row);
    let left = (widest - widths[index]!) / 2;
    for (const cell of row) {
      const dx = left - cell.x;
      const dy = top + height - cell.height - cell.y;
      shapes.push(...cell.shapes.map((shape) => moved(shape, dx, dy)));
      left += cell.width + gap.x;
    }
    top += height + gap.y;
  });
  return shapes;
}

function moved(shape: Shape, dx: number, dy: number): Shape {
  const by = ({ x, y }: Point): Point => ({ x: x + dx, y: y + dy });
  switch (shape.kind) {
    case 'line':
      return { ...shape, x1: shape.x1 + dx, y1: shape.y1 + dy, x2: shape.x2 + dx, y2: shape.y2 + dy };
    case 'path':
      return { ...shape, points: shape.points.map(by) };
    case 'bracket':
      return { ...shape, points: shape.points.map(by), flag: by(shape.flag) };
    case 'text':
    case 'code':
      return { ...shape, x: shape.x + dx, y: shape.y + dy };
    case 'circle':
    case 'bore':
    case 'mark':
      return { ...shape, cx: shape.cx + dx, cy: shape.cy + dy };
  }
}

/** Names of the boards, each once. */
function boards(panels: readonly Panel[]): string {
  return [...new Set(panels.map(({ board }) => board.name))].join(', ');
}
