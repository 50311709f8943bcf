import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import { boxOf, contains, grow } from '../boxes.js';
import type { Drawn } from '../drawn.js';
import { aboutBore } from '../hole-table.js';
import { textBox, textWidth } from '../lettering.js';
import type { Box, Point, TextShape } from '../scene.js';
import { mm } from '../view.js';
import { edgeWord, endWord, sentence } from '../words.js';
import type { SceneHole } from './scene.js';
import type { Stage } from './stage.js';
import type { StrokeHole } from './strokes.js';

/** The panel as it lies, its banded edges marked inside the outline, where no fence hides the mark. */
export function drawPanelOnTable(stage: Stage, panel: Panel): void {
  stage.pen.rectangle({ key: 'panel', class: 'panel' }, 'outline', stage.panel, 'board');
  const off = stage.sign(1);
  for (const edge of ['front', 'back', 'reference-end', 'far-end'] as const) {
    if (panel.bands[edge] === null) continue;
    const [a, b] = edgeLine(stage, panel, edge, off);
    stage.pen.line({ key: `band:${edge}`, class: 'band' }, 'band', a, b);
    stage.pen.take(boxOf([a, b], stage.p(0.8)));
  }
}

/** An edge of the panel on the page, moved inward. */
function edgeLine(stage: Stage, panel: Panel, edge: EdgeName, inward: number): readonly [Point, Point] {
  const { length, width } = panel;
  const [a, b]: readonly [Point, Point] = {
    front: [stage.onPanel(0, 0), stage.onPanel(0, length)] as const,
    back: [stage.onPanel(width, 0), stage.onPanel(width, length)] as const,
    'reference-end': [stage.onPanel(0, 0), stage.onPanel(width, 0)] as const,
    'far-end': [stage.onPanel(0, length), stage.onPanel(width, length)] as const,
  }[edge];
  const { x, y, width: wide, height: high } = stage.panel;
  const middle = { x: x + wide / 2, y: y + high / 2 };
  const toward = (from: number, to: number): number => from + Math.sign(to - from) * inward;
  return Math.abs(a.y - b.y) < Math.abs(a.x - b.x)
    ? [{ x: a.x, y: toward(a.y, middle.y) }, { x: b.x, y: toward(b.y, middle.y) }]
    : [{ x: toward(a.x, middle.x), y: a.y }, { x: toward(b.x, middle.x), y: b.y }];
}

export const holeKeyOf = ({ bore }: StrokeHole): string => `hole:${bore.id}`;

/** Every bore of the panel: made, made in this stroke, still to come; dashed where it is not seen from above. */
export function drawHoles(stage: Stage, panel: Panel): void {
  const { pen, acted } = stage;
  for (const hole of acted.holes) {
    const { bore, state } = hole;
    const what = { key: holeKeyOf(hole), class: `hole-${state}` } as const;
    const r = mm(bore.diameter) / 2;
    if (bore.face === 'inside' || bore.face === 'outside') {
      const [tx, ty] = acted.place(bore.u, bore.v, 0);
      if (stage.inBreak(tx, ty)) continue;
      const { x, y } = stage.at(tx, ty);
      const hidden = !bore.through && bore.face !== acted.layout.up;
      pen.add({ ...what, kind: 'circle', panel: pen.panel, line: hidden ? 'hidden' : 'fine', cx: x, cy: y, r });
      pen.takeSolid(grow({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }, stage.p(0.3)));
      continue;
    }
    const [mouth, floor] =
      bore.face === 'reference-end' ? [0, bore.depth] : [panel.length, panel.length - bore.depth];
    const half = bore.diameter / 2;
    const points = [
      stage.onPanel(bore.u - half, mouth),
      stage.onPanel(bore.u - half, floor),
      stage.onPanel(bore.u + half, floor),
      stage.onPanel(bore.u + half, mouth),
    ];
    pen.path(what, state === 'now' ? 'fine' : 'hidden', points, 'none', false);
    pen.takeSolid(boxOf(points, stage.p(0.3)));
  }
}

