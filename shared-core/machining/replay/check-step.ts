import type { Message } from '../../words/message.js';
import type { Span } from '../../schema/schema.js';
import type { Blank, SetUp, Step } from '../set-up.js';
import { lieOf, type Hole, type Stroke } from './bore.js';
import { isInTheWay } from './in-the-way.js';
import { toTable } from './lie.js';
import type { Solid } from './solid.js';
import { NOTHING } from './stray.js';
import { say } from './messages.js';
import { outOfSpan } from './span.js';

/** What keeps a blank from being taken by the machine at all. */
export function checkBlank({ machine }: SetUp, blank: Blank): Message[] {
  return (['length', 'width', 'thickness'] as const).flatMap((measure) => {
    const span: Span | null = machine.panel[measure];
    return span !== null && outOfSpan(blank[measure], span)
      ? [say.panelOutOfRange({ machine: machine.name, measure, value: blank[measure], range: span })]
      : [];
  });
}

/** What keeps the spindles from being loaded, or the panel from being moved along, as the step says. */
export function checkStep(setUp: SetUp, step: Step): Message[] {
  return [...checkSpindles(setUp, step), ...checkMove(setUp, step)];
}

function checkSpindles({ machine, fence }: SetUp, step: Step): Message[] {
  const spindles = machine.kind === 'cup' ? 1 : machine.spindles;
  const heads = machine.kind === 'line' ? fence.length : 1;
  const taken = new Set<string>();
  const problems = step.spindles.length === 0 ? [say.noSpindle()] : [];
  for (const { head, spindle, diameter } of step.spindles) {
    const told = { spindle: spindle + 1, head: heads > 1 ? head + 1 : null };
    const place = `${head}/${spindle}`;
    if (!isBelow(head, heads)) problems.push(say.headNotSet({ machine: machine.name, head: head + 1, heads }));
    else if (!isBelow(spindle, spindles))
      problems.push(say.spindleMissing({ machine: machine.name, spindle: spindle + 1, spindles }));
    else if (taken.has(place)) problems.push(say.twoBits(told));
    if (!(diameter > 0)) problems.push(say.bitImpossible({ ...told, diameter }));
    taken.add(place);
  }
  return problems;
}

const isBelow = (index: number, count: number): boolean => Number.isInteger(index) && index >= 0 && index < count;

function checkMove({ machine }: SetUp, step: Step): Message[] {
  if (step.moved === 0) return [];
  if (machine.kind !== 'line') return [say.moveNotOnLineDrill({ machine: machine.name })];
  if (machine.indexPins === 'none') return [say.moveWithoutPins({ machine: machine.name, moved: step.moved })];
  const problems: Message[] = [];
  if (step.moved % machine.pitch !== 0) {
    problems.push(say.moveOffPitch({ moved: step.moved, pitch: machine.pitch }));
  }
  if (machine.indexRange !== null && Math.abs(step.moved) > machine.indexRange) {
    problems.push(say.movePastRange({ machine: machine.name, moved: step.moved, most: machine.indexRange }));
  }
  return problems;
}

/** What a stroke would do that no bore is: miss the panel, come out where it must not, or run the panel into a stop. */
export function checkStroke(stroke: Stroke, solid: Solid, holes: readonly Hole[]): Message[] {
  return [
    ...checkStopsInTheWay(stroke, solid),
    ...(holes.length === 0 ? [say.besidePanel()] : []),
    ...holes.flatMap((hole) => checkHole(stroke.setUp, solid, hole)),
  ];
}

const isInFace = ({ face }: Hole): boolean => face === 'inside' || face === 'outside';

/** How far the surface that a hole is in reaches, along u and v of the hole, and how deep the wood is behind it. */
function extentOf({ width, length, thickness }: Solid, hole: Hole): Readonly<Record<'u' | 'v' | 'deep', number>> {
  return isInFace(hole) ? { u: width, v: length, deep: thickness } : { u: width, v: thickness, deep: length };
}

/** True where the bit comes down wholly beside the panel: a loaded spindle that this panel does not reach bores air. */
export function isBeside(solid: Solid, hole: Hole): boolean {
  const extent = extentOf(solid, hole);
  const off = (place: number, to: number): number => Math.max(0, -place, place - to);
  return 4 * (off(hole.u, extent.u) ** 2 + off(hole.v, extent.v) ** 2) >= hole.diameter ** 2;
}

function checkHole(setUp: SetUp, solid: Solid, hole: Hole): Message[] {
  const extent = extentOf(solid, hole);
  const { depth } = setUp;
  const { deep } = extent;
  if (hole.u <= 0 || hole.u >= extent.u || hole.v <= 0 || hole.v >= extent.v)
    return [say.cutsEdge({ hole, across: extent.u, along: extent.v })];
  if (setUp.through && !isInFace(hole)) return [say.throughLength({ hole })];
  if (setUp.through && depth < deep) return [say.notThrough({ hole, depth, deep })];
  if (!setUp.through && depth >= deep) return [say.comesOut({ hole, depth, deep })];
  return [];
}

/** Every stop that is set stands up while the panel comes against its own; one that is in the panel's way must lower. */
function checkStopsInTheWay(stroke: Stroke, solid: Solid): Message[] {
  const { setUp, blank } = stroke;
  const lie = lieOf(stroke, solid, NOTHING);
  const corners = [toTable(blank.hand, lie, [0, 0, 0]), toTable(blank.hand, lie, [solid.width, solid.length, 0])];
  return setUp.stops.flatMap((other) => {
    const lowers = setUp.machine.stops.some((one) => one.name === other.name && one.lowers);
    return isInTheWay(stroke, other, corners) && !lowers
      ? [say.stopInTheWay({ stop: other.name, position: other.position })]
      : [];
  });
}
