import { tell } from '../../words/message.js';
import { FACES } from '../../words/names.js';
import { say } from './messages.js';
import type { Reader } from '../../length/reader.js';
import { layOut, type TableLayout } from '../../machining/replay/layout.js';
import type { Stroke } from '../../machining/replay/bore.js';
import { boxOf } from '../scene/boxes.js';
import { figure } from '../../length/show.js';
import { textWidth } from '../scene/lettering.js';
import type { Box, Point } from '../scene/scene.js';
import { cornerAt, isSameLay, type Stage } from './stage.js';
import { turnOf } from './words.js';

/** What was done with the panel before this stroke, drawn on the operator's side of the table. */
export function drawMove(stage: Stage, table: Box, reader: Reader): void {
  const { stroke, before, layout } = stage.acted;
  const { step } = stroke;
  if (before !== null && turnOf(before.layout, layout) === 'half') {
    drawTurn(stage, table);
    return;
  }
  const from = before !== null && isSameLay(before.stroke.step, step) ? before.stroke : inContact(stroke);
  if (from.step.moved !== step.moved) drawIndex(stage, table, from, reader);
}

/** The stroke as it would be with the panel still at its stop. */
const inContact = (stroke: Stroke): Stroke => ({ ...stroke, step: { ...stroke.step, moved: 0 } });

/** On the operator's side of the table, so far from its edge. */
const beside = (stage: Stage, table: Box, off: number): number =>
  stage.out < 0 ? table.y + table.height + stage.p(off) : table.y - stage.p(off);

/** X of the end that was pushed against the stop. */
function endOf(stage: Stage, stroke: Stroke, layout: TableLayout): number {
  const corner = layout.panel[cornerAt(stroke.step.end)]!;
  return stage.x(corner[0]);
}

/** An arrow from where the end lay to where it lies now, with how far that is. */
function drawIndex(stage: Stage, table: Box, from: Stroke, reader: Reader): void {
  const { pen, acted, panel } = stage;
  const [a, b] = [endOf(stage, from, layOut(from)), endOf(stage, acted.stroke, acted.layout)];
  const y = beside(stage, table, 5);
  const inner = stage.out < 0 ? panel.y + panel.height : panel.y;
  const outer = stage.out < 0 ? panel.y : panel.y + panel.height;
  const sign = b > a ? 1 : -1;
  pen.line({ key: 'move:was', class: 'move' }, 'phantom', { x: a, y: outer }, { x: a, y: inner });
  for (const [part, x] of [
    ['from', a],
    ['to', b],
  ] as const) {
    const points: [Point, Point] = [
      { x, y: inner },
      { x, y: y - stage.out * stage.p(1.2) },
    ];
    pen.path({ key: `move:${part}`, class: 'dimension' }, 'thin', points, 'none', false);
    pen.take(boxOf(points, stage.p(0.2)));
  }
  pen.path(
    { key: 'move:line', class: 'move' },
    'outline',
    [
      { x: a, y },
      { x: b - sign * stage.p(2.4), y },
    ],
    'none',
    false,
  );
  const half = stage.p(1.1);
  pen.path(
    { key: 'move:head', class: 'move' },
    'thin',
    [
      { x: b, y },
      { x: b - sign * stage.p(3), y: y - half },
      { x: b - sign * stage.p(3), y: y + half },
    ],
    'ink',
  );
  const by = Math.abs(acted.stroke.step.moved - from.step.moved);
  const words = tell(say.indexArrow({ by: figure(by, reader), way: sign < 0 ? 'left' : 'right' }), reader);
  const inside = Math.abs(a - b) > stage.p(textWidth(words, 2.5, true) + 8);
  const at = inside ? (a + b) / 2 : Math.max(a, b) + stage.p(2);
  pen.text({ key: 'move:words', class: 'label' }, words, at, inside ? y - stage.p(1.2) : y + stage.p(1.25), {
    anchor: inside ? 'middle' : 'start',
    strong: true,
  });
}

/** Half a turn in the plane of the table. */
function drawTurn(stage: Stage, table: Box): void {
  const { pen, acted } = stage;
  const r = stage.p(3.2);
  const words = tell(say.halfTurn({ face: FACES[acted.stroke.step.down] }), 'mm');
  const width = stage.p(textWidth(words, 2.5, true));
  const centre = {
    x: stage.panel.x + stage.panel.width / 2 - (width + stage.p(6)) / 2,
    y: beside(stage, table, 6.5),
  };
  const at = (angle: number, radius = r): Point => ({
    x: round(centre.x + radius * Math.cos(angle)),
    y: round(centre.y + radius * Math.sin(angle)),
  });
  // Clockwise on the page from the lower left over the top to the right: an open half circle and its head.
  const [start, end] = [Math.PI, 2 * Math.PI - 0.35];
  const arc = Array.from({ length: 25 }, (_, index) => at(start + ((end - start) * index) / 24));
  pen.path({ key: 'move:arc', class: 'move' }, 'outline', arc, 'none', false);
  pen.path(
    { key: 'move:head', class: 'move' },
    'thin',
    [at(2 * Math.PI + 0.25), at(end, r - stage.p(1.2)), at(end, r + stage.p(1.2))],
    'ink',
  );
  pen.takeSolid({ x: centre.x - r, y: centre.y - r, width: 2 * r, height: 2 * r });
  pen.text({ key: 'move:words', class: 'label' }, words, centre.x + stage.p(6), centre.y + stage.p(0.4), {
    strong: true,
  });
}
const round = (value: number): number => Math.round(value * 1000) / 1000;
