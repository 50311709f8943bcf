import type { Unit } from '../../length/units.js';
import { boxOf, grow } from '../scene/boxes.js';
import { runningDimension } from '../scene/dimensions.js';
import { figure } from '../../length/show.js';
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
export function drawElevation(stage: Stage, level: number, table: Box, unit: Unit): void {
  const { pen, acted, panel } = stage;
  const { layout, stroke } = acted;
  const { height } = stroke.setUp;
  const { thickness } = stroke.blank;
  if (height === null) return;
  const top = level - mm(thickness);
  const axis = level - mm(height);
  pen.line(
    { key: 'elevation:table', class: 'table' },
    'outline',
    { x: table.x, y: level },
    { x: table.x + table.width, y: level },
  );
  pen.take(
    boxOf(
      [
        { x: table.x, y: level },
        { x: table.x + table.width, y: level },
      ],
      stage.p(0.4),
    ),
  );
  const end: Box = { x: panel.x, y: top, width: panel.width, height: mm(thickness) };
  pen.path({ key: 'elevation:panel', class: 'panel' }, 'outline', corners(end), 'board');
  pen.takeSolid(end);
  const xs = layout.spindles.map(({ at }) => stage.x(at[0]));
  pen.line(
    { key: 'elevation:axis', class: 'centre-line' },
    'centre',
    { x: Math.min(...xs) - stage.p(3), y: axis },
    { x: Math.max(...xs) + stage.p(3), y: axis },
  );
  const tagBase = Math.min(top, axis) - stage.p(3.4);
  for (const { spindle, diameter, at } of layout.spindles) {
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
    pen.line(
      { key: `${key}:line`, class: 'centre-line' },
      'thin',
      { x, y: axis - r },
      { x, y: tagBase + stage.p(0.8) },
    );
    pen.text(
      { key: `tag:${spindle}`, class: 'label' },
      `${spindle + 1}  Ø ${figure(diameter, unit)}`,
      x + stage.p(1.25),
      tagBase,
      { turn: -90 },
    );
  }
  const right = table.x + table.width;
  const from = right + stage.p(1);
  runningDimension(pen, 'over-table', { axis: 'y', line: right + stage.p(4), out: 1 }, { at: level, text: '0', from }, [
    { at: axis, text: figure(height, unit), from },
    ...(thickness === height ? [] : [{ at: top, text: figure(thickness, unit), from }]),
  ]);
  pen.text({ key: 'over-table:name', class: 'label' }, 'Over the table', right + stage.p(1), axis - stage.p(7.5));
  const left = table.x - stage.p(1.5);
  pen.text({ key: 'elevation:name', class: 'label' }, 'Table', left, level + stage.p(1.25), { anchor: 'end' });
}

/** Bits that come out of the plate into the end, seen from above, and the empty places between them. */
export function drawLevelHead(stage: Stage): void {
  const { pen, acted, out } = stage;
  const { layout, stroke } = acted;
  const line = stage.y(0);
  for (const { head, spindle, diameter, at } of layout.spindles) {
    const x = stage.x(at[0]);
    const key = `spindle:${head}:${spindle}`;
    const inBar = line + (out * stage.sign(4.5)) / 2;
    if (diameter === null) {
      const box = { x: x - 4, y: inBar - 4, width: 8, height: 8 };
      pen.path({ key, class: 'spindle-empty' }, 'thin', corners(box), 'paper');
      continue;
    }
    const r = mm(diameter) / 2;
    const chuck = r + 4;
    const tip = line - out * mm(stroke.setUp.depth);
    pen.path(
      { key, class: 'spindle-loaded' },
      'outline',
      corners({
        x: x - chuck,
        y: Math.min(line, line + out * stage.sign(4.5)),
        width: 2 * chuck,
        height: stage.sign(4.5),
      }),
      'paper',
    );
    const shoulder = tip + out * r;
    pen.path(
      { key: `${key}:bit`, class: 'bit' },
      'thin',
      [
        { x: x - r, y: inBar },
        { x: x - r, y: shoulder },
        { x, y: tip },
        { x: x + r, y: shoulder },
        { x: x + r, y: inBar },
      ],
      'ink',
    );
    pen.takeSolid(
      grow(
        boxOf(
          [
            { x: x - r, y: inBar },
            { x: x + r, y: tip },
          ],
          0,
        ),
        stage.p(0.3),
      ),
    );
  }
}
