import { textWidth } from './lettering.js';
import { boxOf } from './boxes.js';
import type { Pen } from './pen.js';
import type { Point } from './scene.js';
import { spread } from './spread.js';
import { WIDER } from './wider.js';

const HEIGHT = 2.5;
const LABEL_GAP = 3.8;
const JOG = 3;
/** From the middle of a figure to a line that is not to run through it. */
const CLEAR = 2;

/** A direction on the page that dimensions are counted along, and the place across it where they stand. */
export interface Lane {
  /** 'x': counted along the page's x, the lane lies at a y; 'y': the other way. */
  readonly axis: 'x' | 'y';
  /** Where the dimension line lies, across the axis. */
  readonly line: number;
  /** Sign of the direction that leads away from the panel. */
  readonly out: 1 | -1;
}

const point = ({ axis }: Lane, along: number, across: number): Point =>
  axis === 'x' ? { x: along, y: across } : { x: across, y: along };

/** A line that lettering keeps off. */
function ruled(pen: Pen, key: string, points: readonly [Point, Point, ...Point[]]): void {
  pen.path({ key, class: 'dimension' }, 'thin', points, 'none', false);
  points.slice(1).forEach((to, index) => pen.take(boxOf([points[index]!, to], pen.paper(0.2))));
}

/** Narrow filled arrow head (ISO 129-1), `tip` on the line, pointing along the axis in `sign`'s direction. */
function arrow(pen: Pen, key: string, lane: Lane, tip: number, sign: number): void {
  const back = tip - sign * pen.paper(2.2);
  const half = pen.paper(0.4);
  pen.path(
    { key, class: 'dimension' },
    'thin',
    [point(lane, tip, lane.line), point(lane, back, lane.line - half), point(lane, back, lane.line + half)],
    'ink',
  );
}

/** A short oblique stroke in place of an arrow head where there is no room for one (ISO 129-1). */
function stroke(pen: Pen, key: string, lane: Lane, at: number): void {
  const r = pen.paper(0.8);
  const a = lane.axis === 'x' ? { x: at - r, y: lane.line + r } : { x: lane.line - r, y: at + r };
  const b = lane.axis === 'x' ? { x: at + r, y: lane.line - r } : { x: lane.line + r, y: at - r };
  pen.line({ key, class: 'dimension' }, 'thin', a, b);
}

export interface Feature {
  /** Page coordinate along the axis. */
  readonly at: number;
  readonly text: string;
  /** Page coordinate across the axis where its extension line begins. */
  readonly from: number;
}

/**
 * Running dimensions from one origin (ISO 129-1, superimposed running dimensioning): one line, a circle at the origin, and
 * each figure at the end of its extension line. Figures that would touch are moved apart and led back by a bent line.
 * @param crossing where along the axis, beyond every feature, the extension line of another dimension runs through the lane:
 * no figure stands on it
 * Gives how far the figures reach beyond the lane, in scene units.
 */
