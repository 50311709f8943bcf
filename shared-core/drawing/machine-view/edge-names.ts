import { described } from '../../machining/described.js';
import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import { boxOf, contains, overlap } from '../scene/boxes.js';
import { textBox } from '../scene/lettering.js';
import type { Box, Point, TextShape } from '../scene/scene.js';
import { sentence } from '../../words/english.js';
import { edgeWord, endWord } from '../words.js';
import { outward } from './outward.js';
import { edgeLine } from './panel.js';
import type { Stage } from './stage.js';
import { worded } from '../../words/told.js';

/** The two ends and the front edge by name, inside the outline; the reference end with the mark of a datum (ISO 5459). */
export function nameEdges(stage: Stage, panel: Panel, table: Box): void {
  const { front } = panel.bands;
  const name = sentence(worded('sides', edgeWord(panel, 'front')));
  markReference(stage, panel);
  for (const end of ['reference-end', 'far-end'] as const) {
    const words = sentence(worded('sides', endWord(panel, end)));
    nameEnd(stage, panel, end, words, table);
  }
  const names = front === null ? [name] : [`${name}, ${front.name}`, name];
  for (const words of names) {
    const found = besideEdge(stage, panel, 'front', words, table);
    if (found === undefined) continue;
    stage.pen.put(found);
    return;
  }
  if (names.some((words) => byLeader(stage, panel, 'front', words, table))) return;
  if (described(stage.acted.stroke.setUp.machine).bores === 'ends') return;
  // No room on a small panel: then under the name of the fence that it lies at.
  const fence = stage.pen.shapes.find(({ key }) => key === 'fence:name');
  if (fence?.kind !== 'text') return;
  const { x, anchor } = fence;
  const rows = [4, 8, 12, 16].map((down) =>
    stage.pen.lettering({ key: 'edge:front', class: 'label' }, name, x, fence.y - stage.out * stage.p(down), {
      anchor,
    }),
  );
  const free = rows.find((shape) => stage.pen.isFree(textBox(shape, stage.pen.scale), 0.2));
  if (free !== undefined) stage.pen.put(free);
}

/** At the end itself or with a line that leads to it; in a corner, where it may seem to be the long edge's, only where all else fails. */
function nameEnd(stage: Stage, panel: Panel, end: EdgeName, words: string, table: Box): void {
  const found = besideEdge(stage, panel, end, words, table) ?? atEnd(stage, panel, end, words, table);
  if (found === undefined && isUpright(edgeLine(stage, panel, end, 0)) && leaderTo(stage, panel, end, words, table))
    return;
  const shape = found ?? inCorner(stage, panel, end, words, table);
  if (shape !== undefined) stage.pen.put(shape);
  else byLeader(stage, panel, end, words, table);
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

/** The name of a short end that runs up the page: across the page, outside the end and within its height. */
function atEnd(stage: Stage, panel: Panel, end: EdgeName, words: string, table: Box): TextShape | undefined {
  const { pen } = stage;
  const line = edgeLine(stage, panel, end, 0);
  if (!isUpright(line)) return undefined;
  const out = outOf(stage, line);
  const what = { key: `edge:${end}`, class: 'label' } as const;
  const shapes = [1.2, 4].flatMap((away) =>
    ALONG.map((part) => {
      const { x, y } = between(line, part);
      const anchor = out > 0 ? 'start' : 'end';
      return pen.lettering(what, words, x + out * stage.p(away), y + stage.p(1.25), { anchor });
    }),
  );
  return shapes.find((shape) => {
    const box = textBox(shape, pen.scale);
    return contains(table, box) && pen.isFree(box, 0.4);
  });
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