export function aboutHoles(stage: Stage, drawn: Drawn, panel: Panel): SceneHole[] {
  const words = { made: 'made', now: 'made in this stroke', 'to-come': 'still to come' } as const;
  return stage.acted.holes.map((hole) => ({
    key: holeKeyOf(hole),
    bore: hole.bore.id,
    state: hole.state,
    about: `${aboutBore(drawn.carcass, drawn.boring, panel, hole.bore, drawn.unit)} ${sentence(words[hole.state])}.`,
  }));
}

/** Which face is up, and whose panel it is, where the panel has room for it: across the page, or else up it. */
export function nameFace(stage: Stage, title: string): void {
  const { pen, panel, acted } = stage;
  const up = `${sentence(acted.layout.up)} face up`;
  const long = Math.max(stage.p(textWidth(up, 3.5, true)), stage.p(textWidth(title, 2.5, false)));
  const high = stage.p(8.4);
  for (const turn of [0, -90] as const) {
    const [width, height] = turn === 0 ? [long, high] : [high, long];
    for (const down of FROM_MIDDLE) {
      for (const right of FROM_MIDDLE) {
        const x = panel.x + panel.width / 2 + (right * panel.width) / 15;
        const y = panel.y + panel.height / 2 + (down * panel.height) / 15;
        const box = { x: x - width / 2, y: y - height / 2, width, height };
        if (!contains(panel, box) || !pen.isFree(box, 0.8)) continue;
        const [upper, lower] = [-stage.p(0.4), stage.p(3.8)];
        const at = (off: number): [number, number] => (turn === 0 ? [x, y + off] : [x + off, y]);
        const style = { anchor: 'middle', turn } as const;
        pen.text({ key: 'panel:face', class: 'panel-name' }, up, ...at(upper), { ...style, height: 3.5, strong: true });
        pen.text({ key: 'panel:name', class: 'label' }, title, ...at(lower), style);
        return;
      }
    }
  }
}
const FROM_MIDDLE = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6] as const;

