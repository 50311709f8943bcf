import type { Reader } from '../../length/reader.js';
import { inOneNotation } from '../../length/show.js';
import { described } from '../../machining/described.js';
import { around, boxOf, grow } from '../scene/boxes.js';
import { frameOf } from '../scene/extent.js';
import { mm } from '../scene/scale.js';
import type { Pen } from '../scene/pen.js';
import { textBox, textWidth } from '../scene/lettering.js';
import type { Box, Point, TextShape } from '../scene/scene.js';
import { BAR } from '../machine-view/stage.js';
import { corners, hatch } from '../machine-view/table.js';
import { sentence } from '../../words/english.js';
import { tell } from '../../words/message.js';
import { NAMES, say } from './messages.js';
import { sourceOf } from './source-of.js';
import type { Standing, StandingHead } from './standing.js';
import { WIDER } from '../scene/wider.js';
import { asItIs, worded } from '../../words/told.js';

/** Half a clamp's foot, in millimetres of lettering. */
const FOOT = 1.8;

/**
 * The table with its fence, heads at their nearest and furthest, and clamps; what the stops take up is there already.
 * @param width of the pane, in scene coordinates: names of heads stay within it where they can
 */
export function drawBed(pen: Pen, stand: Standing, reader: Reader, width: number): void {
  const write = inOneNotation(
    stand.heads.flatMap(({ fromFence }) => [fromFence.min, fromFence.max]),
    reader,
  );
  // No name stands on the fence, however far it reaches.
  const stops = frameOf(pen.shapes, pen.scale);
  const fence = grow(stops, pen.paper(200));
  pen.takeSolid({ x: fence.x, width: fence.width, y: stand.down > 0 ? -pen.paper(BAR) : 0, height: pen.paper(BAR) });
  const page = { left: stops.x, right: stops.x + Math.max(stops.width, width) };
  const drawn = stand.heads.map((head) => drawHead(pen, stand, head));
  drawClamps(pen, stand);
  const throat = stand.throat === null ? null : drawThroat(pen, stand, stand.throat);
  if (stand.heads.length > 1) drawn.forEach(({ near }, index) => numberHead(pen, stand, index, near));
  // No name stands on another head, nor on the line of the throat.
  if (stand.machine.kind !== 'horizontal')
    stand.heads.forEach((head, index) => nameHead(pen, stand, head, index, drawn[index]!, reader, write, page));
  nameClamps(pen, stand);
  if (throat !== null) nameThroat(pen, stand, throat, reader, write);
  drawTable(pen, stand);
}

/** From where to where lettering can stand without the drawing growing wider than its pane. */
interface Page {
  readonly left: number;
  readonly right: number;
}

/** A head at its nearest and its furthest. */
interface DrawnHead {
  readonly near: Box;
  readonly furthest: Box;
}

function drawHead(pen: Pen, { down, machine }: Standing, head: StandingHead): DrawnHead {
  const { spindles, fromFence, key } = head;
  const source = sourceOf(machine, ...head.path);
  const r = radiusOf(pen, head);
  const at = (from: number): readonly Point[] =>
    spindles.map(({ x, beyondFirst }) => ({ x, y: down * (mm(from) + beyondFirst) }));
  const outline = (from: number): Box => boxOf(at(from), 2 * r + pen.paper(1.2));
  const [near, furthest] = [outline(fromFence.min), outline(fromFence.max)];
  if (fromFence.max > fromFence.min)
    pen.path({ key: `${key}:most`, class: 'head', source }, 'phantom', corners(furthest), 'none');
  pen.path({ key, class: 'head', source }, 'thin', corners(near), 'paper');
  at(fromFence.min).forEach(({ x, y }, spindle) => {
    const what = { key: `${key}:${spindle}`, class: 'spindle-loaded', kind: 'circle', panel: pen.panel } as const;
    pen.add({ ...what, source: sourceOf(machine, 'spindles'), line: 'thin', cx: x, cy: y, r });
  });
  pen.takeSolid(near);
  return { near, furthest };
}

/** Heads at their nearest lie close together, further from their names than from each other: each has its number beside it. */
function numberHead(pen: Pen, { down, machine, heads }: Standing, index: number, near: Box): void {
  const { key, path } = heads[index]!;
  const what = { key: `${key}:number`, class: 'label', source: sourceOf(machine, ...path) } as const;
  const middle = near.y + near.height / 2 + pen.paper(0.9);
  // Beside a head that is close to the fence, clear of that.
  const y = down > 0 ? Math.max(middle, pen.paper(3.1)) : Math.min(middle, -pen.paper(1.2));
  const places = [1.2, 2.4, 3.6, 4.8, 6, 8.4].flatMap((away) => [
    pen.lettering(what, asItIs(String(index + 1)), near.x - pen.paper(away), y, { anchor: 'end' }),
    pen.lettering(what, asItIs(String(index + 1)), near.x + near.width + pen.paper(away), y),
  ]);
  putWhereFree(pen, places);
}

