import { extentsOf } from '../../carcass/pose.js';
import type { Micrometres } from '../../length/units.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { otherFeet } from '../foot-choices.js';
import { boresOfGroups } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface OffBottom {
  readonly foot: string;
  readonly feet: readonly string[];
}
interface MeetsPlinth extends OffBottom {
  readonly by: Micrometres;
}

export const say = messages('foot-without-room', {
  off: ({ foot, feet }: OffBottom) =>
    `The bores of ${listed(feet)} (${quoted(foot)}) do not stand on the bottom, so they are not made. Use another foot, or a larger carcass.`,
  plinth: ({ foot, feet, by }: MeetsPlinth, show) =>
    `${listed(feet)} (${quoted(foot)}) ${feet.length === 1 ? 'stands' : 'stand'} ${show.length(by)} in the plinth. Stand the front feet further back (\`from-front\` of the foot).`,
});

export const footWithoutRoom: CarcassRule = {
  name: 'foot-without-room',
  severity: 'error',
  about: {
    what: 'A foot does not stand under the bottom, or its room reaches into the plinth.',
    why: 'The plinth goes on last, on site: where a front foot stands in its way it does not go under the carcass, and the foot cannot be moved, as its bores are made.',
    remedy: 'Give the feet another distance from the front in the shop file, or use another foot.',
    example: 'kind: base\nwidth: 600\nplinth: 120\nfeet: near',
    shop: 'feet: { near: { range: 90 to 150, from-front: 70, from-back: 60, from-side: 60, apart: 700, diameter: 10, depth: 11 } }',
  },
  check(context) {
    return [...offBottom(context), ...inPlinth(context)];
  },
};

function offBottom(context: CarcassContext): readonly Found[] {
  const off = context.boring.feet.filter(({ isOn }) => !isOn);
  const [first] = off;
  if (first === undefined) return [];
  const message = say.off({ foot: first.foot.name, feet: off.map(({ key }) => key) });
  return [
    { place: first.place, panel: first.bottom.key, message, repairs: otherFeet(context, first.foot, () => true) },
  ];
}

function inPlinth(context: CarcassContext): readonly Found[] {
  const plinth = context.carcass.panels.find(({ role }) => role === 'plinth');
  if (plinth === undefined) return [];
  const { y } = extentsOf(plinth);
  const met = context.boring.feet.filter(({ body }) => body.y.from < y.to && y.from < body.y.to);
  const [first] = met;
  if (first === undefined) return [];
  const message = say.plinth({ foot: first.foot.name, feet: met.map(({ key }) => key), by: y.to - first.body.y.from });
  const bores = boresOfGroups(context, new Set(met.map(({ key }) => key)));
  const repairs = otherFeet(context, first.foot, () => true);
  return [{ place: first.place, panel: plinth.key, message, bores, repairs }];
}
