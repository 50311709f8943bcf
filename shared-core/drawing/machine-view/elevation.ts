import { NAMES } from './messages.js';
import { figure, nominalFigure } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { boxOf, grow } from '../scene/boxes.js';
import { runningDimension } from '../scene/dimensions.js';
import type { Box } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import type { Stage } from './stage.js';
import { corners } from './table.js';

const EMPTY = 3;

/**
 * A level head seen as the operator looks at its plate, above the plan and in line with it (first angle, ISO 5456-2): the
 * table, the end of the panel on it, and the spindles at their height over the table.
 * @param level page coordinate of the table's surface
 */
export function drawElevation(stage: Stage, level: number, table: Box, reader: Reader): void {
  const { height } = stage.acted.stroke.setUp;
  if (height === null) return;
  const { thickness } = stage.acted.stroke.blank;
  const top = level - mm(thickness);
  const axis = level - mm(height);
  drawTableAndEnd(stage, level, top, table);
  drawPlate(stage, axis, Math.min(top, axis) - stage.p(3.4), reader);
  nameHeights(stage, level, height, table.x + table.width, reader);
  const left = table.x - stage.p(1.5);
  const named = { key: 'elevation:name', class: 'label' } as const;
  stage.pen.text(named, NAMES.table, left, level + stage.p(1.25), { anchor: 'end' });
}

/** The table's surface from the side, and on it the end of the panel. */
function drawTableAndEnd({ pen, panel }: Stage, level: number, top: number, table: Box): void {
  const [a, b] = [
    { x: table.x, y: level },
    { x: table.x + table.width, y: level },
  ];
  pen.line({ key: 'elevation:table', class: 'table' }, 'outline', a, b);
  pen.take(boxOf([a, b], pen.paper(0.4)));
  const end: Box = { x: panel.x, y: top, width: panel.width, height: level - top };
  pen.path({ key: 'elevation:panel', class: 'panel' }, 'outline', corners(end), 'board');
  pen.takeSolid(end);
}

/** The spindles of the plate on their axis, each loaded one with its number and its bit. */
function drawPlate(stage: Stage, axis: number, tagBase: number, reader: Reader): void {
  const { pen, acted } = stage;
  const { spindles } = acted.layout;
  const xs = spindles.map(({ at }) => stage.x(at[0]));
  pen.line(
    { key: 'elevation:axis', class: 'centre-line' },
    'centre',
    { x: Math.min(...xs) - stage.p(3), y: axis },
    { x: Math.max(...xs) + stage.p(3), y: axis },
  );
  for (const { spindle, diameter, at } of spindles) {
    const x = stage.x(at[0]);
    const key = `elevation:spindle-${spindle}`;
    if (diameter === null) {
      const box = { x: x - EMPTY, y: axis - EMPTY, width: 2 * EMPTY, height: 2 * EMPTY };
      pen.path({ key, class: 'spindle-empty' }, 'thin', corners(box), 'paper');
      continue;
    }
    const r = mm(diameter) / 2;
    pen.add({ key, class: 'bit', kind: 'circle', panel: pen.panel, line: 'thin', cx: x, cy: axis, r });
    pen.takeSolid(grow({ x: x - r, y: axis - r, width: 2 * r, height: 2 * r }, stage.p(0.3)));
    const line = { key: `${key}:line`, class: 'centre-line' } as const;
    pen.line(line, 'thin', { x, y: axis - r }, { x, y: tagBase + stage.p(0.8) });
    const words = `${spindle + 1}  Ø ${nominalFigure(diameter, reader)}`;
    pen.text({ key: `tag:${spindle}`, class: 'label' }, words, x + stage.p(1.25), tagBase, { turn: -90 });
  }
}

/** How high the spindles and the panel's upper face stand over the table, at its right end. */
function nameHeights(stage: Stage, level: number, height: Micrometres, right: number, reader: Reader): void {
  const { thickness } = stage.acted.stroke.blank;
  const from = right + stage.p(1);
  const lane = { axis: 'y', line: right + stage.p(4), out: 1 } as const;
  const over = thickness === height ? [height] : [height, thickness];
  runningDimension(
    stage.pen,
    'over-table',
    lane,
    { at: level, text: '0', from },
    over.map((up) => ({ at: level - mm(up), text: figure(up, reader), from })),
  );
  const named = { key: 'over-table:name', class: 'label' } as const;
  stage.pen.text(named, NAMES.overTable, from, level - mm(height) - stage.p(7.5));
}
