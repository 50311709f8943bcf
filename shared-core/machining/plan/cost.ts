import type { Changeover, Handling } from '../../shop/model.js';
import type { Run, SetUp, Step } from '../set-up.js';
import { changeoverTime } from './changeover.js';
import type { Plan, PlannedSetUp } from './plan.js';

/** What is done at the machine once a set-up stands, as often as its pieces ask for it. */
export interface Work {
  readonly panels: number;
  /** How often one is laid anew after the first time: turned, or slid to another stop. */
  readonly lays: number;
  readonly strokes: number;
  readonly indexMoves: number;
}

/** What a job takes at the boring machines by the shop's own times, in seconds. */
export interface JobCost {
  readonly changeover: number;
  readonly boring: number;
  readonly work: Work;
  /** The changeovers by what is changed, what costs most first; nothing that costs nothing. */
  readonly changes: readonly { readonly what: keyof Changeover; readonly seconds: number }[];
  /** Those that cost most first. */
  readonly carcasses: readonly CarcassCost[];
}

export interface CarcassCost {
  readonly carcass: string;
  readonly boring: number;
  /** Set-ups that serve no other carcass, and what it takes to come to them in this order. */
  readonly ownSetUps: readonly string[];
  readonly ownChangeover: number;
}

/** The work of a set-up, or of some of its runs. */
export function workOf({ runs }: Pick<SetUp, 'runs'>): Work {
  const sum = { panels: 0, lays: 0, strokes: 0, indexMoves: 0 };
  for (const { pieces, steps } of runs) {
    sum.panels += pieces;
    sum.strokes += pieces * steps.length;
    steps.forEach((step, at) => {
      const before = steps[at - 1];
      const isLaid = before === undefined || !liesAlike(step, before);
      if (isLaid && before !== undefined) sum.lays += pieces;
      if (step.moved !== (isLaid ? 0 : before.moved)) sum.indexMoves += pieces;
    });
  }
  return sum;
}

const liesAlike = (a: Step, b: Step): boolean => a.stop === b.stop && a.end === b.end && a.down === b.down;

/** Whole seconds, by the shop's own times. */
export function secondsOf(work: Work, { panel, lay, stroke, indexMove }: Handling): number {
  return Math.round(work.panels * panel + work.lays * lay + work.strokes * stroke + work.indexMoves * indexMove);
}

/** The cost of a plan, and how it comes about. */
export function costOf(
  { setUps, seconds }: Pick<Plan, 'setUps' | 'seconds'>,
  { changeover, handling }: { readonly changeover: Changeover; readonly handling: Handling },
): JobCost {
  const carcasses = new Map<string, { runs: Run[]; own: PlannedSetUp[] }>();
  for (const planned of setUps) {
    const { runs } = planned.setUp;
    const names = new Set(runs.map(({ carcass }) => carcass));
    for (const run of runs) {
      const known = carcasses.get(run.carcass) ?? { runs: [], own: [] };
      known.runs.push(run);
      carcasses.set(run.carcass, known);
    }
    const [only, ...others] = names;
    if (only !== undefined && others.length === 0) carcasses.get(only)!.own.push(planned);
  }
  const costs = [...carcasses].map(([carcass, { runs, own }]): CarcassCost => ({
    carcass,
    boring: secondsOf(workOf({ runs }), handling),
    ownSetUps: own.map(({ setUp }) => setUp.id),
    ownChangeover: own.reduce((sum, one) => sum + one.seconds, 0),
  }));
  const whole = ({ boring, ownChangeover }: CarcassCost): number => boring + ownChangeover;
  const work = workOf({ runs: setUps.flatMap(({ setUp }) => setUp.runs) });
  return {
    changeover: seconds,
    boring: secondsOf(work, handling),
    work,
    changes: changesByCost(setUps, changeover),
    carcasses: costs.sort((a, b) => whole(b) - whole(a)),
  };
}

function changesByCost(setUps: readonly PlannedSetUp[], times: Changeover): JobCost['changes'] {
  const kinds = Object.keys(times) as (keyof Changeover)[];
  const free = Object.fromEntries(kinds.map((kind) => [kind, 0])) as Record<keyof Changeover, number>;
  return kinds
    .map((what) => {
      const alone = { ...free, [what]: times[what] };
      return { what, seconds: setUps.reduce((sum, { changes }) => sum + changeoverTime(changes, alone), 0) };
    })
    .filter(({ seconds }) => seconds > 0)
    .sort((a, b) => b.seconds - a.seconds);
}
