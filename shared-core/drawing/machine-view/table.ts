import { NAMES } from './messages.js';
import { sentence } from '../../words/english.js';
import { described } from '../../machining/described.js';
import { around, boxOf, grow, overlap } from '../scene/boxes.js';
import { textBox, textWidth } from '../scene/lettering.js';
import { wider } from '../scene/wider.js';
import type { Pen } from '../scene/pen.js';
import type { Box, Point } from '../scene/scene.js';
import { BAR, HANDS_CLEAR, STOP_LONG, type Stage } from './stage.js';
import { unionOutline } from './union.js';
import { worded } from '../../words/told.js';

/** Across the fence, in millimetres of lettering, how far a stop stands out into the table. */
const STOP_DEEP = 9;
/** The same for a squaring stop, which the long side of a panel runs along. */
const SQUARE_DEEP = 16;

/**
 * The table, its fence or the plate of a level head, and breaks where it is drawn shortened.
 * @param side on which the figures stand
 */
export function drawTable(stage: Stage, table: Box, side: -1 | 1): void {
  const { pen, out } = stage;
  pen.path({ key: 'table', class: 'table' }, 'fine', corners(table));
  const line = stage.y(0);
  const bar: Box = {
    x: table.x,
    width: table.width,
    y: Math.min(line, line + out * stage.sign(BAR)),
    height: stage.sign(BAR),
  };
  pen.path({ key: 'fence', class: 'fence' }, 'outline', corners(bar), 'paper');
  hatch(pen, 'fence:hatch', bar, stage.sign(2.6));
  pen.takeSolid(bar);
  const name = sentence(worded('sides', described(stage.acted.stroke.setUp.machine).against));
  // On the side where no figures stand.
  const beside = side < 0 ? bar.x + bar.width + stage.p(1.5) : bar.x - stage.p(1.5);
  const anchor = side < 0 ? 'start' : 'end';
  pen.text({ key: 'fence:name', class: 'label' }, name, beside, bar.y + bar.height / 2 + stage.p(1.25), { anchor });
  const whole = around([table, bar])!;
  stage.breaks.x.forEach((at, index) => drawBreak(stage, `break-x-${index}`, 'x', at, whole));
  stage.breaks.y.forEach((at, index) => drawBreak(stage, `break-y-${index}`, 'y', at, whole));
}

/** Oblique hatching of what is cut or solid (ISO 128-3), each line clipped to the box. */
export function hatch(pen: Pen, key: string, { x, y, width, height }: Box, step: number): void {
  const count = Math.floor((width + height) / step);
  for (let index = 1; index <= count; index += 1) {
    const along = index * step;
    const a = along <= width ? { x: x + along, y } : { x: x + width, y: y + along - width };
    const b = along <= height ? { x, y: y + along } : { x: x + along - height, y: y + height };
    pen.line({ key: `${key}:${index}`, class: 'fence' }, 'thin', a, b);
  }
}

/** Two thin lines with a zigzag, and nothing between them. */
function drawBreak(stage: Stage, key: string, axis: 'x' | 'y', at: number, table: Box): void {
  const half = stage.sign(1.5);
  const [low, high] = axis === 'x' ? [table.y, table.y + table.height] : [table.x, table.x + table.width];
  const over = stage.sign(1.5);
  const on = (along: number, across: number): Point =>
    axis === 'x' ? { x: across, y: along } : { x: along, y: across };
  const zigzag = (across: number): Point[] => {
    const middle = (low + high) / 2;
    const [long, wide] = [stage.sign(1.6), stage.sign(1.6)];
    return [
      on(low - over, across),
      on(middle - long, across),
      on(middle - long / 3, across - wide),
      on(middle + long / 3, across + wide),
      on(middle + long, across),
      on(high + over, across),
    ];
  };
  const [a, b] = [zigzag(at - half), zigzag(at + half)];
  stage.pen.path({ key: `${key}:between`, class: 'break' }, 'thin', [...a, ...[...b].reverse()], 'paper');
  stage.pen.path({ key: `${key}:low`, class: 'break' }, 'thin', a, 'none', false);
  stage.pen.path({ key: `${key}:high`, class: 'break' }, 'thin', b, 'none', false);
  stage.pen.takeSolid(boxOf([on(low, at - half), on(high, at + half)], stage.p(1)));
}

/** The stops, each with its face where the replay set it. */
export function drawStops(stage: Stage): void {
  const { pen, out, acted } = stage;
  const deep = stage.sign(described(acted.stroke.setUp.machine).bores === 'ends' ? SQUARE_DEEP : STOP_DEEP);
  const line = stage.y(0);
  for (const stop of acted.layout.stops) {
    const face = stage.x(stop.x);
    const long = stage.sign(STOP_LONG);
    const box = {
      x: stop.side === 'left' ? face - long : face,
      y: out < 0 ? line : line - deep,
      width: long,
      height: deep,
    };
    const state = stop.used ? 'stop-used' : stop.lowered ? 'stop-lowered' : 'stop-standing';
    // A used stop that an index move has brought the panel over is down as well.
    const dashed = stop.lowered;
    pen.path(
      { key: `stop:${stop.name}`, class: state },
      dashed ? 'hidden' : 'outline',
      corners(box),
      stop.used && !dashed ? 'ink' : dashed ? 'none' : 'paper',
    );
    pen.takeSolid(grow(box, stage.p(0.3)));
  }
}

