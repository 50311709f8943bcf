import type { CornerCut, Panel } from '../../carcass/model.js';
import { fitText } from '../../drawing/scene/lettering.js';
import type { Box, LineType, PathShape, Point, Shape, TextShape } from '../../drawing/scene/scene.js';
import type { EdgeName } from '../../job/model.js';
import type { Told } from '../../words/told.js';
import { MARKS } from './messages.js';
import { seenOutside, type Side } from './standing.js';

/** Lettering of ISO 3098 that is still read at half a metre. */
const HEIGHT = 1.8;
const HEAD = 1.3;
/** Thickness of a banded edge. */
const BAR = 0.7;

/** A panel in small, its outside face seen: banded edges drawn as bands, arrows to the front and up, or which way the face looks. */
export function pictogram(panel: Panel, box: Box): readonly Shape[] {
  const { edges, looks, front } = seenOutside(panel);
  const inner = { x: box.x + 1, y: box.y + 1, width: box.width - 2, height: box.height - 2 };
  return [
    path('face', 'panel', 'fine', cornersOf(inner), true, 'paper'),
    ...(panel.corner === undefined ? [] : [cutLine(panel.corner, edges, inner)]),
    ...(Object.keys(panel.bands) as EdgeName[]).flatMap((edge) =>
      panel.bands[edge] === null ? [] : [bandBar(edge, edges[edge], box)],
    ),
    ...(front === null ? [] : frontArrow(front, inner)),
    ...(looks === 'aside' ? upArrow(front, inner) : [faceMark(looks, inner)]),
  ];
}

/** The corner that is sawn off, in a third of each edge. */
function cutLine({ end }: CornerCut, edges: Readonly<Record<EdgeName, Side>>, inner: Box): Shape {
  const [a, b] = [edges.front, edges[end]];
  const isAt = (side: Side): boolean => a === side || b === side;
  const corner = {
    x: isAt('right') ? inner.x + inner.width : inner.x,
    y: isAt('foot') ? inner.y + inner.height : inner.y,
  };
  const [dx, dy] = [
    isAt('right') ? -inner.width / 3 : inner.width / 3,
    isAt('foot') ? -inner.height / 3 : inner.height / 3,
  ];
  const points = [
    { x: corner.x + dx, y: corner.y },
    { x: corner.x, y: corner.y + dy },
  ];
  return path('cut', 'panel', 'hidden', points, false, 'none');
}

/** A black bar along the edge. */
function bandBar(edge: EdgeName, side: Side, { x, y, width, height }: Box): Shape {
  const bar = {
    left: { x, y, width: BAR, height },
    right: { x: x + width - BAR, y, width: BAR, height },
    top: { x, y, width, height: BAR },
    foot: { x, y: y + height - BAR, width, height: BAR },
  }[side];
  return path(`band-${edge}`, 'band', 'thin', cornersOf(bar), true, 'ink');
}

/** In the lower half: to the left, to the right, or down to the foot. */
function frontArrow(side: Side, { x, y, width, height }: Box): readonly Shape[] {
  const level = y + height * 0.72;
  switch (side) {
    case 'left':
      return [
        ...arrow('front', { x: x + width * 0.36, y: level }, { x, y: level }),
        word('front', MARKS.front, x + width * 0.36 + 0.8, level + HEIGHT / 2, 'start', width * 0.6),
      ];
    case 'right':
      return [
        ...arrow('front', { x: x + width * 0.64, y: level }, { x: x + width, y: level }),
        word('front', MARKS.front, x + width * 0.64 - 0.8, level + HEIGHT / 2, 'end', width * 0.6),
      ];
    case 'top':
    case 'foot':
      return [
        ...arrow('front', { x: x + width * 0.3, y: y + height * 0.5 }, { x: x + width * 0.3, y: y + height }),
        word('front', MARKS.front, x + width * 0.3 + 1.2, y + height * 0.78, 'start', width * 0.6),
      ];
  }
}

/** In the upper half, on the side that the word of the other arrow leaves free. */
function upArrow(front: Side | null, { x, y, width, height }: Box): readonly Shape[] {
  const at = x + width * (front === 'right' ? 0.7 : 0.3);
  const anchor = front === 'right' ? 'end' : 'start';
  return [
    ...arrow('up', { x: at, y: y + height * 0.5 }, { x: at, y }),
    word('up', MARKS.up, at + (front === 'right' ? -1.2 : 1.2), y + height * 0.25 + HEIGHT / 2, anchor, width * 0.6),
  ];
}

function faceMark(looks: 'up' | 'down', { x, y, width, height }: Box): Shape {
  const words = looks === 'up' ? MARKS.facesUp : MARKS.facesDown;
  return word('face-mark', words, x + width / 2, y + height * 0.22 + HEIGHT / 2, 'middle', width - 1);
}

/** A line with a filled head at `to`; level or upright. */
function arrow(key: string, from: Point, to: Point): readonly Shape[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const base = { x: to.x - dx * HEAD, y: to.y - dy * HEAD };
  const wing = (by: number): Point => ({ x: base.x - dy * by, y: base.y + dx * by });
  return [
    path(`${key}-shaft`, 'label', 'fine', [from, base], false, 'none'),
    path(`${key}-head`, 'label', 'fine', [to, wing(HEAD * 0.4), wing(-HEAD * 0.4)], true, 'ink'),
  ];
}

function word(key: string, text: Told, x: number, y: number, anchor: TextShape['anchor'], room: number): Shape {
  return {
    kind: 'text',
    key: `pictogram:${key}-word`,
    class: 'label',
    panel: '',
    text: fitText(text, HEIGHT, false, room),
    x,
    y,
    height: HEIGHT,
    anchor,
    turn: 0,
    strong: false,
  };
}

function path(
  key: string,
  shapeClass: PathShape['class'],
  line: LineType,
  points: readonly Point[],
  closed: boolean,
  fill: PathShape['fill'],
): PathShape {
  return { kind: 'path', key: `pictogram:${key}`, class: shapeClass, panel: '', line, points, closed, fill };
}

function cornersOf({ x, y, width, height }: Box): readonly Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
