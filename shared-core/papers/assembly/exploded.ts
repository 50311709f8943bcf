import { roleOf, ROLES } from '../../carcass/roles.js';
import type { Panel } from '../../carcass/model.js';
import { extentsOf, type Extents } from '../../carcass/pose.js';
import type { Reader } from '../../length/reader.js';
import { apart } from '../../drawing/apart.js';
import { scaleFor } from '../../drawing/scene/scale.js';
import type { PathShape, Point, Scene, Shape, TextShape } from '../../drawing/scene/scene.js';
import { asItIs } from '../../words/told.js';
import { pictureScene } from '../picture-scene.js';

/** Room of the drawing on paper, in millimetres. */
const ROOM = { width: 160, height: 120 };
/** How far panels are drawn apart: so many times their distance from the middle of the box. */
const APART = 0.35;
const COS_30 = Math.cos(Math.PI / 6);
const SIN_30 = 0.5;

/**
 * The panels drawn apart, in isometric projection (ISO 5456-3) from the front, the right and above: each panel's three
 * faces that are seen, those behind first. Numbers are those of the order of assembly.
 */
export function explodedScene(
  name: string,
  panels: readonly Panel[],
  numbers: ReadonlyMap<string, number>,
  reader: Reader,
): Scene {
  const placed = placedApart(panels);
  const box = placed.map(({ at }) => corners(at)).flat();
  const xs = box.map(({ x }) => x);
  const ys = box.map(({ y }) => y);
  const scale = Math.max(
    scaleFor(Math.max(...xs) - Math.min(...xs), ROOM.width),
    scaleFor(Math.max(...ys) - Math.min(...ys), ROOM.height),
  );
  const shapes: Shape[] = behindFirst(placed).flatMap(({ panel, at }) => facesOf(panel, at));
  for (const { panel, at } of placed) {
    const number = numbers.get(panel.key);
    if (number !== undefined) shapes.push(...numberOf(panel, at, String(number), scale));
  }
  return pictureScene(asItIs(name), shapes, scale, 2, reader);
}

interface Placed {
  readonly panel: Panel;
  /** Millimetres of the carcass frame. */
  readonly at: Extents;
}

const mm = (length: number): number => length / 1000;

function placedApart(panels: readonly Panel[]): readonly Placed[] {
  const moves = apart(panels, APART);
  return panels.map((panel) => {
    const box = extentsOf(panel);
    const move = moves.get(panel.key)!;
    const moved = (axis: keyof Extents): { from: number; to: number } => ({
      from: mm(box[axis].from + move[axis]),
      to: mm(box[axis].to + move[axis]),
    });
    return { panel, at: { x: moved('x'), y: moved('y'), z: moved('z') } };
  });
}

/** Right and down the page for x, right and up for y, up for z. */
function project(x: number, y: number, z: number): Point {
  return { x: (x + y) * COS_30, y: (x - y) * SIN_30 - z };
}

function corners({ x, y, z }: Extents): readonly Point[] {
  return [x.from, x.to].flatMap((a) => [y.from, y.to].flatMap((b) => [z.from, z.to].map((c) => project(a, b, c))));
}

/** Front, right and upper face: all that is seen of a box from there. */
function facesOf(panel: Panel, { x, y, z }: Extents): readonly PathShape[] {
  const { key } = panel;
  // What hangs before the box is drawn as if it were of glass, so that the box is seen.
  const isBefore = roleOf(panel).belongs === 'before-box';
  const face = (name: string, points: readonly (readonly [number, number, number])[]): PathShape => ({
    kind: 'path',
    key: `${key}:${name}`,
    class: 'panel',
    panel: key,
    line: 'fine',
    points: points.map(([a, b, c]) => project(a, b, c)),
    closed: true,
    fill: isBefore ? 'none' : name === 'front' ? 'paper' : 'board',
  });
  return [
    face('top', [
      [x.from, y.from, z.to],
      [x.to, y.from, z.to],
      [x.to, y.to, z.to],
      [x.from, y.to, z.to],
    ]),
    face('right', [
      [x.to, y.from, z.from],
      [x.to, y.to, z.from],
      [x.to, y.to, z.to],
      [x.to, y.from, z.to],
    ]),
    face('front', [
      [x.from, y.from, z.from],
      [x.to, y.from, z.from],
      [x.to, y.from, z.to],
      [x.from, y.from, z.to],
    ]),
  ];
}

/** Each before all that stand to its right, in front of it or above it. */
function behindFirst(placed: readonly Placed[]): readonly Placed[] {
  const isBehind = (a: Placed, b: Placed): boolean =>
    a.at.x.to <= b.at.x.from || a.at.y.from >= b.at.y.to || a.at.z.to <= b.at.z.from;
  const left = [...placed];
  const order: Placed[] = [];
  while (left.length > 0) {
    const free = left.findIndex((one) =>
      left.every((other) => other === one || isBehind(one, other) || !isBehind(other, one)),
    );
    order.push(...left.splice(Math.max(0, free), 1));
  }
  return order;
}

/** In a ring on the largest face that is seen. */
function numberOf({ key, role }: Panel, at: Extents, words: string, scale: number): readonly Shape[] {
  const middle = ({ from, to }: { from: number; to: number }): number => (from + to) / 2;
  const upright = ROLES[role].stands === 'upright';
  const seen = upright && at.x.to - at.x.from < at.y.to - at.y.from;
  const centre = project(
    seen ? at.x.to : middle(at.x),
    seen ? middle(at.y) : upright ? at.y.from : middle(at.y),
    upright ? middle(at.z) : at.z.to,
  );
  const text: TextShape = {
    kind: 'text',
    key: `${key}:number`,
    class: 'number',
    panel: key,
    text: words,
    x: centre.x,
    y: centre.y + 1.25 * scale,
    height: 2.5,
    anchor: 'middle',
    turn: 0,
    strong: true,
  };
  return [
    {
      kind: 'circle',
      key: `${key}:ring`,
      class: 'number',
      panel: key,
      line: 'thin',
      cx: centre.x,
      cy: centre.y,
      r: 2.6 * scale,
    },
    text,
  ];
}
