import { kilograms, say as sayOfLoads } from '../../loads/messages.js';
import { loadIn } from '../../loads/shelf.js';
import { weightOfAll } from '../../loads/weight.js';
import { quoted } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import { otherFeet } from '../foot-choices.js';
import type { CarcassRule } from '../rule.js';

interface Overloaded {
  readonly weight: number;
  readonly load: number;
  readonly count: number;
  readonly foot: string;
  readonly rating: number;
  readonly caution: Message;
}

export const say = messages('feet-overloaded', {
  heavy: ({ weight, load, count, foot, rating, caution }: Overloaded, show) =>
    `The carcass weighs ${kilograms(weight)}${load > 0 ? `, and ${kilograms(load)} stand in it` : ''}; ${count} feet ${quoted(foot)} carry ${kilograms(rating * count)}, and no worktop is counted. Use feet that carry more, or stand them nearer to each other (\`apart\`). ${show.tell(caution)}`,
});

export const feetOverloaded: CarcassRule = {
  name: 'feet-overloaded',
  severity: 'error',
  about: {
    what: 'A carcass on feet is heavier, with what stands in it, than they carry.',
    why: 'A foot that gives way lets the whole cabinet lean, and doors and drawers no longer close. All of it is weighed by sizes and densities; what stands in it is what the job says (`load`), what a foot carries is the maker’s figure. Feet never share a load evenly, and a worktop comes on top: leave room.',
    remedy: 'Use feet that carry more, or more of them.',
    example: 'kind: tall\nwidth: 600\nplinth: 100\nfeet: level-foot\nload: 60\nfixed-shelves: 5',
    shop: 'feet: { level-foot: { range: 90 to 150, from-front: 110, from-back: 60, from-side: 60, apart: 700, diameter: 10, depth: 11, rating: 40 } }',
  },
  check(context) {
    const { spec, carcass, boring } = context;
    const foot = boring.feet[0]?.foot;
    if (foot === undefined || foot.rating === null) return [];
    const { rating, name } = foot;
    const count = boring.feet.length;
    const [weight, load] = [weightOfAll(carcass.panels), loadIn(spec, carcass)];
    if (weight + load <= rating * count) return [];
    const carries = (other: number | null): boolean => other !== null && other > rating;
    const message = say.heavy({ weight, load, count, foot: name, rating, caution: sayOfLoads.noApproval() });
    return [{ place: spec.name.place, message, repairs: otherFeet(context, foot, (one) => carries(one.rating)) }];
  },
};