/** Where no hand may be: about every spindle of the heads that are set and about every clamp, on the table. */
export function handsClear(stage: Stage): Box[] {
  const { layout, stroke } = stage.acted;
  const heads = [...new Set(layout.spindles.map(({ head }) => head))];
  const deep = described(stroke.setUp.machine).bores === 'ends' ? -stroke.setUp.depth : 0;
  const boxes = [
    ...heads.map((head) =>
      stage.boxAbout(
        layout.spindles
          .filter((one) => one.head === head)
          .flatMap(({ at }) => [[at[0], at[1]] as const, [at[0], at[1] + deep] as const]),
        HANDS_CLEAR,
      ),
    ),
    ...layout.clamps.map(({ x, y }) => stage.boxAbout([[x, y]], HANDS_CLEAR)),
  ];
  // Beyond the fence there is no table to put a hand on.
  const line = stage.y(0);
  return boxes.map(({ x, y, width, height }) => {
    const top = stage.out < 0 ? Math.max(y, line) : y;
    const bottom = stage.out < 0 ? y + height : Math.min(y + height, line);
    return { x, y: top, width, height: bottom - top };
  });
}

/** The border of the zone, piece by piece, as boxes that lettering had better not cross. */
export function zoneBorders(stage: Stage): Box[] {
  return unionOutline(handsClear(stage)).flatMap((loop) =>
    loop.map((corner, at) => boxOf([corner, loop[(at + 1) % loop.length]!], stage.p(0.6))),
  );
}

/** The zone in which hands get hurt, as one outline where its parts meet. */
export function drawZone(stage: Stage): void {
  unionOutline(handsClear(stage)).forEach((loop, index) => {
    stage.pen.path({ key: `zone-${index}`, class: 'zone' }, 'phantom', loop);
  });
}

/** The words of the zone, along its border on the operator's side; over it where they are longer than it is wide. */
export function nameZone(stage: Stage): void {
  const { pen } = stage;
  const whole = around(handsClear(stage))!;
  const width = stage.p(textWidth(NAMES.keepClear, 2.5, false));
  const rows = [
    whole.y + whole.height - stage.p(1.6),
    whole.y + whole.height + stage.p(3.6),
    ...Array.from({ length: 12 }, (_, index) => whole.y + stage.p(4) + (index / 12) * (whole.height - stage.p(6))),
    whole.y - stage.p(1.2),
  ];
  const steps = Array.from({ length: 41 }, (_, index) => index / 40);
  const places = rows.flatMap((y) =>
    steps.map((part) => ({ x: whole.x + stage.p(1.5) + part * (whole.width - width - stage.p(3)), y })),
  );
  const shapes = places.map(({ x, y }) => pen.lettering({ key: 'zone:name', class: 'label' }, NAMES.keepClear, x, y));
  const free = shapes.filter((shape) => pen.isFree(textBox(shape, pen.scale), 0.5));
  const borders = zoneBorders(stage);
  const clear =
    free.find((shape) => !borders.some((border) => overlap(border, wider(textBox(shape, pen.scale))))) ?? free[0];
  if (clear !== undefined) pen.put(clear);
}

/** A clamp from above: a square foot with its diagonals; dashed where it comes down beside the panel. */
export function drawClamps(stage: Stage): void {
  const half = stage.sign(2.2);
  for (const clamp of stage.acted.layout.clamps) {
    const centre = stage.at(clamp.x, clamp.y);
    const box = { x: centre.x - half, y: centre.y - half, width: 2 * half, height: 2 * half };
    const [a, b, c, d] = corners(box);
    const line = clamp.holds ? 'fine' : 'hidden';
    const key = `clamp:${clamp.name}`;
    stage.pen.path({ key, class: 'clamp' }, line, [a, b, c, d], 'paper');
    stage.pen.line({ key: `${key}:falling`, class: 'clamp' }, line, a, c);
    stage.pen.line({ key: `${key}:rising`, class: 'clamp' }, line, b, d);
    stage.pen.takeSolid(grow(box, stage.p(0.3)));
  }
}

/** Names beside the clamps, where they find room. */
export function nameClamps(stage: Stage): void {
  const { pen } = stage;
  const half = stage.sign(2.2);
  for (const { name, x, y } of stage.acted.layout.clamps) {
    const { x: cx, y: cy } = stage.at(x, y);
    const what = { key: `clamp:${name}:name`, class: 'label' } as const;
    const beside = half + stage.p(1);
    const shapes = [0, 2, 4, 7, 10, 14, 18].flatMap((more) => {
      const off = beside + stage.p(more);
      return [
        pen.lettering(what, name, cx, cy + off + stage.p(2.5), { anchor: 'middle' }),
        pen.lettering(what, name, cx, cy - off, { anchor: 'middle' }),
        pen.lettering(what, name, cx + off, cy + stage.p(1.25)),
        pen.lettering(what, name, cx - off, cy + stage.p(1.25), { anchor: 'end' }),
        pen.lettering(what, name, cx + half, cy + off + stage.p(2.5), { anchor: 'end' }),
        pen.lettering(what, name, cx - half, cy + off + stage.p(2.5)),
        pen.lettering(what, name, cx + half, cy - off, { anchor: 'end' }),
        pen.lettering(what, name, cx - half, cy - off),
        // Far off, a name on its side would seem to belong to something else.
        ...(more > 4
          ? []
          : [
              pen.lettering(what, name, cx - off, cy, { anchor: 'middle', turn: -90 }),
              pen.lettering(what, name, cx + off + stage.p(2.5), cy, { anchor: 'middle', turn: -90 }),
            ]),
      ];
    });
    const free = shapes.find((shape) => pen.isFree(textBox(shape, pen.scale), 0.3));
    if (free !== undefined) pen.put(free);
  }
}

/** The corners of a box, in the order of an outline. */
export function corners({ x, y, width, height }: Box): [Point, Point, Point, Point] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
