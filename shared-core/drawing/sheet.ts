import type { Panel } from '../carcass/model.js';
import type { Box, Scene, Shape } from './scene.js';
import { CAUTION, SCALES, type Medium, frameOf, shapeBox, sizeText } from './bore-map.js';
import { boresOf, faceToShow, findingsFor, Sources, type Drawn } from './drawn.js';
import { around, grow } from './boxes.js';
import { holeGroups, tableHeads } from './hole-table.js';
import { drawPanel } from './panel-shapes.js';
import { Pen } from './pen.js';
import { PanelView } from './view.js';
import { isUpright } from './words.js';

/** Room on paper for the panels of one carcass, in millimetres: an A4 sheet less its margins, head and foot. */
const ROOM = { width: 190, height: 230 };
/** The same for a pane of the editor, in lettering millimetres. */
const PANE = { width: 200, height: 150 };
/** Scales tried for a pane, each so much smaller than the one before. */
const FINER = 1.06;
const END_GAP = 3;
const BETWEEN = { x: 9, y: 8 };
const LINE = 4;

interface Cell {
  readonly shapes: readonly Shape[];
  readonly box: Box;
}

/** Every panel of the carcass on one sheet and to one scale, uprights first, row by row, each with name and size. */
export function sheetScene(drawn: Drawn, medium: Medium = 'paper'): Scene {
  // Uprights first: rows of panels that are alike in height waste the least room.
  const panels = [...drawn.carcass.panels].sort((a, b) => Number(isUpright(b)) - Number(isUpright(a)));
  const sources = new Sources();
  const findings = findingsFor(drawn, panels, sources);
  const groups = panels.map((panel) => holeGroups(drawn.carcass, drawn.boring, panel, drawn.unit));
  // Lines of the table are numbered through the sheet.
  let number = 0;
  const numbered = groups.map((lines) => lines.map(({ line, bores }) => ({ bores, line: { ...line, number: ++number } })));
  let laid: { shapes: Shape[]; fits: boolean } = { shapes: [], fits: false };
  const room = medium === 'paper' ? ROOM : PANE;
  let scale = 1;
  for (scale of medium === 'paper' ? SCALES : finerScales()) {
    const cells = panels.map((panel, index) => {
      const pen = new Pen(panel.key, scale, 'plain');
      const view = new PanelView(panel, faceToShow(boresOf(drawn, panel)), pen.paper(END_GAP));
      drawPanel(pen, view, drawn, numbered[index]!, findings, sources);
      drawName(pen, view, drawn);
      const shapes = pen.painted();
      return { shapes, box: frameOf(shapes, scale) };
    });
    laid = layOut(cells, scale, room);
    if (laid.fits) break;
  }
  const bores = drawn.boring.bores.length;
  return {
    view: 'sheet',
    carcass: drawn.name,
    panel: null,
    title: drawn.name,
    facts: [
      { word: 'Panels', value: String(panels.length) },
      { word: 'Bores', value: String(bores) },
      { word: 'Boards', value: boards(panels) },
    ],
    caption: 'Every panel on the face that is bored more; uprights as they stand, horizontals with the front edge toward you.',
    unit: drawn.unit,
    scale,
    frame: grow(frameOf(laid.shapes, scale), 4 * scale),
    shapes: laid.shapes,
    heads: tableHeads(drawn.unit, 'reference end', true),
    table: numbered.flat().map(({ line }) => line),
    findings,
    notes: [
      'Ends are folded out; across them, figures count from the outside face. Dashed circles are bored from the face that lies down.',
      'The reference end is the bottom of an upright panel and the left end of any other.',
      ...(bores > 0 ? [CAUTION] : []),
    ],
    sources: sources.record(),
  };
}

function finerScales(): number[] {
  const steps = Math.ceil(Math.log(SCALES.at(-1)!) / Math.log(FINER));
  return Array.from({ length: steps + 1 }, (_, step) => FINER ** step);
}

function drawName(pen: Pen, view: PanelView, drawn: Drawn): void {
  const { panel } = view;
  const drawnBox = around(pen.shapes.map((shape) => shapeBox(shape, pen.scale)))!;
  const middle = view.face.width / 2;
  const base = drawnBox.y + drawnBox.height + pen.paper(2.5 + 1.6);
  const style = { anchor: 'middle' } as const;
  const what = { key: `${panel.key}:name`, class: 'panel-name', source: pen.shapes[0]!.source! } as const;
  pen.text(what, panel.key, middle, base, { ...style, strong: true });
  pen.text({ ...what, key: `${panel.key}:size`, class: 'label' }, sizeText(panel, drawn), middle, base + pen.paper(LINE), style);
}

/** Rows as wide as the paper, each centred; the feet of a row's panels stand on one line. */
function layOut(cells: readonly Cell[], scale: number, paper: { readonly width: number; readonly height: number }): { shapes: Shape[]; fits: boolean } {
  const gap = { x: BETWEEN.x * scale, y: BETWEEN.y * scale };
  const room = paper.width * scale;
  const rows: Cell[][] = [];
  let used = Infinity;
  for (const cell of cells) {
    if (used + gap.x + cell.box.width > room) {
      rows.push([cell]);
      used = cell.box.width;
    } else {
      rows.at(-1)!.push(cell);
      used += gap.x + cell.box.width;
    }
  }
  const shapes: Shape[] = [];
  let top = 0;
  const widths = rows.map((row) => row.reduce((sum, { box }) => sum + box.width + gap.x, -gap.x));
  const widest = Math.max(0, ...widths);
  rows.forEach((row, index) => {
    const height = Math.max(...row.map(({ box }) => box.height));
    let left = (widest - widths[index]!) / 2;
    for (const { shapes: drawn, box } of row) {
      const dx = left - box.x;
      const dy = top + height - box.height - box.y;
      shapes.push(...drawn.map((shape) => moved(shape, dx, dy)));
      left += box.width + gap.x;
    }
    top += height + gap.y;
  });
  return { shapes, fits: widest <= room && top - gap.y <= paper.height * scale };
}

function moved(shape: Shape, dx: number, dy: number): Shape {
  switch (shape.kind) {
    case 'line':
      return { ...shape, x1: shape.x1 + dx, y1: shape.y1 + dy, x2: shape.x2 + dx, y2: shape.y2 + dy };
    case 'path':
      return { ...shape, points: shape.points.map(({ x, y }) => ({ x: x + dx, y: y + dy })) };
    case 'text':
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
