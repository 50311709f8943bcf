import type { Micrometres } from '../../length/units.js';
import type { LineDrill } from '../../shop/model.js';
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

function checkStop({ machine, extension }: SetUp, set: SetStop): string[] {
  const stop = machine.stops.find((one) => one.name === set.name);
  if (stop === undefined) return [`${machine.name} has no stop ${set.name}`];
  if (stop.side !== set.side)
    return [`stop ${set.name} of ${machine.name} is on the ${stop.side}, not on the ${set.side}`];
  const beyond = extension && machine.kind === 'vertical' ? machine.extension : 0;
  const span = { min: stop.range.min, max: stop.range.max + beyond };
  if (!outOfSpan(set.position, span)) return [];
  const how = beyond > 0 ? ' with its extension' : '';
  return [`stop ${set.name} at ${mm(set.position)} is not within the ${spanWords(span)} of ${machine.name}${how}`];
}
