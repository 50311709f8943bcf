import { roleOf, ROLES } from '../../carcass/roles.js';
import type { Panel } from '../../carcass/model.js';
import { footprintOf, middleOf } from '../../carcass/footprint.js';
import { extentsOf, type Extents } from '../../carcass/pose.js';
import type { Spot } from '../../carcass/turn.js';
import type { Reader } from '../../length/reader.js';
import { apart } from '../../drawing/apart.js';
import { scaleFor } from '../../drawing/scene/scale.js';
import type { PathShape, Point, PrintedScene, Shape, TextShape } from '../../drawing/scene/scene.js';
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
): PrintedScene {
  const placed = placedApart(panels);
  const box = placed.map(({ at }) => corners(at)).flat();
  const xs = box.map(({ x }) => x);
  const ys = box.map(({ y }) => y);
  const scale = Math.max(
    scaleFor(Math.max(...xs) - Math.min(...xs), ROOM.width),
    scaleFor(Math.max(...ys) - Math.min(...ys), ROOM.height),
  );
  const shapes: Shape[] = behindFirst(placed).flatMap(facesOf);
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
  /** Its outline seen from above, in the same. */
  readonly outline: readonly Spot[];
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
    const outline = footprintOf(panel).map(({ x, y }) => ({ x: (x + move.x) / 1000, y: (y + move.y) / 1000 }));
    return { panel, at: { x: moved('x'), y: moved('y'), z: moved('z') }, outline };
  });
}

/** Right and down the page for x, right and up for y, up for z. */
function project(x: number, y: number, z: number): Point {
  return { x: (x + y) * COS_30, y: (x - y) * SIN_30 - z };
}

function corners({ x, y, z }: Extents): readonly Point[] {
  return [x.from, x.to].flatMap((a) => [y.from, y.to].flatMap((b) => [z.from, z.to].map((c) => project(a, b, c))));
}

/** The upper face, and those that look to the front and the right: all that is seen of an upright block from there. */
function facesOf({ panel, at: { z }, outline }: Placed): readonly PathShape[] {
  const { key } = panel;
  // What hangs before the box is drawn as if it were of glass, so that the box is seen.
  const isBefore = roleOf(panel).belongs === 'before-box';
  const face = (name: string, points: readonly Point[]): PathShape => ({
    kind: 'path',
    key: `${key}:${name}`,
    class: 'panel',
    panel: key,
    line: 'fine',
    points,
    closed: true,
    fill: isBefore ? 'none' : name.startsWith('front') ? 'paper' : 'board',
  });
  const top = face(
    'top',
    outline.map(({ x, y }) => project(x, y, z.to)),
  );
  const inside = middleOf(outline);
  const sides = outline.flatMap((a, i): readonly { readonly toRight: number; readonly points: readonly Point[] }[] => {
    const b = outline[(i + 1) % outline.length]!;
    const [nx, ny] = outward(a, b, inside);
    // Whoever looks stands to the right of the front, as far from the one as from the other.
    if (nx - ny <= 1e-9) return [];
    const points = [
      project(a.x, a.y, z.from),
      project(b.x, b.y, z.from),
      project(b.x, b.y, z.to),
      project(a.x, a.y, z.to),
    ];
    return [{ toRight: nx + ny, points }];
  });
  return [
    top,
    ...sides
      .toSorted((a, b) => b.toRight - a.toRight)
      .map(({ toRight, points }, i) => face(`${toRight > 0 ? 'right' : 'front'}${i > 1 ? `-${i}` : ''}`, points)),
  ];
}

/** Which way a side of an outline looks, in a vector of length one. */
function outward(a: Spot, b: Spot, inside: Spot): readonly [number, number] {
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const [nx, ny] = [(b.y - a.y) / long, (a.x - b.x) / long];
  return nx * (a.x - inside.x) + ny * (a.y - inside.y) > 0 ? [nx, ny] : [-nx, -ny];
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
