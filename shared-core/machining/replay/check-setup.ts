import type { Micrometres } from '../../length/units.js';
import type { LineDrill, Stop } from '../../shop/model.js';
import type { SetStop, SetUp } from '../set-up.js';
import type { Message } from '../../words/message.js';
import { say } from './messages.js';
import { outOfSpan } from './span.js';

/** What keeps the machine from being set as the set-up says; empty where it can be. */
export function checkSetUp(setUp: SetUp): Message[] {
  const { machine } = setUp;
  const problems: Message[] = [];
  if (outOfSpan(setUp.depth, machine.depth)) {
    problems.push(say.depthOutOfRange({ machine: machine.name, value: setUp.depth, range: machine.depth }));
  }
  if (setUp.extension && !(machine.kind === 'vertical' && machine.extension > 0)) {
    problems.push(say.noExtension({ machine: machine.name }));
  }
  problems.push(...checkHeight(setUp), ...checkFence(setUp), ...setUp.stops.flatMap((stop) => checkStop(setUp, stop)));
  problems.push(...checkOrderOfStops(setUp));
  return problems;
}

function checkHeight({ machine, height }: SetUp): Message[] {
  if (machine.kind !== 'horizontal') return height === null ? [] : [say.noHeight({ machine: machine.name })];
  if (height === null) return [say.heightMissing({ machine: machine.name })];
  return outOfSpan(height, machine.height)
    ? [say.heightOutOfRange({ machine: machine.name, value: height, range: machine.height })]
    : [];
}

function checkFence({ machine, fence }: SetUp): Message[] {
  if (machine.kind === 'line') return checkHeads(machine, fence);
  const wanted = machine.kind === 'horizontal' ? 0 : 1;
  if (fence.length !== wanted) return [say.fenceCount({ machine: machine.name, wanted, given: fence.length })];
  if (machine.kind === 'horizontal') return [];
  const span = machine.kind === 'vertical' ? machine.fenceOffset : machine.distance;
  return outOfSpan(fence[0]!, span)
    ? [say.fenceOutOfRange({ machine: machine.name, value: fence[0]!, range: span })]
    : [];
}

function checkHeads(machine: LineDrill, fence: readonly Micrometres[]): Message[] {
  if (fence.length < 1 || fence.length > machine.heads) {
    return [say.headCount({ machine: machine.name, heads: machine.heads, given: fence.length })];
  }
  const problems: Message[] = [];
  if (outOfSpan(fence[0]!, machine.setback)) {
    problems.push(say.setbackOutOfRange({ machine: machine.name, value: fence[0]!, range: machine.setback }));
  }
  for (let i = 1; i < fence.length; i += 1) {
    const apart = fence[i]! - fence[i - 1]!;
    if (machine.headDistance === null) {
      if (apart <= 0) problems.push(say.headsOutOfOrder({ machine: machine.name }));
    } else if (outOfSpan(apart, machine.headDistance)) {
      problems.push(say.headsOutOfRange({ machine: machine.name, value: apart, range: machine.headDistance }));
    }
  }
  const deepest = Math.max(...fence);
  if (deepest > machine.throat) {
    problems.push(say.throat({ machine: machine.name, value: deepest, throat: machine.throat }));
  }
  return problems;
}

function checkStop(setUp: SetUp, set: SetStop): Message[] {
  const { machine, extension } = setUp;
  const stop = machine.stops.find((one) => one.name === set.name);
  if (stop === undefined) return [say.stopMissing({ machine: machine.name, stop: set.name })];
  if (stop.side !== set.side)
    return [say.stopSide({ machine: machine.name, stop: set.name, is: stop.side, given: set.side })];
  const beyond = extension && machine.kind === 'vertical' && isOnExtension(setUp, stop) ? machine.extension : 0;
  const range = { min: stop.range.min, max: stop.range.max + beyond };
  if (!outOfSpan(set.position, range)) return [];
  const tell = beyond > 0 ? say.stopPastExtension : say.stopOutOfRange;
  return [tell({ machine: machine.name, stop: set.name, value: set.position, range })];
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
function checkOrderOfStops(setUp: SetUp): Message[] {
  const { stops } = setUp;
  return stops.flatMap((inner) =>
    stops
      .filter(({ side, position }) => side === inner.side && position <= inner.position)
      .filter((outer) => isInside(setUp, inner.name, outer.name))
      .map((outer) =>
        say.stopsCross({
          inner: { stop: inner.name, position: inner.position },
          outer: { stop: outer.name, position: outer.position },
        }),
      ),
  );
}
