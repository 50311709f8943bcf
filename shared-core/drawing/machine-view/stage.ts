import { described } from '../../machining/described.js';
import { isFace } from '../../boring/surface.js';
import type { Micrometres } from '../../length/units.js';
import type { Step } from '../../machining/set-up.js';
import { around, boxOf } from '../scene/boxes.js';
import { Pen } from '../scene/pen.js';
import type { Box, Point } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import { Interrupted, kept, type Stretch } from './interrupted.js';
import type { Acted } from './strokes.js';

/** Room for the table on the page, in millimetres of lettering. */
export interface TableRoom {
  readonly x: number;
  readonly y: number;
  /** Length of a break, in the same. */
  readonly gaps: { readonly x: number; readonly y: number };
  /** Whether an upright head may be broken where it stands empty beyond the panel. */
  readonly breaksHead: boolean;
}

/** Where all of it is to be read in a pane. */
export const IN_PANE: TableRoom = { x: 128, y: 82, gaps: { x: 18, y: 14 }, breaksHead: false };
/** Where it stands on a page with all that is said of a set-up. */
export const ON_PAGE: TableRoom = { x: 128, y: 42, gaps: { x: 18, y: 8 }, breaksHead: true };
/** A panel up to this long, in millimetres, has no break; on a level head it may be broken behind the end that is bored. */
const SEEN_WHOLE = 1000;
/** The fewest breaks are made that come within this factor of the largest scale to be had. */
const NEARLY = 1.12;
/**
 * How far hands stay from spindles and clamps on the drawing, in millimetres. Common practice, no source; the machine's
 * manual decides.
 */
export const HANDS_CLEAR = 120;

/** What is seen about the last spindle of a head that is broken before it. */
const HEAD_END = 24;

/** Millimetres of lettering from the fence line to the outer side of the fence as it is drawn. */
export const BAR = 4.5;

/** The page of one stroke: where table coordinates come to lie, and the pen that draws there. */
export class Stage {
  readonly pen: Pen;
  /** Page direction across the fence, away from the table: -1 up the page, for a far fence. */
  readonly out: 1 | -1;
  /** Page box of the panel. */
  readonly panel: Box;
  /** Millimetres of machine for one of lettering when the whole is seen; signs keep this size when the reader goes nearer. */
  readonly whole: number;
  readonly breaks: { readonly x: readonly number[]; readonly y: readonly number[] };
  readonly #xs: Interrupted;
  readonly #ys: Interrupted;