/** The two ends and the front edge by name, inside the outline; the reference end with the mark of a datum (ISO 5459). */
export function nameEdges(stage: Stage, panel: Panel, table: Box): void {
  const { pen } = stage;
  for (const end of ['reference-end', 'far-end'] as const) {
    const words = end === 'reference-end' ? `${sentence(endWord(panel, end))}, reference` : sentence(endWord(panel, end));
    putAlong(stage, panel, end, `edge:${end}`, words, table);
  }
  const band = panel.bands.front;
  const words = `${sentence(edgeWord(panel, 'front'))}${band === null ? '' : `, ${band.name}`}`;
  putAlong(stage, panel, 'front', 'edge:front', words, table);
  const [a, b] = edgeLine(stage, panel, 'reference-end', 0);
  const upright = Math.abs(a.x - b.x) < Math.abs(a.y - b.y);
  const { x, y, width, height } = stage.panel;
  const out = upright ? Math.sign(a.x - (x + width / 2)) : Math.sign(a.y - (y + height / 2));
  // Away from the front edge, where stops and fence are.
  for (const part of [0.72, 0.8, 0.64, 0.88, 0.5, 0.4]) {
    const tip = { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
    const [deep, half] = [out * stage.p(2.4), stage.p(1.3)];
    const points = upright
      ? [tip, { x: tip.x + deep, y: tip.y - half }, { x: tip.x + deep, y: tip.y + half }]
      : [tip, { x: tip.x - half, y: tip.y + deep }, { x: tip.x + half, y: tip.y + deep }];
    const box = boxOf(points.map((point) => ({ x: point.x + (upright ? Math.sign(deep) * stage.p(0.9) : 0), y: point.y + (upright ? 0 : Math.sign(deep) * stage.p(0.9)) })), 0);
    if (!pen.isFree(box, 0)) continue;
    pen.path({ key: 'datum:reference-end', class: 'datum' }, 'thin', points, 'ink');
    pen.takeSolid(boxOf(points, 0));
    return;
  }
}

/** A name along an edge: inside the panel if there is room, else beside it on the table. */
function putAlong(
  stage: Stage,
  panel: Panel,
  edge: EdgeName,
  key: string,
  words: string,
  table: Box,
): void {
  const { pen } = stage;
  const what = { key, class: 'label' } as const;
  const { x, y, width, height } = stage.panel;
  for (const inward of [2.6, 3.6, 5, 7, 9.5, 12, 15, -1.6, -3.2, -5, -7]) {
    const [a, b] = edgeLine(stage, panel, edge, stage.p(inward));
    const upright = Math.abs(a.x - b.x) < Math.abs(a.y - b.y);
    const grows = upright ? a.x > x + width / 2 !== inward < 0 : a.y > y + height / 2 !== inward < 0;
    const off = grows ? 0 : stage.p(2.5);
    for (const part of ALONG) {
      const at = { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
      const shape: TextShape = upright
        ? pen.lettering(what, words, at.x + off, at.y, { anchor: 'middle', turn: -90 })
        : pen.lettering(what, words, at.x, at.y + off, { anchor: 'middle' });
      const box = textBox(shape, pen.scale);
      if (!contains(inward > 0 ? stage.panel : table, box) || !pen.isFree(box, 0.4)) continue;
      pen.put(shape);
      return;
    }
  }
  if (edge === 'front') nameByLeader(stage, panel, what, words);
  else nameAtCorner(stage, panel, edge, what, words, table);
}

/** The name of the front edge beside the panel, with a leader line that ends in an arrow on the outline (ISO 128-22). */
function nameByLeader(
  stage: Stage,
  panel: Panel,
  what: { readonly key: string; readonly class: 'label' },
  words: string,
): void {
  const { pen } = stage;
  const [a, b] = edgeLine(stage, panel, 'front', 0);
  if (Math.abs(a.x - b.x) > Math.abs(a.y - b.y)) return;
  const right = a.x > stage.panel.x + stage.panel.width / 2;
  const sign = right ? 1 : -1;
  for (const off of [7, 10, 14, 19, 25]) {
    for (const part of [...ALONG, 0.95, 0.05]) {
      const tip = { x: a.x, y: a.y + (b.y - a.y) * part };
      const elbow = { x: a.x + sign * stage.p(off), y: tip.y };
      const shape = pen.lettering(what, words, elbow.x + sign * stage.p(0.8), tip.y + stage.p(1.25), {
        anchor: right ? 'start' : 'end',
      });
      const path = boxOf([{ x: tip.x + sign * stage.p(0.5), y: tip.y }, elbow], stage.p(0.6));
      if (!pen.isFree(textBox(shape, pen.scale), 0.4) || !pen.isFree(path, 0)) continue;
      pen.put(shape);
      pen.line({ key: `${what.key}:leader`, class: 'dimension' }, 'thin', elbow, tip);
      const back = tip.x + sign * stage.p(2.2);
      const half = stage.p(0.4);
      const head = [tip, { x: back, y: tip.y - half }, { x: back, y: tip.y + half }];
      pen.path({ key: `${what.key}:head`, class: 'dimension' }, 'thin', head, 'ink');
      return;
    }
  }
}

/** The name of an end across the page, along the free side of the panel, in its corner. */
function nameAtCorner(
  stage: Stage,
  panel: Panel,
  edge: EdgeName,
  what: { readonly key: string; readonly class: 'label' },
  words: string,
  table: Box,
): void {
  const { pen } = stage;
  const [a, b] = edgeLine(stage, panel, edge, 0);
  if (Math.abs(a.x - b.x) > Math.abs(a.y - b.y)) return;
  const { x, y, width, height } = stage.panel;
  const right = a.x > x + width / 2;
  const free = stage.out < 0 ? y + height : y;
  for (const off of [1.2, 4.6, -4.6, 8, -8]) {
    for (const along of [0, 3, 6, 10, 15, 20, 26]) {
      const base = stage.out < 0 ? free + stage.p(off + 2.5) : free - stage.p(off);
      const shape = pen.lettering(what, words, a.x + (right ? -1 : 1) * stage.p(along), base, {
        anchor: right ? 'end' : 'start',
      });
      const box = textBox(shape, pen.scale);
      if (!contains(table, box) || !pen.isFree(box, 0.4)) continue;
      pen.put(shape);
      return;
    }
  }
}
const ALONG = [0.5, 0.56, 0.44, 0.62, 0.38, 0.68, 0.32, 0.74, 0.26, 0.8, 0.2, 0.86, 0.14, 0.92, 0.08] as const;
