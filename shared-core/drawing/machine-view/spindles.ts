import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { around, boxOf, contains, grow } from '../scene/boxes.js';
import { runningDimension, type Lane } from '../scene/dimensions.js';
import { aboutBore } from '../about-bore.js';
import type { Drawn } from '../drawn.js';
import { figure, nominalFigure } from '../../length/show.js';
import { described } from '../../machining/described.js';
import { textWidth } from '../scene/lettering.js';
import type { Box, Point } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import { tell } from '../../words/message.js';
import { say } from './messages.js';
import type { SceneSpindle } from './scene.js';
import { BAR, type Stage } from './stage.js';
import type { Working } from './strokes.js';
import { corners } from './table.js';
import { runsOfNumbers } from '../../words/english.js';
import { comeWords, spindleName } from './words.js';

/** Radius of the ring that marks a loaded spindle, in millimetres beyond the bit; the pitch leaves room for it. */
const RING = 6;
/** Half a side of the square that marks an empty one. */
const EMPTY = 4;

const spindleKey = ({ head, spindle }: { readonly head: number; readonly spindle: number }): string =>
  `spindle:${head}:${spindle}`;

/** A loaded spindle: a ring with the bit in it. An empty one: a small open square. Dashed where the panel lies over it. */
function drawSpindle(stage: Stage, key: string, { x, y }: Point, diameter: Micrometres | null): void {
  const { pen, panel, acted } = stage;
  const under =
    described(acted.stroke.setUp.machine).bitsCome === 'up' && contains(panel, { x, y, width: 0, height: 0 });
  if (diameter === null) {
    const box = { x: x - EMPTY, y: y - EMPTY, width: 2 * EMPTY, height: 2 * EMPTY };
    pen.path({ key, class: 'spindle-empty' }, under ? 'hidden' : 'thin', corners(box), under ? 'none' : 'paper');
    pen.take(box);
    return;
  }
  const r = mm(diameter) / 2;
  const ring = r + RING;
  pen.add({
    key,
    class: 'spindle-loaded',
    kind: 'circle',
    panel: pen.panel,
    line: under ? 'hidden' : 'outline',
    cx: x,
    cy: y,
    r: ring,
  });
  pen.add({ key: `${key}:bit`, class: 'bit', kind: 'circle', panel: pen.panel, line: 'thin', cx: x, cy: y, r });
  pen.takeSolid(grow({ x: x - ring, y: y - ring, width: 2 * ring, height: 2 * ring }, stage.p(0.2)));
}

/** The spindles of the heads that are set, as the operator looks down on them, with the outline of each head. */
export function drawHeads(stage: Stage): void {
  const { layout } = stage.acted;
  const heads = [...new Set(layout.spindles.map(({ head }) => head))];
  for (const head of heads) {
    const those = layout.spindles.filter((one) => one.head === head);
    const box = grow(around(those.map(({ at }) => ({ ...stage.at(at[0], at[1]), width: 0, height: 0 })))!, HEAD_HALF);
    stage.pen.path({ key: `head:${head}`, class: 'head' }, 'phantom', corners(box));
    for (const one of those.filter(({ at }) => !stage.inBreak(at[0], at[1])))
      drawSpindle(stage, spindleKey(one), stage.at(one.at[0], one.at[1]), one.diameter);
  }
}
const HEAD_HALF = 22;

/** The line through the spindles of an upright head, and beyond it to where positions are counted from. */
export function drawSpindleLines(stage: Stage, reach: number): void {
  const { pen, out, acted } = stage;
  const { layout, stroke } = acted;
  const { kind } = stroke.setUp.machine;
  const beyond = stage.y(0) + out * reach;
  const of = (spindle: number) => layout.spindles.filter((one) => one.spindle === spindle);
  const last = Math.max(...layout.spindles.map(({ spindle }) => spindle));
  const over = stage.p(2);
  const centre = (key: string, a: Point, b: Point): void => {
    pen.line({ key, class: 'centre-line' }, 'centre', a, b);
    pen.take(boxOf([a, b], stage.p(0.3)));
  };
  if (kind === 'vertical' || kind === 'cup') {
    const ys = layout.spindles.map(({ at }) => stage.y(at[1]));
    const inner = out < 0 ? Math.max(...ys) : Math.min(...ys);
    centre('line:head', { x: stage.x(0), y: beyond }, { x: stage.x(0), y: inner - out * (HEAD_HALF + over) });
    return;
  }
  const heads = [...new Set(layout.spindles.map(({ head }) => head))];
  if (kind === 'line') {
    for (const head of heads) {
      const xs = layout.spindles.filter((one) => one.head === head).map(({ at }) => stage.x(at[0]));
      const y = stage.y(layout.spindles.find((one) => one.head === head)!.at[1]);
      centre(
        `line:head-${head}`,
        { x: Math.min(...xs) - HEAD_HALF - over, y },
        { x: Math.max(...xs) + HEAD_HALF + over, y },
      );
    }
  }
  // Stops are counted from the first and from the last spindle.
  for (const spindle of new Set([0, last])) {
    const ys = of(spindle).map(({ at }) => stage.y(at[1]));
    const x = stage.x(of(spindle)[0]!.at[0]);
    const inner =
      kind === 'line' ? (out < 0 ? Math.max(...ys) : Math.min(...ys)) - out * (HEAD_HALF + over) : stage.y(0);
    if (stroke.setUp.stops.some(({ side }) => (side === 'left') === (spindle === 0)))
      centre(`line:spindle-${spindle}`, { x, y: beyond }, { x, y: inner });
  }
}