  constructor(
    readonly acted: Acted,
    nearer: number,
    room: TableRoom,
  ) {
    const { layout } = acted;
    this.out = layout.fence === 'far' ? -1 : 1;
    const needed = neededPlaces(acted, room);
    const least = Math.min(uncut(needed.x, room.x), uncut(needed.y, room.y));
    const y = interrupted(needed.y, room.y, room.gaps.y, least);
    const x = interrupted(needed.x, room.x, room.gaps.x, y.scale);
    this.whole = Math.max(x.scale, y.scale);
    this.#xs = new Interrupted(x.stretches, room.gaps.x * this.whole);
    this.#ys = new Interrupted(y.stretches, room.gaps.y * this.whole);
    this.breaks = { x: this.#xs.breaks, y: this.#ys.breaks };
    this.pen = new Pen(acted.stroke.panel, this.whole / nearer);
    this.panel = boxOf(
      layout.panel.map(([px, py]) => this.at(px, py)),
      0,
    );
  }

  /** Millimetres of lettering, in scene coordinates. */
  p(length: number): number {
    return this.pen.paper(length);
  }

  /** Size of a sign that does not shrink as the reader goes nearer. */
  sign(length: number): number {
    return length * this.whole;
  }

  /** True where a place stands in a break, so that nothing of it can be shown. */
  inBreak(x: Micrometres, y: Micrometres): boolean {
    return this.#xs.leavesOut(mm(x)) || this.#ys.leavesOut(-mm(y));
  }

  x(x: Micrometres): number {
    return this.#xs.at(mm(x));
  }

  /** Page coordinate of the table's Y, which points away from the operator. */
  y(y: Micrometres): number {
    return this.#ys.at(-mm(y));
  }

  at(x: Micrometres, y: Micrometres): Point {
    return { x: this.x(x), y: this.y(y) };
  }

  /** A point of the panel, in its own frame. */
  onPanel(u: Micrometres, v: Micrometres): Point {
    const [x, y] = this.acted.place(u, v, 0);
    return this.at(x, y);
  }

  /** A box that is so many millimetres larger than these places, on the page. */
  boxAbout(places: readonly (readonly [number, number])[], more: number): Box {
    const corners = places.flatMap(([x, y]) => [
      this.at(x - more * 1000, y - more * 1000),
      this.at(x + more * 1000, y + more * 1000),
    ]);
    return around(corners.map(({ x, y }) => ({ x, y, width: 0, height: 0 })))!;
  }

  /** Everything that stands on the table, on the page. */
  get furniture(): Box {
    const { stops, clamps, spindles } = this.acted.layout;
    const upright = described(this.acted.stroke.setUp.machine).bores === 'faces';
    return around([
      this.panel,
      this.boxAbout(
        spindles.map(({ at }) => [at[0], at[1]] as const),
        upright ? 30 : 20,
      ),
      ...stops.map(({ x }) => {
        const { x: face, y } = this.at(x, 0);
        return { x: face - this.sign(STOP_LONG), y, width: this.sign(2 * STOP_LONG), height: 0 };
      }),
      ...clamps.map(({ x, y }) => this.boxAbout([[x, y]], 30)),
    ])!;
  }
}

/** Along X from a stop's face to its other side, in millimetres of lettering. */
export const STOP_LONG = 3.6;

/** What must be seen on each axis, in millimetres of the page before it is interrupted. */
function neededPlaces(
  { layout, holes, place, stroke, before }: Acted,
  { breaksHead }: TableRoom,
): { x: Stretch[]; y: Stretch[] } {
  const isLevel = described(stroke.setUp.machine).bores === 'ends';
  const x: Stretch[] = [];
  const y: Stretch[] = [];
  const seen = (px: number, py: number, more: number): void => {
    x.push({ from: mm(px) - more, to: mm(px) + more });
    y.push({ from: -mm(py) - more, to: -mm(py) + more });
  };
  for (const [px, py] of layout.panel) seen(px, py, 30);
  // An index move is drawn from where the end lay before.
  const was = before !== null && isSameLay(before.stroke.step, stroke.step) ? before.layout.panel : [];
  const end = was[cornerAt(stroke.step.end)];
  if (end !== undefined) seen(end[0], end[1], 20);
  // A panel that is not long is seen whole.
  const xs = layout.panel.map(([px]) => mm(px));
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  if (right - left <= SEEN_WHOLE) x.push({ from: left, to: right });
  const ys = layout.panel.map(([, py]) => -mm(py));
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  if (!isLevel && bottom - top <= SEEN_WHOLE) y.push({ from: top, to: bottom });
  for (const one of layout.spindles) {
    const [sx, sy] = one.at;
    const isBesidePanel = -mm(sy) < top || -mm(sy) > bottom;
    if (!breaksHead || stroke.setUp.machine.kind !== 'vertical' || one.diameter !== null || !isBesidePanel)
      seen(sx, sy, isLevel ? 40 : HANDS_CLEAR / 2);
    else if (one.spindle === layout.spindles.length - 1) seen(sx, sy, HEAD_END);
  }
  for (const stop of layout.stops) x.push({ from: mm(stop.x) - 40, to: mm(stop.x) + 40 });
  for (const clamp of layout.clamps) seen(clamp.x, clamp.y, 40);
  y.push({ from: -10, to: 10 });
  const { blank } = stroke;
  // What is bored now is seen whole; rows that go on elsewhere may be interrupted.
  for (const { bore, state } of holes) {
    if (state !== 'now') continue;
    const onFace = isFace(bore.face);
    const end = bore.face === 'reference-end' ? 0 : blank.length;
    const floor = bore.face === 'reference-end' ? bore.depth : blank.length - bore.depth;
    for (const v of onFace ? [bore.v] : [end, floor]) {
      const [px, py] = place(bore.u, v, 0);
      seen(px, py, 25);
    }
  }
  return { x, y };
}

/** The panel lies as before, but for an index move. */
export const isSameLay = (a: Step, b: Step): boolean =>
  a.edge === b.edge && a.end === b.end && a.down === b.down && a.stop === b.stop;

const CORNERS: Readonly<Record<Step['end'], number>> = { 'reference-end': 0, 'far-end': 1, front: 0, back: 2 };

/** A corner of the panel, by its index in the layout, that lies where this end or edge does. */
export const cornerAt = (end: Step['end']): number => CORNERS[end];

const uncut = (needed: readonly Stretch[], room: number): number =>
  (Math.max(...needed.map(({ to }) => to)) - Math.min(...needed.map(({ from }) => from))) / room;

/**
 * The stretches to show, and the scale at which they and their breaks fit the room: cut at the longest empty places, and no
 * oftener than is worth it.
 * @param enough the scale that the other axis asks for anyway
 */
function interrupted(
  needed: readonly Stretch[],
  room: number,
  gap: number,
  enough: number,
): { stretches: readonly Stretch[]; scale: number } {
  const merged = kept(needed, 0);
  const gaps = merged.slice(1).map(({ from }, index) => from - merged[index]!.to);
  const choices = [Infinity, ...[...gaps].sort((a, b) => b - a)].map((least) => {
    const stretches = kept(needed, least);
    const left = Math.max(room - gap * (stretches.length - 1), room / 3);
    return { stretches, scale: Math.max(Interrupted.seen(stretches) / left, enough) };
  });
  const best = Math.min(...choices.map(({ scale }) => scale));
  return choices.find(({ scale }) => scale <= best * NEARLY)!;
}
