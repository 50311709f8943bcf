import type { Reader } from '../../length/reader.js';
import { boxOf } from '../scene/boxes.js';
import { figure } from '../../length/show.js';
import { textWidth } from '../scene/lettering.js';
import type { Point } from '../scene/scene.js';
import { stopCalled } from '../words.js';
import { BAR, type Stage } from './stage.js';

const FIRST = 6;
const STEP = 5.4;

/** The order of the lanes beyond the fence: on each hand the nearest stop lowest. */
function laneOf(stage: Stage): { readonly name: string; readonly lane: number }[] {
  const { stops } = stage.acted.stroke.setUp;
  return (['left', 'right'] as const).flatMap((side) =>
    stops
      .filter((stop) => stop.side === side)
      .sort((a, b) => a.position - b.position)
      .map(({ name }, lane) => ({ name, lane })),
  );
}

/** How far beyond the fence line the dimensions of the stops reach, in page millimetres. */
export function lanesReach(stage: Stage): number {
  const lanes = Math.max(0, ...laneOf(stage).map(({ lane }) => lane + 1));
  return stage.sign(BAR) + stage.p(FIRST + STEP * (lanes - 1) + (lanes > 0 ? 3 : -3));
}

/**
 * Where each stop is set, as the shop calls it: from the spindle that it is counted from to its face (ISO 129-1, the
 * origin a small circle, one arrow), each stop in a lane of its own, with its name before the figure.
 */
export function drawStopPositions(stage: Stage, reader: Reader): void {
  const { pen, out, acted } = stage;
  const { layout, stroke } = acted;
  const last = Math.max(...layout.spindles.map(({ spindle }) => spindle));
  const origin = (side: 'left' | 'right'): number =>
    stage.x(layout.spindles.find(({ spindle }) => spindle === (side === 'left' || isOneLine(stage) ? 0 : last))!.at[0]);
  const barEnd = stage.y(0) + out * stage.sign(BAR);
  for (const { name, lane } of laneOf(stage)) {
    const stop = stroke.setUp.stops.find((one) => one.name === name)!;
    const standing = layout.stops.find((one) => one.name === name)!;
    const sign = stop.side === 'left' ? -1 : 1;
    const [from, face] = [origin(stop.side), stage.x(standing.x)];
    const y = barEnd + out * stage.p(FIRST + STEP * lane);
    const key = `position:${name}`;
    const text = `${stopCalled(name)}  ${figure(stop.position, reader)}`;
    const width = stage.p(textWidth(text, 2.5, standing.used));
    const length = Math.abs(face - from);
    const inside = length >= width + stage.p(7);
    const shelf = inside ? face : face + sign * (width + stage.p(4.5));
    const ruled = (part: string, points: readonly [Point, Point]): void => {
      pen.path({ key: `${key}:${part}`, class: 'dimension' }, 'thin', points, 'none', false);
      pen.take(boxOf(points, stage.p(0.2)));
    };
    ruled('extension', [
      { x: face, y: barEnd + out * stage.p(0.8) },
      { x: face, y: y + out * stage.p(1.2) },
    ]);
    ruled('line', [
      { x: from, y },
      { x: shelf, y },
    ]);
    pen.add({
      key: `${key}:origin`,
      class: 'dimension',
      kind: 'circle',
      panel: pen.panel,
      line: 'thin',
      cx: from,
      cy: y,
      r: stage.p(0.7),
    });
    if (inside || length > stage.p(4)) arrow(stage, `${key}:head`, { x: face, y }, sign);
    else if (length > stage.p(0.4)) arrow(stage, `${key}:head`, { x: face, y }, -sign);
    pen.text({ key, class: 'label' }, text, inside ? (from + face) / 2 : face + sign * stage.p(3.6), y - stage.p(0.8), {
      anchor: inside ? 'middle' : sign < 0 ? 'end' : 'start',
      strong: standing.used,
    });
  }
}

const isOneLine = (stage: Stage): boolean => {
  const { kind } = stage.acted.stroke.setUp.machine;
  return kind === 'vertical' || kind === 'cup';
};

/** Narrow filled arrow head (ISO 129-1) along X, its tip at the point. */
function arrow(stage: Stage, key: string, tip: Point, sign: number): void {
  const back = tip.x - sign * stage.p(2.2);
  const half = stage.p(0.4);
  stage.pen.path(
    { key, class: 'dimension' },
    'thin',
    [tip, { x: back, y: tip.y - half }, { x: back, y: tip.y + half }],
    'ink',
  );
}
