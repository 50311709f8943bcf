import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';
import { within } from '../../schema/in-span.js';
import { quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { otherFeet } from '../foot-choices.js';
import type { CarcassRule } from '../rule.js';

interface OutOfRange {
  readonly plinth: Micrometres;
  readonly foot: string;
  readonly range: Span;
}

export const say = messages('foot-out-of-range', {
  range: ({ plinth, foot, range }: OutOfRange, show) =>
    `The plinth is ${show.length(plinth)} high, and ${quoted(foot)} can be set from ${show.span(range)}. Make the plinth as high as a foot can be, or use another foot.`,
  plinth: ({ plinth }: { readonly plinth: Micrometres }, show) => `Make the plinth ${show.exact(plinth)} high`,
});

export const footOutOfRange: CarcassRule = {
  name: 'foot-out-of-range',
  severity: 'error',
  about: {
    what: 'A plinth is lower than its feet can be set, or higher.',
    why: 'The feet carry the carcass; the plinth only hides them. Under a plinth that is too low the carcass cannot be set down to it, and over one that is too high a foot runs out of its thread. It is found out on the floor of the house.',
    remedy: 'Choose the height of the plinth within the range of the foot, or another foot.',
    example: 'kind: base\nwidth: 600\nplinth: 60\nfeet: level-foot',
  },
  check(context) {
    const { spec, boring } = context;
    const foot = boring.feet[0]?.foot;
    const plinth = spec.plinth.value;
    if (foot === undefined || within(plinth, foot.range)) return [];
    const nearest = Math.min(foot.range.max, Math.max(foot.range.min, plinth));
    const own: readonly Repair[] = ownText(spec.plinth)
      ? [
          {
            title: say.plinth({ plinth: nearest }),
            changes: [setLength(context, spec.plinth.path, nearest)],
            preferred: true,
          },
        ]
      : [];
    const repairs = [...own, ...otherFeet(context, foot, ({ range }) => within(plinth, range))];
    const message = say.range({ plinth, foot: foot.name, range: foot.range });
    return [{ place: spec.plinth.place, message, repairs }];
  },
};
