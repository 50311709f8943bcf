import type { Span } from '../../schema/schema.js';
import type { Blank, SetUp, Step } from '../setup-sheet.js';
import { lieOf, type Hole, type Stroke } from './bore.js';
import { isInTheWay } from './in-the-way.js';
import { toTable } from './lie.js';
import type { Solid } from './solid.js';
import { NOTHING } from './stray.js';
import { mm, outOfSpan, sideWords, spanWords } from './words.js';

/** What keeps a blank from being taken by the machine at all. */
export function checkBlank({ machine }: SetUp, blank: Blank): string[] {
  return (['length', 'width', 'thickness'] as const).flatMap((measure) => {
    const span: Span | null = machine.panel[measure];
    return span !== null && outOfSpan(blank[measure], span)
      ? [`${machine.name} takes a ${measure} of ${spanWords(span)}, the panel has ${mm(blank[measure])}`]
      : [];
  });
}

/** What keeps the spindles from being loaded, or the panel from being moved along, as the step says. */
export function checkStep(setUp: SetUp, step: Step): string[] {
  return [...checkSpindles(setUp, step), ...checkMove(setUp, step)];
}

function checkSpindles({ machine, fence }: SetUp, step: Step): string[] {
  const spindles = machine.kind === 'cup' ? 1 : machine.spindles;
  const heads = machine.kind === 'line' ? fence.length : 1;
  const taken = new Set<string>();
  const problems = step.spindles.length === 0 ? ['no spindle is loaded'] : [];
  for (const { head, spindle, diameter } of step.spindles) {
    const name = heads > 1 ? `spindle ${spindle} of head ${head}` : `spindle ${spindle}`;
    const place = `${head}/${spindle}`;
    if (!isBelow(head, heads)) problems.push(`head ${head} is not set: ${machine.name} has ${heads} set`);
    else if (!isBelow(spindle, spindles))
      problems.push(`${machine.name} has spindles 0 to ${spindles - 1}, not ${spindle}`);
    else if (taken.has(place)) problems.push(`${name} carries two bits`);
    if (!(diameter > 0)) problems.push(`${name} carries a bit of ${mm(diameter)}`);
    taken.add(place);
  }
  return problems;
}

const isBelow = (index: number, count: number): boolean => Number.isInteger(index) && index >= 0 && index < count;

function checkMove({ machine }: SetUp, step: Step): string[] {
  if (step.moved === 0) return [];
  if (machine.kind !== 'line') return [`an index move on ${machine.name}, which is no line drill`];
  if (machine.indexPins === 'none')
    return [`an index move of ${mm(step.moved)}, but ${machine.name} has no index pins`];
  const problems: string[] = [];
  if (step.moved % machine.pitch !== 0) {
    problems.push(`an index move of ${mm(step.moved)} is not a whole number of pitches of ${mm(machine.pitch)}`);
  }
  if (machine.indexRange !== null && Math.abs(step.moved) > machine.indexRange) {
    problems.push(`an index move of ${mm(step.moved)} is past the ${mm(machine.indexRange)} of ${machine.name}`);
  }
  return problems;
}

/** What a stroke would do that no bore is: miss the panel, come out where it must not, or run the panel into a stop. */
export function checkStroke(stroke: Stroke, solid: Solid, holes: readonly Hole[]): string[] {
  return [
    ...checkStopsInTheWay(stroke, solid),
    ...(holes.length === 0 ? ['every bit comes down beside the panel'] : []),
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

function checkHole(setUp: SetUp, solid: Solid, hole: Hole): string[] {
  const extent = extentOf(solid, hole);
  const where = `the ${mm(hole.diameter)} hole at ${mm(hole.u)}, ${mm(hole.v)} in the ${sideWords(hole.face)}`;
  if (hole.u <= 0 || hole.u >= extent.u || hole.v <= 0 || hole.v >= extent.v) {
    return [`${where} cuts into the edge of the panel, which measures ${mm(extent.u)} by ${mm(extent.v)} there`];
  }
  if (setUp.through && !isInFace(hole)) {
    return [`${where} would have to go through the whole length of the panel`];
  }
  if (setUp.through && setUp.depth < extent.deep) {
    return [`${where} is to go through ${mm(extent.deep)}, but the depth stop is at ${mm(setUp.depth)}`];
  }
  if (!setUp.through && setUp.depth >= extent.deep) {
    return [`${where} comes out on the other side: depth ${mm(setUp.depth)} in ${mm(extent.deep)}`];
  }
  return [];
}

/** Every stop that is set stands up while the panel comes against its own; one that is in the panel's way must lower. */
function checkStopsInTheWay(stroke: Stroke, solid: Solid): string[] {
  const { setUp, blank } = stroke;
  const lie = lieOf(stroke, solid, NOTHING);
  const corners = [toTable(blank.hand, lie, [0, 0, 0]), toTable(blank.hand, lie, [solid.width, solid.length, 0])];
  return setUp.stops.flatMap((other) => {
    const lowers = setUp.machine.stops.some((one) => one.name === other.name && one.lowers);
    return isInTheWay(stroke, other, corners) && !lowers
      ? [`the panel lies over stop ${other.name} at ${mm(other.position)}, or ends at it, and it does not lower`]
      : [];
  });
}