export interface Tag {
  readonly key: string;
  readonly text: string;
  /** The spindle that its line leads to. */
  readonly at: Point;
  /** From the fence. */
  readonly from: Micrometres;
}

/** What stands beside the spindles of an upright head: which are loaded, with what, and how far from the fence. */
export function spindleTags(stage: Stage, reader: Reader, side: -1 | 1): Tag[] {
  const { layout, stroke } = stage.acted;
  const loaded = layout.spindles.filter(({ diameter }) => diameter !== null);
  const away = ({ at }: { readonly at: readonly number[] }): Micrometres => Math.abs(at[1]!);
  const bits = (diameter: Micrometres): string => `Ø ${nominalFigure(diameter, reader)}`;
  const { kind } = stroke.setUp.machine;
  if (kind === 'cup') {
    return loaded.map((one) => ({
      key: 'tag',
      text: bits(one.diameter!),
      at: stage.at(one.at[0], one.at[1]),
      from: away(one),
    }));
  }
  if (kind === 'vertical') {
    return loaded.map((one) => ({
      key: `tag:${one.spindle}`,
      text: `${one.spindle + 1}  ${bits(one.diameter!)}`,
      at: stage.at(one.at[0], one.at[1]),
      from: away(one),
    }));
  }
  const heads = [...new Set(loaded.map(({ head }) => head))];
  return heads.map((head) => {
    const those = loaded.filter((one) => one.head === head);
    const outer = those.reduce((far, one) => (side * (one.at[0] - far.at[0]) > 0 ? one : far));
    const parts = [...new Set(those.map(({ diameter }) => diameter!))].map(
      (diameter) =>
        `${runsOfNumbers(those.filter((one) => one.diameter === diameter).map(({ spindle }) => spindle + 1))}  ${bits(diameter)}`,
    );
    return {
      key: `tag:head-${head}`,
      text: parts.join(', '),
      at: stage.at(outer.at[0], outer.at[1]),
      from: away(outer),
    };
  });
}

/** How wide the column of tags is, in millimetres of the drawing. */
export const tagRoom = (stage: Stage, tags: readonly Tag[]): number =>
  Math.max(0, ...tags.map(({ text }) => stage.p(textWidth(text, 2.5, false)))) + stage.p(3);

/** Running dimensions from the fence along one side of the table, each line carrying the tag of its spindle. */
export function drawTags(stage: Stage, tags: readonly Tag[], table: Box, side: -1 | 1, reader: Reader): void {
  const { pen } = stage;
  const edge = side < 0 ? table.x : table.x + table.width;
  const lane: Lane = { axis: 'y', line: edge + side * stage.p(4), out: side };
  const ordered = [...tags].sort((a, b) => a.from - b.from);
  // On the line; under it where the fence is too near.
  const baseOf = ({ at: { y } }: Tag): number => {
    const above = stage.out > 0 || Math.abs(y - stage.y(0)) > stage.p(4);
    return y + (above ? -stage.p(0.7) : stage.p(3.2));
  };
  // Tags whose lettering would stand too near that of a neighbour are said once, in the row of the first.
  const rows: { first: Tag; y: number; texts: string[] }[] = [];
  for (const tag of ordered) {
    const [row, y] = [rows.at(-1), baseOf(tag)];
    if (row !== undefined && Math.abs(y - row.y) < stage.p(3.3)) row.texts.push(tag.text);
    else rows.push({ first: tag, y, texts: [tag.text] });
  }
  for (const { first, y, texts } of rows) {
    const x = edge - side * stage.p(1);
    pen.text({ key: first.key, class: 'label' }, texts.join(', '), x, y, { anchor: side < 0 ? 'start' : 'end' });
  }
  const reach = mm(Math.max(0, ...tags.map(({ from }) => from)));
  if (reach === 0) return;
  runningDimension(
    pen,
    'from-fence',
    lane,
    { at: stage.y(0), text: '0', from: edge + side * stage.p(1) },
    ordered.map(({ at, from }) => ({ at: at.y, text: figure(from, reader), from: at.x + side * stage.sign(BAR / 2) })),
  );
}

/** Every spindle in words. */
export function aboutSpindles(stage: Stage, drawn: Drawn): SceneSpindle[] {
  const { layout, stroke, working } = stage.acted;
  const panel = drawn.carcass.panels.find(({ key }) => key === stroke.panel)!;
  const made = new Map(working.map((one): [string, Working] => [spindleKey(one), one]));
  return layout.spindles.map(({ head, spindle, diameter }) => {
    const key = spindleKey({ head, spindle });
    const name = spindleName(stroke.setUp, { head, spindle });
    const bore = made.get(key)?.makes ?? null;
    const about =
      diameter === null
        ? say.spindleEmpty({ spindle: name })
        : bore === null
          ? say.spindleBeside({ spindle: name, diameter, comes: comeWords(stroke.setUp) })
          : say.spindleBores({
              spindle: name,
              diameter,
              bore: aboutBore(drawn.carcass, drawn.boring, panel, bore, drawn.reader),
            });
    return { key, head, spindle, diameter, about: tell(about, drawn.reader) };
  });
}