export function runningDimension(
  pen: Pen,
  key: string,
  lane: Lane,
  origin: Feature,
  features: readonly Feature[],
  crossing: number | null = null,
): number {
  if (features.length === 0) return 0;
  const all = [origin, ...features].sort((a, b) => a.at - b.at);
  const gap = pen.paper(LABEL_GAP);
  const apart = spread(
    all.map(({ at }) => at),
    gap,
  );
  const sign = features[0]!.at > origin.at ? 1 : -1;
  const places = crossing === null ? apart : within(crossing - sign * pen.paper(CLEAR), apart, gap, sign);
  const ends = lane.line + lane.out * pen.paper(JOG);
  const last = features.reduce((far, { at }) => (sign * (at - far) > 0 ? at : far), origin.at);
  ruled(pen, `${key}:line`, [point(lane, origin.at, lane.line), point(lane, last, lane.line)]);
  pen.add({
    key: `${key}:origin`,
    class: 'dimension',
    kind: 'circle',
    panel: pen.panel,
    line: 'thin',
    ...(lane.axis === 'x' ? { cx: origin.at, cy: lane.line } : { cx: lane.line, cy: origin.at }),
    r: pen.paper(0.7),
  });
  const inOrder = sign > 0 ? all : [...all].reverse();
  inOrder.forEach((feature, index) => {
    const before = inOrder[index - 1];
    if (before === undefined) return;
    const name = `${key}:${feature.text}`;
    if (Math.abs(feature.at - before.at) >= pen.paper(3)) arrow(pen, `${name}:head`, lane, feature.at, sign);
    else stroke(pen, `${name}:head`, lane, feature.at);
  });
  let reach = 0;
  all.forEach((feature, index) => {
    const place = places[index]!;
    const name = `${key}:${feature.text}`;
    ruled(pen, `${name}:extension`, [
      point(lane, feature.at, feature.from),
      point(lane, feature.at, lane.line + lane.out * pen.paper(0.8)),
      point(lane, place, ends - lane.out * pen.paper(0.5)),
    ]);
    const half = pen.paper(HEIGHT / 2);
    const label = { key: `${name}:figure`, class: 'dimension' } as const;
    if (lane.axis === 'x')
      pen.text(label, feature.text, place + half, ends, { turn: -90, anchor: lane.out > 0 ? 'end' : 'start' });
    else pen.text(label, feature.text, ends, place + half, { anchor: lane.out > 0 ? 'start' : 'end' });
    reach = Math.max(reach, pen.paper(JOG + WIDER * textWidth(feature.text, HEIGHT, false)));
  });
  return reach;
}

/**
 * Places, ascending and a gap apart, of which none goes further than `end` in the direction of `sign`: those beyond it are moved
 * back, and others before them.
 */
export function within(end: number, places: readonly number[], gap: number, sign: number): readonly number[] {
  const furthestFirst = sign > 0 ? [...places].reverse() : places;
  let bound = end;
  const moved = furthestFirst.map((place) => {
    const at = sign * (place - bound) > 0 ? bound : place;
    bound = at - sign * gap;
    return at;
  });
  return sign > 0 ? moved.reverse() : moved;
}

/**
 * One dimension between two places, arrows at both ends and the figure along the line. `avoid` are places along the axis
 * where other lines cross: the figure is put into the widest room between them.
 */
export function spanDimension(
  pen: Pen,
  key: string,
  lane: Lane,
  a: Feature,
  b: Feature,
  text: string,
  avoid: readonly number[] = [],
): void {
  const [low, high] = a.at <= b.at ? [a, b] : [b, a];
  for (const { at, from, text: name } of [low, high]) {
    ruled(pen, `${key}:${name}:extension`, [
      point(lane, at, from),
      point(lane, at, lane.line + lane.out * pen.paper(1.2)),
    ]);
  }
  ruled(pen, `${key}:line`, [point(lane, low.at, lane.line), point(lane, high.at, lane.line)]);
  arrow(pen, `${key}:low`, lane, low.at, -1);
  arrow(pen, `${key}:high`, lane, high.at, 1);
  const place = widestRoom(low.at, high.at, avoid, pen.paper(textWidth(text, HEIGHT, false)));
  const above = lane.line - pen.paper(0.8);
  const label = { key: `${key}:figure`, class: 'dimension' } as const;
  if (lane.axis === 'x') pen.text(label, text, place, above, { anchor: 'middle' });
  else pen.text(label, text, above, place, { anchor: 'middle', turn: -90 });
}

/** Middle of the room between `low` and `high`, clear of `avoid`, that holds `width` and is nearest to the middle; else of the widest. */
export function widestRoom(low: number, high: number, avoid: readonly number[], width: number): number {
  const middle = (low + high) / 2;
  const cuts = [low, ...avoid.filter((at) => at > low && at < high).sort((a, b) => a - b), high];
  const rooms = cuts.slice(1).map((to, index) => ({ from: cuts[index]!, to }));
  const fitting = rooms.filter(({ from, to }) => to - from >= width * 1.1);
  if (fitting.length > 0) {
    const places = fitting.map(({ from, to }) => Math.min(Math.max(middle, from + width * 0.55), to - width * 0.55));
    return places.reduce((best, at) => (Math.abs(at - middle) < Math.abs(best - middle) ? at : best));
  }
  const widest = rooms.reduce((best, room) => (room.to - room.from > best.to - best.from ? room : best));
  return (widest.from + widest.to) / 2;
}
