import { straightExtents } from '../../carcass/pose.js';
import type { FrontPull } from '../../hung/model.js';
import { overallLength } from '../../hung/pulls.js';
import type { Micrometres } from '../../length/units.js';
import { quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { boresOfGroups } from '../lookups.js';
import { movedPull } from '../pull-places.js';
import type { CarcassRule, Found } from '../rule.js';

interface Off {
  readonly pull: string;
  readonly front: string;
  readonly size: readonly [width: Micrometres, height: Micrometres];
}

export const say = messages('pull-off-front', {
  off: ({ pull, front, size, spacing }: Off & { readonly spacing: Micrometres }, show) =>
    `${quoted(pull)}${spacing === 0 ? '' : `, with screws ${show.exact(spacing)} apart,`} does not stand on ${front}, which is ${show.length(size[0])} wide and ${show.length(size[1])} high, so that ${front} is not bored for it. Put it further in, let it lie the other way, or use a shorter pull.`,
  beyond: ({ pull, front, size, long, by }: Off & { readonly long: Micrometres; readonly by: Micrometres }, show) =>
    `${quoted(pull)} is ${show.exact(long)} long and reaches ${show.length(by)} past the edge of ${front}, which is ${show.length(size[0])} wide and ${show.length(size[1])} high. Put it further in, or use a shorter pull.`,
});

export const pullOffFront: CarcassRule = {
  name: 'pull-off-front',
  severity: 'error',
  about: {
    what: 'A pull does not stand on its front, or reaches past an edge of it.',
    why: 'A screw outside the front, or in its edge, holds nothing, and a pull that reaches past the edge stands in the way of the front beside it. It happens where one length of pull is taken for all fronts and one of them is narrow.',
    remedy: 'Put the pull further in, let it lie the other way, or use a shorter one for this front.',
    example: 'kind: for-drawers\nwidth: 300\nfronts: [drawer, drawer]\npulls: long',
    shop: 'pulls:\n  long: { spacing: 320, diameter: 4.5 }\n  short: { spacing: 128, diameter: 4.5 }',
  },
  check(context) {
    return context.boring.pulls.flatMap((one): readonly Found[] => {
      const { front, pull, place, isOn } = one;
      const { x, z } = straightExtents(front);
      const by = pastEdge(one);
      if (isOn && by <= 0) return [];
      const told = { pull: pull.name, front: front.key, size: [x.to - x.from, z.to - z.from] } as const;
      const message = isOn
        ? say.beyond({ ...told, long: overallLength(pull), by })
        : say.off({ ...told, spacing: pull.spacing });
      const bores = boresOfGroups(context, new Set([one.id]));
      const severity = isOn ? 'warning' : 'error';
      return [{ place, panel: front.key, severity, message, bores, repairs: movedPull(context, one) }];
    });
  },
};

/** How far it reaches past the edge of its front, at most; negative where it does not. Both as they stand before any turn. */
function pastEdge({ front, body }: FrontPull): Micrometres {
  const { x, z } = straightExtents(front);
  return Math.max(x.from - body.x.from, body.x.to - x.to, z.from - body.z.from, body.z.to - z.to);
}
