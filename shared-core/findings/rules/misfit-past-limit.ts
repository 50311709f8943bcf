import { setUpsOf } from '../../machining/plan/set-ups.js';
import { overLimits, type OverLimit } from '../../tolerance/limits.js';
import { toleranceOf } from '../../tolerance/tolerance.js';
import { boresOfGroups, distinct, grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, show } from '../words.js';

const LIMITS: Readonly<Record<OverLimit['figure'], readonly [words: string, key: string]>> = {
  front: ['offset at the front edge', 'front-limit'],
  step: ['step at the outside face', 'step-limit'],
  gap: ['gap in the joint', 'gap-limit'],
  play: ['mismatch of the dowel places', 'dowel-play'],
};

export const misfitPastLimit: CarcassRule = {
  name: 'misfit-past-limit',
  severity: 'warning',
  slow: true,
  about: {
    what: 'With the tolerances of the shop, a joint is likely to come out worse than the shop’s own limit.',
    why: 'The replay of the set-up sheets is run with panels and stops that stray by the shop’s `tolerances`. The figure is the root sum of squares of the single effects: what independent errors give together as a rule. What only the worst case passes is not reported.',
    remedy: 'Tighten what contributes most, or set the limit to what the shop can accept.',
    example: 'kind: base\nwidth: 600',
    shop: 'tolerances: { stop: 0.6, drill: 0.6, front-limit: 0.3 }',
  },
  check(context) {
    const { spec, carcass, boring, operations, shop } = context;
    const setUps = setUpsOf([operations]).map((sheet) => sheet.setUp);
    const { joints } = toleranceOf({ name: spec.name.value, carcass, boring, setUps, shop });
    const over = joints.flatMap((joint) => overLimits(joint, shop.tolerances).filter((one) => one.asARule));
    return grouped(over, (one) => one.figure).map((same) => found(context, same));
  },
};

function found(context: CarcassContext, same: readonly OverLimit[]): Found {
  const worst = same.reduce((a, b) => (b.rootSumSquare > a.rootSumSquare ? b : a));
  const [words, key] = LIMITS[worst.figure];
  const joints = distinct(same.map((one) => one.joint));
  const more = joints.length > 1 ? ` and ${joints.length - 1} more ${joints.length > 2 ? 'joints' : 'joint'}` : '';
  const causes = distinct(worst.causes.map((cause) => cause.kind)).slice(0, 2);
  return {
    place: context.spec.name.place,
    message:
      `The ${words} at ${worst.joint}${more} comes to ${show(context, worst.rootSumSquare)} as a rule (worst case ${show(context, worst.worst)}); ` +
      `the shop allows ${show(context, worst.limit)} (\`${key}\`). Most of it comes from ${listed(causes)}.`,
    bores: boresOfGroups(context, new Set(joints)),
  };
}