/** How far from the fence a head can stand, beside it or beyond it. */
function nameHead(
  pen: Pen,
  { down, machine, heads }: Standing,
  { fromFence, key, path }: StandingHead,
  index: number,
  { near, furthest }: DrawnHead,
  reader: Reader,
  write: (length: number) => string,
  page: Page,
): void {
  const source = sourceOf(machine, ...path);
  const range = { min: write(fromFence.min), max: write(fromFence.max) };
  const words = tell(say.headRange({ head: heads.length === 1 ? null : index + 1, ...range }), reader);
  const what = { key: `${key}:name`, class: 'label', source } as const;
  const right = furthest.x + furthest.width + pen.paper(1.2);
  const levels = [0, 4, -4, 8, -8].map((more) => near.y + near.height / 2 + pen.paper(0.9 + more));
  const below = furthest.y + furthest.height + pen.paper(3.4);
  const over = furthest.y - pen.paper(0.9);
  const half = (WIDER * pen.paper(textWidth(words, 2.5, false))) / 2;
  const middle = Math.max(page.left + half, Math.min(furthest.x + furthest.width / 2, page.right - half));
  const [outer, inner] = down > 0 ? [below, over] : [over, below];
  const places = [
    ...(heads.length > 1 ? levels.map((y) => pen.lettering(what, words, right, y)) : []),
    pen.lettering(what, words, middle, outer, { anchor: 'middle' }),
    ...(heads.length === 1 ? [pen.lettering(what, words, middle, inner, { anchor: 'middle' })] : []),
    ...levels.map((y) => pen.lettering(what, words, right, y)),
    ...rowsFrom(pen, outer, down).map((y) => pen.lettering(what, words, middle, y, { anchor: 'middle' })),
  ];
  const inPage = places.filter((shape) => {
    const { x, width } = textBox(shape, pen.scale);
    const more = ((WIDER - 1) * width) / (shape.anchor === 'middle' ? 2 : 1);
    return x + width + more <= page.right;
  });
  putWhereFree(pen, inPage.length > 0 ? inPage : places);
}

/** Lines of lettering, one after the other, away from the fence. */
function rowsFrom(pen: Pen, y: number, down: 1 | -1): readonly number[] {
  return Array.from({ length: 16 }, (_, row) => y + down * row * pen.paper(3.6));
}

/** Puts down the first that stands clear, or the last. */
function putWhereFree(pen: Pen, places: readonly TextShape[]): void {
  const free = places.find((shape) => pen.isFree(textBox(shape, pen.scale), 0.3)) ?? places.at(-1);
  if (free !== undefined) pen.put(free);
}

/** As large as they can be told apart, and no larger than signs are. */
function radiusOf(pen: Pen, { spindles: [first, second] }: StandingHead): number {
  const apart = first === undefined || second === undefined ? Infinity : second.x - first.x + second.beyondFirst;
  return Math.min(apart * 0.36, pen.paper(1.3));
}

function drawClamps(pen: Pen, stand: Standing): void {
  const { machine } = stand;
  const half = pen.paper(FOOT);
  for (const { name, x, fromFence } of stand.clamps) {
    const source = sourceOf(machine, 'clamps', name);
    const y = stand.down * fromFence;
    const [a, b, c, d] = corners({ x: x - half, y: y - half, width: 2 * half, height: 2 * half });
    const key = `clamp:${name}`;
    pen.path({ key, class: 'clamp', source }, 'fine', [a, b, c, d], 'paper');
    pen.line({ key: `${key}:falling`, class: 'clamp', source }, 'fine', a, c);
    pen.line({ key: `${key}:rising`, class: 'clamp', source }, 'fine', b, d);
    pen.takeSolid({ x: x - half, y: y - half, width: 2 * half, height: 2 * half });
  }
}

