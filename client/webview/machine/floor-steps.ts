import { oneOf, type Of } from '../shape.js';
import type { OrderedStep } from './order.js';

export const isFloorKind = oneOf('set', 'stroke', 'check');
type FloorKind = Of<typeof isFloorKind>;

/**
 * What an operator does, one thing after the other: set the machine, bore a panel stroke by stroke, and check the first piece
 * before the others.
 */
export interface FloorStep {
  readonly kind: FloorKind;
  /** The stroke that it belongs to, by its place among the steps: to be bored now, bored first, or bored last. */
  readonly at: number;
  /** What is ticked off when it is done; null for a stroke that others of its panel follow. */
  readonly content: string | null;
  /** Whether the machine is another one than before, so that its cautions are read in full. */
  readonly isFirstOfMachine: boolean;
}

/** Everything to be done for these strokes, in the order of the job. */
export function floorSteps(steps: readonly OrderedStep[]): FloorStep[] {
  return steps.flatMap((step, at): FloorStep[] => {
    const [before, after] = [steps[at - 1], steps[at + 1]];
    const isNewSetUp = before?.setUp !== step.setUp;
    const isFirstOfMachine = isNewSetUp && before?.listed.machine !== step.listed.machine;
    const isLastOfRun = after === undefined || after.setUp !== step.setUp || after.run !== step.run;
    const first = step.listed.runs[0];
    return [
      ...(isNewSetUp ? [{ kind: 'set', at, content: step.listed.content, isFirstOfMachine } as const] : []),
      { kind: 'stroke', at, content: isLastOfRun ? step.run.content : null, isFirstOfMachine: false },
      ...(isLastOfRun && step.run === first && step.listed.firstPiece.length > 0
        ? [{ kind: 'check', at, content: `${step.listed.content}:check`, isFirstOfMachine: false } as const]
        : []),
    ];
  });
}

/** Where the work goes on: the first thing that is not ticked off; of a panel, its first stroke. The last where all is done. */
export function whereToGoOn(steps: readonly FloorStep[], ticks: ReadonlySet<string>): number {
  const open = steps.findIndex(({ content }) => content !== null && !ticks.has(content));
  if (open < 0) return Math.max(steps.length - 1, 0);
  let start = open;
  while (start > 0 && steps[start]!.kind === 'stroke' && steps[start - 1]!.content === null) start -= 1;
  return start;
}

/** The same thing among steps of another plan: of the same kind at this stroke, else any at it. */
export function floorStepAt(steps: readonly FloorStep[], kind: FloorStep['kind'], at: number): number {
  const same = steps.findIndex((one) => one.kind === kind && one.at === at);
  return same >= 0
    ? same
    : Math.max(
        steps.findIndex((one) => one.kind === 'stroke' && one.at === at),
        0,
      );
}
