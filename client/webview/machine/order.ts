import type { StepAddress } from '../../../shared-core/drawing/messages/machine-view.js';
import type { ListedRun, ListedSetUp } from '../../../shared-core/drawing/messages/set-ups.js';

/** One stroke in the order of the job. */
export interface OrderedStep extends StepAddress {
  /** Place of its set-up in the order to run, from 0. */
  readonly place: number;
  readonly listed: ListedSetUp;
  readonly run: ListedRun;
}

/** Every stroke of the job, in the order to run. */
export function stepsOf(setUps: readonly ListedSetUp[]): OrderedStep[] {
  return setUps.flatMap((listed, place) =>
    listed.runs.flatMap((run) =>
      run.steps.map((_, step) => ({
        setUp: listed.id,
        carcass: run.carcass,
        panel: run.panel,
        step,
        place,
        listed,
        run,
      })),
    ),
  );
}

/** What the reader wants to step through; null for all. */
export interface Scope {
  readonly carcass: string | null;
  readonly panel: string | null;
}

/** The steps of one carcass or panel, in their order. */
export function within(steps: readonly OrderedStep[], { carcass, panel }: Scope): readonly OrderedStep[] {
  return steps.filter(
    (one) => (carcass === null || one.carcass === carcass) && (panel === null || one.panel === panel),
  );
}

/** A scope that the job still has. */
export function soundScope(steps: readonly OrderedStep[], scope: Scope): Scope {
  if (within(steps, scope).length > 0) return scope;
  const carcass = { carcass: scope.carcass, panel: null };
  return within(steps, carcass).length > 0 ? carcass : { carcass: null, panel: null };
}

/**
 * Where a stroke stands in other steps, which may be those of a new plan: the same work, by content; else the same panel; else
 * the first.
 */
export function findAgain(steps: readonly OrderedStep[], was: OrderedStep | null): number {
  if (was === null) return 0;
  const tests: ((one: OrderedStep) => boolean)[] = [
    (one) => one.run.content === was.run.content && one.step === was.step,
    (one) => isSameStep(one, was),
    (one) => one.carcass === was.carcass && one.panel === was.panel && one.listed.machine === was.listed.machine,
    (one) => one.carcass === was.carcass && one.panel === was.panel,
    (one) => one.carcass === was.carcass,
  ];
  for (const test of tests) {
    const index = steps.findIndex(test);
    if (index >= 0) return index;
  }
  return 0;
}

/** Whether two addresses lead to one stroke. */
export function isSameStep(a: StepAddress, b: StepAddress): boolean {
  return a.setUp === b.setUp && a.carcass === b.carcass && a.panel === b.panel && a.step === b.step;
}

/** Index of the first step of the set-up before or after; the same index where there is none. */
export function toSetUp(steps: readonly OrderedStep[], from: number, way: 1 | -1): number {
  const place = steps[from]?.place;
  if (place === undefined) return from;
  if (way > 0) {
    const next = steps.findIndex((one) => one.place > place);
    return next < 0 ? from : next;
  }
  const first = steps.findIndex((one) => one.place === place);
  if (first < from) return first;
  const before = steps[first - 1]?.place;
  return before === undefined ? from : steps.findIndex((one) => one.place === before);
}
