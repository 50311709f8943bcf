import type { Reader } from '../../length/reader.js';
import { inOneNotation } from '../../length/show.js';
import { around } from '../scene/boxes.js';
import { textBox, textWidth } from '../scene/lettering.js';
import type { Pen } from '../scene/pen.js';
import type { Box, TextShape } from '../scene/scene.js';
import { BAR, STOP_LONG } from '../machine-view/stage.js';
import { corners } from '../machine-view/table.js';
import { tell } from '../../words/message.js';
import type { Told } from '../../words/told.js';
import { say } from './messages.js';
import { sourceOf } from './source-of.js';
import { WIDER, wider } from '../scene/wider.js';
import type { RangedStop, Standing } from './standing.js';

/** Lanes beyond the fence, in millimetres of lettering: to the first, from one to the next, and how high a range is. */
const FIRST = 3.4;
const STEP = 6.4;
const HIGH = 1.7;
/** More stops than this on one fence stand over each other. */
const LANES = 16;
/** How far a stop stands out into the table, in the same. */
const DEEP = 6;
/** Names that take more of the pane than this on both sides would leave too little for the table. */
const BESIDE_PART = 0.2;

/**
 * The stops: each face at the nearest and the furthest place of its range, and beyond the fence a lane with all the range, its
 * name and its figures. The nearest stop is lowest.
 * @param width of the pane, in scene coordinates
 */
export function drawRanges(pen: Pen, stand: Standing, reader: Reader, width: number): void {
  const { stops } = stand;
  const write = inOneNotation(
    stops.flatMap(({ range }) => [range.min, range.max]),
    reader,
  );
  const inOrder = [...stops].sort((a, b) => a.range.min - b.range.min || a.range.max - b.range.max);
  for (const stop of inOrder) drawFaces(pen, stand, stop);
  for (const stop of inOrder) drawLane(pen, stand, stop, rangeWords(stop, write, reader), width);
}

function rangeWords(
  { name, range: { min, max } }: RangedStop,
  write: (length: number) => string,
  reader: Reader,
): Told {
  return tell(say.stopRange({ stop: name, min: write(min), max: write(max) }), reader);
}

/** What is drawn of a stop leads to its line. */
const sourceOfStop = ({ machine }: Standing, { name }: RangedStop): string => sourceOf(machine, 'stops', name);

/** The stop itself where it can be set nearest and furthest, and where it stands when a job begins. */
function drawFaces(pen: Pen, stand: Standing, stop: RangedStop): void {
  const source = sourceOfStop(stand, stop);
  const long = pen.paper(STOP_LONG / 2);
  const deep = pen.paper(DEEP);
  const box = (face: number): Box => ({
    x: stop.side === 'left' ? face - long : face,
    y: stand.down > 0 ? 0 : -deep,
    width: long,
    height: deep,
  });
  const key = `stop:${stop.name}`;
  pen.path({ key: `${key}:most`, class: 'stop-lowered', source }, 'hidden', corners(box(stop.to)), 'none');
  pen.path({ key, class: 'stop-standing', source }, 'outline', corners(box(stop.from)), 'paper');
  for (const face of [stop.from, stop.to]) pen.takeSolid(box(face));
  if (stop.stands !== null)
    pen.path({ key: `${key}:stands`, class: 'stop-used', source }, 'outline', corners(box(stop.stands)), 'ink');
}

/** The range in the first lane where it and its name stand clear of those that are drawn already. */
function drawLane(pen: Pen, stand: Standing, stop: RangedStop, text: string, width: number): void {
  const { down } = stand;
  const key = `range:${stop.name}`;
  const source = sourceOfStop(stand, stop);
  const lanes = Array.from({ length: LANES }, (_, lane) => -down * pen.paper(BAR + FIRST + STEP * lane));
  const laid = lanes.map((middle) => ({ middle, ...laidIn(pen, stand, stop, middle, text, width) }));
  const { middle, range, extended, name } = laid.find(({ room }) => pen.isFree(room, 0.5)) ?? laid.at(-1)!;
  pen.path({ key, class: 'stop-standing', source }, 'outline', corners(range), 'paper');
  pen.takeSolid(range);
  if (extended !== null) {
    pen.path({ key: `${key}:extended`, class: 'stop-lowered', source }, 'hidden', corners(extended), 'none');
    pen.takeSolid(extended);
  }
  for (const [end, x] of [
    ['from', stop.from],
    ['to', stop.to],
  ] as const) {
    const at = { key: `${key}:${end}`, class: 'dimension' } as const;
    pen.line(at, 'thin', { x, y: -down * pen.paper(BAR) }, { x, y: middle });
  }
  pen.put(name);
  pen.takeSolid(wider(textBox(name, pen.scale)));
}

interface Laid {
  readonly range: Box;
  readonly extended: Box | null;
  readonly name: TextShape;
  /** All of it. */
  readonly room: Box;
}

/**
 * A range at one level: its name on the side away from the fence, or, where it is longer than the range, behind it on the outward
 * side. In a narrow pane it runs outwards from the inner end of the range, so that it stays on the hand of its stop; inwards only
 * where there is no room for that.
 */
function laidIn(pen: Pen, stand: Standing, stop: RangedStop, middle: number, text: string, width: number): Laid {
  const half = pen.paper(HIGH / 2);
  const bar = (from: number, to: number): Box => ({
    x: Math.min(from, to),
    y: middle - half,
    width: Math.max(Math.abs(to - from), pen.paper(0.3)),
    height: 2 * half,
  });
  const range = bar(stop.from, stop.to);
  const extended = stop.extended === null ? null : bar(stop.to, stop.extended);
  const what = { key: `range:${stop.name}:name`, class: 'label', source: sourceOfStop(stand, stop) } as const;
  const sign = stop.side === 'left' ? -1 : 1;
  const beyond = (stop.extended ?? stop.to) + sign * pen.paper(1.2);
  const long = pen.paper(textWidth(text, 2.5, false));
  const away = stand.down > 0 ? middle - half - pen.paper(0.7) : middle + half + pen.paper(3.2);
  const [inward, outward] = sign < 0 ? (['start', 'end'] as const) : (['end', 'start'] as const);
  const ends = stand.stops.flatMap(({ side, to, extended: more }) => (side === stop.side ? [more ?? to] : []));
  const outwards = Math.max(...ends.map((end) => Math.abs(end - stop.from)));
  const name =
    long <= Math.abs(stop.to - stop.from)
      ? pen.lettering(what, text, (stop.from + stop.to) / 2, away, { anchor: 'middle' })
      : long > BESIDE_PART * width
        ? WIDER * long <= outwards
          ? pen.lettering(what, text, stop.from, away, { anchor: outward })
          : pen.lettering(what, text, stop.to, away, { anchor: inward })
        : pen.lettering(what, text, beyond, middle + pen.paper(0.9), { anchor: outward });
  const room = around([range, ...(extended === null ? [] : [extended]), wider(textBox(name, pen.scale))])!;
  return { range, extended, name, room };
}
