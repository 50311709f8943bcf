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
  let scale = span / (0.8 * width);
  let drawn = drawAt(stand, reader, scale);
  for (let draft = 1; draft < DRAFTS; draft += 1) {
    const about = (drawn.frame.width - span) / scale;
    const next = span / Math.max(width - about, LEAST_PART * width);
    if (Math.abs(next / scale - 1) < 0.02) break;
    scale = next;
    drawn = drawAt(stand, reader, scale);
  }
  return { scale, ...drawn, described: describe(stand, reader) };
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

function drawAt(stand: Standing, reader: Reader, scale: number): { shapes: readonly Shape[]; frame: Box } {
  const pen = new Pen(stand.machine.name, scale);
  drawRanges(pen, stand, reader);
  drawBed(pen, stand, reader);
  const shapes = pen.painted();
  return { shapes, frame: grow(frameOf(shapes, scale), pen.paper(2)) };
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
