import type { FigureName } from '../../tolerance/assemble.js';
import { likelyOverLimits, type JointMisfit } from '../../tolerance/likely.js';
import type { StrayKind } from '../../machining/replay/stray.js';
import type { Steps } from '../../derived/steps.js';
import type { Micrometres } from '../../length/units.js';
import { noteAll, unwatched } from '../../shop/watched.js';
import { counted, listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { JointPanels } from '../../words/names.js';
import { keptForShop, onceForEquals } from '../equals.js';
import { boresOfGroups, distinct, grouped } from '../lookups.js';
import type { CarcassContext, Found, SlowRule } from '../rule.js';

interface Misfit {
  readonly figure: FigureName;
  /** The worst first. */
  readonly joints: readonly JointPanels[];
  readonly likely: Micrometres;
  readonly worst: Micrometres;
  readonly limit: Micrometres;
  /** The greatest first. */
  readonly causes: readonly StrayKind[];
}

const CAUSES: Readonly<Record<StrayKind, string>> = {
  thickness: 'board thickness',
  width: 'panel width',
  length: 'panel length',
  squareness: 'squareness',
  stop: 'stop setting',
  drill: 'drill wander',
  dowelPlay: 'dowel play',
};

/** The figures that a joint is judged by, and the keys of their limits. */
const FIGURES: Readonly<Record<FigureName, { readonly name: string; readonly key: string }>> = {
  front: { name: 'offset at the front edge', key: 'front-limit' },
  step: { name: 'step at the outside face', key: 'step-limit' },
  gap: { name: 'gap', key: 'gap-limit' },
  play: { name: 'mismatch of the dowel places', key: 'dowel-play' },
};

export const say = messages('misfit-past-limit', {
  past: ({ figure, joints: [joint, ...others], likely, worst, limit, causes }: Misfit, show) =>
    [
      `The ${FIGURES[figure].name} in the joint of ${listed(joint!)} is likely to reach ${show.length(likely)} (worst case ${show.length(worst)}); the shop’s limit is ${show.length(limit)} (\`${FIGURES[figure].key}\`).`,
      ...(others.length === 0 ? [] : [`The same is true of ${counted(others.length, 'more joint')}.`]),
      `Main ${verb(causes.length, 'cause', 'causes')}: ${listed(causes.map((cause) => CAUSES[cause]))}.`,
    ].join(' '),
});

function jointPanels({ carcass }: CarcassContext, id: string): JointPanels {
  const joint = carcass.joints.find((one) => one.id === id)!;
  return [joint.endPanel, joint.facePanel];
}

export const misfitPastLimit: SlowRule = {
  name: 'misfit-past-limit',
  severity: 'warning',
  slow: true,
  about: {
    what: 'With the tolerances of the shop, a joint is likely to come out worse than the shop’s own limit.',
    why: 'The replay of the set-ups is run with panels and stops that stray by the shop’s `tolerances`. The figure is the root sum of squares of the single effects: what independent errors usually add up to. A figure that only the worst case takes past the limit is not reported.',
    remedy: 'Tighten what contributes most, or set the limit to what the shop can accept.',
    example: 'kind: base\nwidth: 600',
    shop: 'tolerances: { stop: 0.6, drill: 0.6, front-limit: 0.3 }',
  },
  *check(context) {
    noteAll(context.shop.tolerances);
    const over = yield* onceForEquals(likelyMisfits, context);
    return grouped(over, (one) => one.figure).map((same) => found(context, same));
  },
};

function* likelyMisfits({ carcass, matings, alone, shop, derived }: CarcassContext): Steps<readonly JointMisfit[]> {
  yield* alone.making();
  const { strokes } = alone;
  return yield* likelyOverLimits({ carcass, matings, strokes, shop: unwatched(shop) }, keptForShop(derived, shop));
}

function found(context: CarcassContext, same: readonly JointMisfit[]): Found {
  const worst = same.reduce((a, b) => (b.rootSumSquare > a.rootSumSquare ? b : a));
  const joints = distinct(same.map((one) => one.joint));
  return {
    place: context.spec.name.place,
    message: say.past({
      figure: worst.figure,
      joints: [worst.joint, ...joints.filter((id) => id !== worst.joint)].map((id) => jointPanels(context, id)),
      likely: worst.rootSumSquare,
      worst: worst.worst,
      limit: worst.limit,
      causes: worst.causes.slice(0, 2),
    }),
    bores: boresOfGroups(context, new Set(joints)),
  };
}
