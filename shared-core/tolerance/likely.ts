import type { Derived } from '../derived/derived.js';
import type { Steps } from '../derived/steps.js';
import type { StrayKind } from '../machining/replay/stray.js';
import type { Shop, Tolerances } from '../shop/model.js';
import { JointProbes } from './joint-probes.js';
import { likenessOf } from './likeness.js';
import type { JointCase } from './rivals.js';
import { casesFrom, overLimits, spreading } from './tolerance.js';
import type { OverLimit, StrokesCase } from './tolerance.js';

/** A figure that passes its limit as a rule, wherever the joint stands. */
export interface Misfit extends Omit<OverLimit, 'joint' | 'asARule' | 'causes'> {
  /** Each kind once, the greatest first. */
  readonly causes: readonly StrayKind[];
}

export interface JointMisfit extends Misfit {
  readonly joint: string;
}

/** A joint to be judged. */
interface Question {
  readonly joint: JointCase;
  readonly tolerances: Tolerances;
  readonly probes: JointProbes;
}

/**
 * The figures of a carcass that pass the shop's limits as a rule. A job has few joints that are not like many others: one of
 * each likeness is worked out.
 * @param derived keeps for one shop what came out
 */
export function* likelyOverLimits(of: StrokesCase, derived: Derived): Steps<readonly JointMisfit[]> {
  const { tolerances } = of.shop;
  const probes = derived.get(probesFor, of.shop);
  const misfits: JointMisfit[] = [];
  for (const joint of casesFrom(of).cases) {
    yield;
    for (const misfit of derived.answer(misfitsOf, { joint, tolerances, probes }, likenessOf(joint)))
      misfits.push({ ...misfit, joint: joint.joint.id });
  }
  return misfits;
}

const probesFor = ({ tolerances }: Shop): JointProbes => new JointProbes(tolerances);

function misfitsOf({ joint, tolerances, probes }: Question): readonly Misfit[] {
  return overLimits(spreading(tolerances, probes)(joint), tolerances).flatMap(
    ({ figure, limit, worst, rootSumSquare, asARule, causes }): Misfit[] =>
      asARule ? [{ figure, limit, worst, rootSumSquare, causes: [...new Set(causes.map(({ kind }) => kind))] }] : [],
  );
}
