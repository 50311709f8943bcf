import type { Micrometres } from '../../length/units.js';
import type { LineDrill, Stop } from '../../shop/model.js';
import type { SetStop, SetUp } from '../setup-sheet.js';
import { mm, outOfSpan, spanWords } from './words.js';

/** What keeps the machine from being set as the sheet says, in words; empty where it can be. */
export function checkSetUp(setUp: SetUp): string[] {
  const { machine } = setUp;
  const problems: string[] = [];
  if (outOfSpan(setUp.depth, machine.depth)) {
    problems.push(`depth ${mm(setUp.depth)} is not within the ${spanWords(machine.depth)} of ${machine.name}`);
  }
  if (setUp.extension && !(machine.kind === 'vertical' && machine.extension > 0)) {
    problems.push(`${machine.name} has no fence extension`);
  }
  problems.push(...checkHeight(setUp), ...checkFence(setUp), ...setUp.stops.flatMap((stop) => checkStop(setUp, stop)));
  problems.push(...checkOrderOfStops(setUp));
  return problems;
}

function checkHeight({ machine, height }: SetUp): string[] {
  if (machine.kind !== 'horizontal') return height === null ? [] : [`${machine.name} has no height to set`];
  if (height === null) return [`the sheet gives no height for ${machine.name}`];
  return outOfSpan(height, machine.height)
    ? [`height ${mm(height)} is not within the ${spanWords(machine.height)} of ${machine.name}`]
    : [];
}

function checkFence({ machine, fence }: SetUp): string[] {
  if (machine.kind === 'line') return checkHeads(machine, fence);
  const wanted = machine.kind === 'horizontal' ? 0 : 1;
  if (fence.length !== wanted)
    return [`${machine.name} takes ${wanted} fence distances, the sheet gives ${fence.length}`];
  if (machine.kind === 'horizontal') return [];
  const span = machine.kind === 'vertical' ? machine.fenceOffset : machine.distance;
  return outOfSpan(fence[0]!, span)
    ? [`fence distance ${mm(fence[0]!)} is not within the ${spanWords(span)} of ${machine.name}`]
    : [];
}

function checkHeads(machine: LineDrill, fence: readonly Micrometres[]): string[] {
  if (fence.length < 1 || fence.length > machine.heads) {
    return [`${machine.name} has ${machine.heads} heads, the sheet sets ${fence.length}`];
  }
  const problems: string[] = [];
  if (outOfSpan(fence[0]!, machine.setback)) {
    problems.push(`setback ${mm(fence[0]!)} is not within the ${spanWords(machine.setback)} of ${machine.name}`);
  }
  for (let i = 1; i < fence.length; i += 1) {
    const apart = fence[i]! - fence[i - 1]!;
    if (machine.headDistance === null ? apart <= 0 : outOfSpan(apart, machine.headDistance)) {
      const range = machine.headDistance === null ? 'front to rear' : `within ${spanWords(machine.headDistance)}`;
      problems.push(`heads ${mm(apart)} apart: those of ${machine.name} stand ${range}`);
    }
  }
  const deepest = Math.max(...fence);
  if (deepest > machine.throat) {
    problems.push(`a head ${mm(deepest)} from the fence is past the ${mm(machine.throat)} throat of ${machine.name}`);
  }
  return problems;
}

function checkStop(setUp: SetUp, set: SetStop): string[] {
  const { machine, extension } = setUp;
  const stop = machine.stops.find((one) => one.name === set.name);
  if (stop === undefined) return [`${machine.name} has no stop ${set.name}`];
  if (stop.side !== set.side)
    return [`stop ${set.name} of ${machine.name} is on the ${stop.side}, not on the ${set.side}`];
  const beyond = extension && machine.kind === 'vertical' && isOnExtension(setUp, stop) ? machine.extension : 0;
  const span = { min: stop.range.min, max: stop.range.max + beyond };
  if (!outOfSpan(set.position, span)) return [];
  const how = beyond > 0 ? ' with its extension' : '';
  return [`stop ${set.name} at ${mm(set.position)} is not within the ${spanWords(span)} of ${machine.name}${how}`];
}

/** The extension lengthens the fence at its end, so it is the stop that reaches furthest which goes on along it. */
function isOnExtension(setUp: SetUp, stop: Stop): boolean {
  return setUp.machine.stops
    .filter((other) => other !== stop && other.side === stop.side)
    .every(
      (other) =>
        other.range.max < stop.range.max ||
        (other.range.max === stop.range.max && isInside(setUp, other.name, stop.name)),
    );
}

/** Whether the first of two stops of one hand stands nearer to the spindles on the fence. */
function isInside({ machine }: SetUp, one: string, other: string): boolean {
  const rank = (name: string): readonly number[] => {
    const index = machine.stops.findIndex((stop) => stop.name === name);
    const range = machine.stops[index]?.range;
    return [range?.min ?? 0, range?.max ?? 0, index];
  };
  const [a, b] = [rank(one), rank(other)];
  const differ = a.findIndex((value, at) => value !== b[at]);
  return differ >= 0 && a[differ]! < b[differ]!;
}

/** Stops of one hand slide on one fence: none can be set past another that stands further out. */
function checkOrderOfStops(setUp: SetUp): string[] {
  const { stops } = setUp;
  return stops.flatMap((inner) =>
    stops
      .filter(({ side, position }) => side === inner.side && position <= inner.position)
      .filter((outer) => isInside(setUp, inner.name, outer.name))
      .map(
        (outer) =>
          `stop ${inner.name} at ${mm(inner.position)} would have to pass ${outer.name} at ${mm(outer.position)}, which stands further out on the same fence`,
      ),
  );
}