function nameClamps(pen: Pen, stand: Standing): void {
  const { machine } = stand;
  const half = pen.paper(FOOT);
  for (const { name, x, fromFence } of stand.clamps) {
    const y = stand.down * fromFence;
    const what = { key: `clamp:${name}:name`, class: 'label', source: sourceOf(machine, 'clamps', name) } as const;
    const beside = half + pen.paper(1);
    const side = (sign: 1 | -1, more: number): TextShape =>
      pen.lettering(what, name, x + sign * beside, y + pen.paper(0.9 + more), { anchor: sign > 0 ? 'start' : 'end' });
    // A name stands on the outward hand, away from the spindles.
    const outward = x < stand.heads[0]!.spindles[0]!.x + 1 ? -1 : 1;
    putWhereFree(pen, [
      side(outward, 0),
      pen.lettering(what, name, x, y + half + pen.paper(3.2), { anchor: 'middle' }),
      side(outward, 3.4),
      side(outward, -3.4),
      side(outward === 1 ? -1 : 1, 0),
      ...rowsFrom(pen, y + half + pen.paper(3.2), stand.down).map((row) =>
        pen.lettering(what, name, x, row, { anchor: 'middle' }),
      ),
    ]);
  }
}

/** The line of the throat, in scene coordinates. */
interface ThroatLine {
  readonly x: number;
  readonly width: number;
  readonly y: number;
  /** How far from the fence, in millimetres. */
  readonly throat: number;
}

/** How deep a row can be: a line across the table. */
function drawThroat(pen: Pen, stand: Standing, throat: number): ThroatLine {
  const { x, width } = frameOf(
    pen.shapes.filter(({ kind }) => kind !== 'text'),
    pen.scale,
  );
  const y = stand.down * throat;
  const source = sourceOf(stand.machine, 'throat');
  pen.line({ key: 'throat', class: 'zone', source }, 'phantom', { x, y }, { x: x + width, y });
  pen.take({ x, y, width, height: 0 });
  return { x, width, y, throat };
}

function nameThroat(
  pen: Pen,
  { machine, down }: Standing,
  { x, width, y, throat }: ThroatLine,
  reader: Reader,
  write: (length: number) => string,
): void {
  const words = tell(say.reaches({ throat: write(throat * 1000) }), reader);
  const what = { key: 'throat:name', class: 'label', source: sourceOf(machine, 'throat') } as const;
  // On the outer side of the line first: within it stand the heads.
  const below = y + pen.paper(3.2);
  const over = y - pen.paper(0.9);
  const [outer, inner] = down > 0 ? [below, over] : [over, below];
  putWhereFree(
    pen,
    [outer, inner, ...rowsFrom(pen, outer, down)].flatMap((level) => [
      pen.lettering(what, words, x + width, level, { anchor: 'end' }),
      pen.lettering(what, words, x, level),
    ]),
  );
}

function drawTable(pen: Pen, stand: Standing): void {
  const { machine, down } = stand;
  const { against } = described(machine);
  const { x, width } = frameOf(pen.shapes, pen.scale);
  const bar: Box = { x, width, y: down > 0 ? -pen.paper(BAR) : 0, height: pen.paper(BAR) };
  const source = sourceOf(machine, machine.kind === 'horizontal' || machine.kind === 'cup' ? 'depth' : 'fence');
  const drawn = frameOf(pen.shapes, pen.scale);
  const depth = Math.max(pen.paper(20), down > 0 ? drawn.y + drawn.height : -drawn.y);
  const edge = depth + pen.paper(5);
  const table: Box = { x, width, y: down > 0 ? 0 : -edge, height: edge };
  pen.path({ key: 'table', class: 'table', source: sourceOf(machine) }, 'fine', corners(table));
  pen.path({ key: 'fence', class: 'fence', source }, 'outline', corners(bar), 'paper');
  hatch(pen, 'fence:hatch', bar, pen.paper(2.6));
  nameFence(pen, stand, bar, { key: 'fence:name', class: 'label', source }, sentence(worded('sides', against)));
  const below = around([table, bar, drawn])!;
  const stands = { key: 'operator', class: 'label' } as const;
  pen.text(stands, NAMES.operator, x + width / 2, below.y + below.height + pen.paper(3.8), { anchor: 'middle' });
}

/** On the table along the fence, from its left end on, or a little further out, but never at the other edge. */
function nameFence(pen: Pen, { down }: Standing, bar: Box, what: Parameters<Pen['lettering']>[0], words: string): void {
  const step = pen.paper(2);
  const long = WIDER * pen.paper(textWidth(words, 2.5, false));
  const count = Math.max(1, Math.floor((bar.width - long - pen.paper(2)) / step) + 1);
  const first = down > 0 ? pen.paper(3.6) : -pen.paper(1.2);
  putWhereFree(
    pen,
    [0, 1, 2].flatMap((row) =>
      Array.from({ length: count }, (_, index) =>
        pen.lettering(what, words, bar.x + pen.paper(1) + index * step, first + down * row * pen.paper(3.6)),
      ),
    ),
  );
}
