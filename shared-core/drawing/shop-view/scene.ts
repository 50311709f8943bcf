import type { Reader } from '../../length/reader.js';
import type { Machine } from '../../shop/model.js';
import { frameOf } from '../scene/extent.js';
import { grow } from '../scene/boxes.js';
import { Pen } from '../scene/pen.js';
import type { Box, Shape } from '../scene/scene.js';
import { drawBed } from './bed.js';
import { tellerTo } from '../../words/message.js';
import { asItIs, joined, type Told } from '../../words/told.js';
import { say } from './messages.js';
import { drawRanges } from './ranges.js';
import { isBoring, standing, type Standing } from './standing.js';

/** A machine as its operator sees it, by the shop file alone. Coordinates as in `MachineScene`; sources as `sourceOf` has them. */
export interface ShopMachineScene {
  readonly scale: number;
  readonly frame: Box;
  readonly shapes: readonly Shape[];
  /** All that the drawing shows, for a reader who cannot see it. */
  readonly described: Told;
}

/** What stands on the table has this part of the pane at least, however much is lettered about it. */
const LEAST_PART = 0.4;
/** Around the drawing, in millimetres of lettering. */
const MARGIN = 2;
/** A drawing that is no more than this too wide fills its pane, in the same. */
const SLACK = 1;
/** Scales that are tried to fill the pane; the second is nearly always right. */
const DRAFTS = 4;

/**
 * The drawing of one machine: fence, spindles at their least and greatest distance from it, each stop with all its range, and
 * clamps, true to one scale, so that a figure that was typed wrongly is seen. null for a machine that bores nothing.
 * @param width of the pane, in millimetres of lettering
 */
export function shopMachineScene(machine: Machine, reader: Reader, width: number): ShopMachineScene | null {
  if (!isBoring(machine)) return null;
  const stand = standing(machine);
  const span = spanOf(stand);
  let drawn = drawAt(stand, reader, span / (0.8 * width), width);
  let best = drawn;
  for (let draft = 1; draft < DRAFTS; draft += 1) {
    const about = (drawn.frame.width - span) / drawn.scale;
    const scale = span / Math.max(width - about, LEAST_PART * width);
    if (Math.abs(scale / drawn.scale - 1) < 0.02) break;
    drawn = drawAt(stand, reader, scale, width);
    // Names that change places can make a larger drawing wider than its pane.
    if (overhang(drawn, width) < overhang(best, width)) best = drawn;
  }
  return { ...best, described: describe(stand, reader) };
}

/** How much a drawing is too wide for its pane, or, below zero, how well it fills it, in millimetres of lettering. */
function overhang({ scale, frame }: Drawn, width: number): number {
  const over = frame.width / scale - width;
  return over > SLACK ? over : -frame.width / scale;
}

/** Width of all that stands on the table, in millimetres. */
function spanOf({ stops, heads, clamps }: Standing): number {
  const xs = [
    ...stops.flatMap(({ from, to, extended }) => [from, to, extended ?? to]),
    ...heads.flatMap(({ spindles }) => spindles.map(({ x }) => x)),
    ...clamps.map(({ x }) => x),
  ];
  return Math.max(Math.max(...xs) - Math.min(...xs), 400);
}

type Drawn = Pick<ShopMachineScene, 'scale' | 'frame' | 'shapes'>;

function drawAt(stand: Standing, reader: Reader, scale: number, width: number): Drawn {
  const pen = new Pen(stand.machine.name, scale);
  const room = pen.paper(width - 2 * MARGIN);
  drawRanges(pen, stand, reader, room);
  drawBed(pen, stand, reader, room);
  const shapes = pen.painted();
  return { scale, shapes, frame: grow(frameOf(shapes, scale), pen.paper(MARGIN)) };
}

function describe({ machine, stops, heads, clamps }: Standing, reader: Reader): Told {
  const ofHeads = heads.map(({ spindles, fromFence }, index) => {
    const some = { head: heads.length === 1 ? null : index + 1, spindles: spindles.length };
    return machine.kind === 'horizontal' ? say.spindlesInPlate(some) : say.spindlesFromFence({ ...some, ...fromFence });
  });
  const sentences = [
    ...ofHeads,
    ...stops.map(({ name, side, range }) => say.stop({ stop: name, side, ...range })),
    ...clamps.map(({ name }) => say.clamp({ clamp: name })),
  ];
  return joined([asItIs(`${machine.name}.`), ...sentences.map(tellerTo(reader))], ' ');
}
