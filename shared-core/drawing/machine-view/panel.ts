import { isFace } from '../../boring/surface.js';
import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import { boxOf, contains, grow, overlap } from '../scene/boxes.js';
import type { Drawn } from '../drawn.js';
import { aboutBore } from '../about-bore.js';
import { textBox, textWidth } from '../scene/lettering.js';
import type { Box, Point, TextShape } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import { edgeWord, endWord, sentence, surfaceWord } from '../words.js';
import type { SceneHole } from './scene.js';
import type { Stage } from './stage.js';
import { zoneBorders } from './table.js';
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
    ? [
        { x: a.x, y: toward(a.y, middle.y) },
        { x: b.x, y: toward(b.y, middle.y) },
      ]
    : [
        { x: toward(a.x, middle.x), y: a.y },
        { x: toward(b.x, middle.x), y: b.y },
      ];
}

const holeKeyOf = ({ bore }: StrokeHole): string => `hole:${bore.id}`;

/** Every bore of the panel: made, made in this stroke, still to come; dashed where it is not seen from above. */
export function drawHoles(stage: Stage, panel: Panel): void {
  const { pen, acted } = stage;
  for (const hole of acted.holes) {
    const { bore, state } = hole;
    const what = { key: holeKeyOf(hole), class: `hole-${state}` } as const;
    const r = mm(bore.diameter) / 2;
    if (isFace(bore.face)) {
      const [tx, ty] = acted.place(bore.u, bore.v, 0);
      if (stage.inBreak(tx, ty)) continue;
      const { x, y } = stage.at(tx, ty);
      const hidden = !bore.through && bore.face !== acted.layout.up;
      pen.add({ ...what, kind: 'circle', panel: pen.panel, line: hidden ? 'hidden' : 'fine', cx: x, cy: y, r });
      pen.takeSolid(grow({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }, stage.p(0.3)));
      continue;
    }
    const [mouth, floor] = bore.face === 'reference-end' ? [0, bore.depth] : [panel.length, panel.length - bore.depth];
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

/** Every hole of the panel in words, with how far it is. */
export function aboutHoles(stage: Stage, drawn: Drawn, panel: Panel): SceneHole[] {
  const words = { made: 'made', now: 'made in this stroke', 'to-come': 'still to come' } as const;
  return stage.acted.holes.map((hole) => ({
    key: holeKeyOf(hole),
    bore: hole.bore.id,
    state: hole.state,
    about: `${aboutBore(drawn.carcass, drawn.boring, panel, hole.bore, drawn.unit)} ${sentence(words[hole.state])}.`,
  }));
}

/** Which face is up, and whose panel it is, where the panel has room for it: across the page, or else up it; else beside it. */
export function nameFace(stage: Stage, { role }: Pick<Panel, 'role'>, title: string, table: Box): void {
  const { pen, panel, acted } = stage;
  const up = `${sentence(surfaceWord({ role }, acted.layout.up))} up`;
  const face = { key: 'panel:face', class: 'panel-name' } as const;
  const put = (x: number, y: number, turn: 0 | -90, named: boolean): void => {
    const at = (by: number): [number, number] => (turn === 0 ? [x, y + by] : [x + by, y]);
    const style = { anchor: 'middle', turn } as const;
    pen.text(face, up, ...at(stage.p(named ? -0.4 : 1.75)), { ...style, height: 3.5, strong: true });
    if (named) pen.text({ key: 'panel:name', class: 'label' }, title, ...at(stage.p(3.8)), style);
  };
  const shortest = stage.p(textWidth(up, 3.5, true));
  const longest = Math.max(shortest, stage.p(textWidth(title, 2.5, false)));
  for (const named of [true, false]) {
    const [long, high] = named ? [longest, stage.p(8.4)] : [shortest, stage.p(4.8)];
    for (const turn of [0, -90] as const) {
      const [width, height] = turn === 0 ? [long, high] : [high, long];
      const place = freePlace(stage, panel, width, height);
      if (place === null) continue;
      put(place.x, place.y, turn, named);
      return;
    }
  }
  const strip = longest + stage.p(10);
  for (const x of [panel.x - strip, panel.x + panel.width]) {
    const area = { x, y: panel.y, width: strip, height: panel.height };
    const place = contains(table, { ...area, height: 0 }) ? freePlace(stage, area, longest, stage.p(8.4)) : null;
    if (place === null) continue;
    put(place.x, place.y, 0, true);
    return;
  }
  const place = freePlace(stage, table, longest, stage.p(8.4));
  if (place !== null) put(place.x, place.y, 0, true);
}

/** Middle of the free room in an area for a box of this size, from the middle outward; across no border of the zone if it can be. */
function freePlace(stage: Stage, area: Box, width: number, height: number): Point | null {
  return placeIn(stage, area, width, height, zoneBorders(stage)) ?? placeIn(stage, area, width, height, []);
}

function placeIn(stage: Stage, area: Box, width: number, height: number, avoid: readonly Box[]): Point | null {
  for (const down of FROM_MIDDLE) {
    for (const right of FROM_MIDDLE) {
      const x = area.x + area.width * (0.5 + right);
      const y = area.y + area.height * (0.5 + down);
      const box = { x: x - width / 2, y: y - height / 2, width, height };
      if (!contains(area, box) || avoid.some((border) => overlap(border, box))) continue;
      if (stage.pen.isFree(box, 0.8)) return { x, y };
    }
  }
  return null;
}
/** Parts of a length from its middle: 0, a step to one side, a step to the other, and so on to both ends. */
function outward(steps: number): readonly number[] {
  return Array.from(
    { length: 2 * steps + 1 },
    (_, index) => (Math.ceil(index / 2) * (index % 2 === 0 ? 1 : -1)) / (2 * steps + 2),
  );
}
const FROM_MIDDLE = outward(15);

/** The two ends and the front edge by name, inside the outline; the reference end with the mark of a datum (ISO 5459). */
export function nameEdges(stage: Stage, panel: Panel, table: Box): void {
  const { front } = panel.bands;
  const name = sentence(edgeWord(panel, 'front'));
  markReference(stage, panel);
  for (const end of ['reference-end', 'far-end'] as const) {
    const words = sentence(endWord(panel, end));
    const found =
      (end === 'reference-end' && besideEdge(stage, panel, end, `${words}, reference`, table)) ||
      besideEdge(stage, panel, end, words, table) ||
      inCorner(stage, panel, end, words, table);
    if (found) stage.pen.put(found);
    else byLeader(stage, panel, end, words, table);
  }
  const names = front === null ? [name] : [`${name}, ${front.name}`, name];
  for (const words of names) {
    const found = besideEdge(stage, panel, 'front', words, table);
    if (found === undefined) continue;
    stage.pen.put(found);
    return;
  }
  if (names.some((words) => byLeader(stage, panel, 'front', words, table))) return;
  if (stage.acted.stroke.setUp.machine.kind === 'horizontal') return;
  // No room on a small panel: then under the name of the fence that it lies at.
  const fence = stage.pen.shapes.find(({ key }) => key === 'fence:name');
  if (fence?.kind !== 'text') return;
  const { x, anchor } = fence;
  stage.pen.text({ key: 'edge:front', class: 'label' }, name, x, fence.y - stage.out * stage.p(4), { anchor });
}

const isUpright = ([a, b]: readonly [Point, Point]): boolean => Math.abs(a.x - b.x) < Math.abs(a.y - b.y);
const between = ([a, b]: readonly [Point, Point], part: number): Point => ({
  x: a.x + (b.x - a.x) * part,
  y: a.y + (b.y - a.y) * part,
});
/** Page direction, across an edge, that leads out of the panel. */
function outOf({ panel }: Stage, edge: readonly [Point, Point]): 1 | -1 {
  const { x, y, width, height } = panel;
  return (isUpright(edge) ? edge[0].x > x + width / 2 : edge[0].y > y + height / 2) ? 1 : -1;
}
/** A point so far along and across an edge. */
const off = (edge: readonly [Point, Point], { x, y }: Point, along: number, across: number): Point =>
  isUpright(edge) ? { x: x + across, y: y + along } : { x: x + along, y: y + across };

/** Away from the front edge, where stops and fence are. */
const DATUM_PLACES = [0.72, 0.8, 0.64, 0.88, 0.5, 0.4, 0.95, 0.3] as const;

/** A filled triangle that stands on the reference end: outside it, or inside where the machine is in the way. */
function markReference(stage: Stage, panel: Panel): void {
  const { pen } = stage;
  const edge = edgeLine(stage, panel, 'reference-end', 0);
  const out = outOf(stage, edge);
  for (const sign of [out, -out]) {
    for (const part of DATUM_PLACES) {
      const tip = between(edge, part);
      const [deep, half] = [sign * stage.p(2.4), stage.p(1.3)];
      const points = [tip, off(edge, tip, -half, deep), off(edge, tip, half, deep)];
      const clear = points.map((point) => off(edge, point, 0, sign * stage.p(0.9)));
      if (!pen.isFree(boxOf(clear, 0), 0)) continue;
      pen.path({ key: 'datum:reference-end', class: 'datum' }, 'thin', points, 'ink');
      pen.takeSolid(boxOf(points, 0));
      return;
    }
  }
}

const ALONG: readonly number[] = outward(45).map((part) => 0.5 + part);

/** A name along an edge: inside the panel if there is room, else beside it on the table; undefined where there is none. */
function besideEdge(stage: Stage, panel: Panel, edge: EdgeName, words: string, table: Box): TextShape | undefined {
  const { pen } = stage;
  for (const inward of [2.6, 3.6, 5, -1.6, -3.2, 7, 9.5, -5, -7, 12, 15]) {
    const line = edgeLine(stage, panel, edge, stage.p(inward));
    const upright = isUpright(line);
    const grows = outOf(stage, line) > 0 !== inward < 0;
    const base = grows ? 0 : stage.p(2.5);
    for (const part of ALONG) {
      const at = off(line, between(line, part), 0, base);
      const style = { anchor: 'middle', turn: upright ? -90 : 0 } as const;
      const shape = pen.lettering({ key: `edge:${edge}`, class: 'label' }, words, at.x, at.y, style);
      const box = textBox(shape, pen.scale);
      if (contains(inward > 0 ? stage.panel : table, box) && pen.isFree(box, 0.4)) return shape;
    }
  }
  return undefined;
}

/** The name of an end across the page in a corner of the panel, outside it: along its free side, or beside it at the end's level. */
function inCorner(stage: Stage, panel: Panel, edge: EdgeName, words: string, table: Box): TextShape | undefined {
  const { pen } = stage;
  const line = edgeLine(stage, panel, edge, 0);
  const what = { key: `edge:${edge}`, class: 'label' } as const;
  const { x, y, width, height } = stage.panel;
  const out = outOf(stage, line);
  const shapes = [1.2, 2.6, 4.6, -4.6, 8, -8].flatMap((away) =>
    [0, 1.5, 3, 6, 10].flatMap((along): TextShape[] => {
      if (isUpright(line)) {
        const base = stage.out < 0 ? y + height + stage.p(away + 2.5) : y - stage.p(away);
        return [
          pen.lettering(what, words, line[0].x - out * stage.p(along), base, { anchor: out > 0 ? 'end' : 'start' }),
        ];
      }
      const base = line[0].y + (out < 0 ? stage.p(2.5 + along) : -stage.p(along));
      return [
        pen.lettering(what, words, x - stage.p(away), base, { anchor: 'end' }),
        pen.lettering(what, words, x + width + stage.p(away), base),
      ];
    }),
  );
  return shapes.find((shape) => {
    const box = textBox(shape, pen.scale);
    return contains(table, box) && pen.isFree(box, 0.4);
  });
}

/**
 * The name of an edge with a leader line that ends in an arrow on the outline (ISO 128-22); across the edge of the table only
 * where there is no other room.
 */
function byLeader(stage: Stage, panel: Panel, name: EdgeName, words: string, table: Box): boolean {
  return [false, true].some((across) => leaderTo(stage, panel, name, words, across ? null : table));
}

/** @param table whose edge the name keeps clear of */
function leaderTo(stage: Stage, panel: Panel, name: EdgeName, words: string, table: Box | null): boolean {
  const { pen } = stage;
  const edge = edgeLine(stage, panel, name, 0);
  const upright = isUpright(edge);
  // Beside the panel where the edge runs up the page; into it where it runs along the fence.
  const sign = upright ? outOf(stage, edge) : -outOf(stage, edge);
  const what = { key: `edge:${name}`, class: 'label' } as const;
  for (const long of [4.5, 6, 7.5, 9, 11, 14, 17, 20, 24]) {
    for (const part of ALONG) {
      const tip = between(edge, part);
      const elbow = off(edge, tip, 0, sign * stage.p(long));
      const shape = upright
        ? pen.lettering(what, words, elbow.x + sign * stage.p(0.8), tip.y + stage.p(1.25), {
            anchor: sign > 0 ? 'start' : 'end',
          })
        : pen.lettering(what, words, tip.x, elbow.y + (sign > 0 ? stage.p(3.2) : -stage.p(0.7)), { anchor: 'middle' });
      const path = boxOf([off(edge, tip, 0, sign * stage.p(2.2)), elbow], stage.p(0.6));
      const box = textBox(shape, pen.scale);
      if (table !== null && overlap(table, box) && !contains(table, box)) continue;
      if (!pen.isFree(box, 0.4) || !pen.isFree(path, 0)) continue;
      pen.put(shape);
      pen.line({ key: `${what.key}:leader`, class: 'dimension' }, 'thin', elbow, tip);
      const [deep, half] = [sign * stage.p(2.2), stage.p(0.4)];
      const head = [tip, off(edge, tip, -half, deep), off(edge, tip, half, deep)];
      pen.path({ key: `${what.key}:head`, class: 'dimension' }, 'thin', head, 'ink');
      return true;
    }
  }
  return false;
}
