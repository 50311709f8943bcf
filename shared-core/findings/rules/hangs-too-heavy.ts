import { kilograms, say as sayOfLoads } from '../../loads/messages.js';
import { loadIn } from '../../loads/shelf.js';
import { weightOfAll } from '../../loads/weight.js';
import { messages, type Message } from '../../words/message.js';
import { isAboveFloor } from '../../job/above-floor.js';
import { quoted } from '../../words/english.js';
import { otherBrackets } from '../bracket-choices.js';
import type { CarcassRule } from '../rule.js';

interface Hangs {
  readonly weight: number;
  readonly load: number;
  readonly rating: number;
  /** Whose rating it is; null for that of the habits. */
  readonly bracket: string | null;
  readonly caution: Message;
}

export const say = messages('hangs-too-heavy', {
  hangs: ({ weight, load, rating, bracket, caution }: Hangs, show) =>
    `The carcass weighs ${kilograms(weight)}${load > 0 ? `, and ${kilograms(load)} stand in it` : ''}; its brackets carry ${kilograms(rating)} together (${bracket === null ? '\`bracket-rating\`' : quoted(bracket)}). Make it smaller or of lighter board, put less in it, or use other brackets. ${show.tell(caution)}`,
});

export const hangsTooHeavy: CarcassRule = {
  name: 'hangs-too-heavy',
  severity: 'error',
  about: {
    what: 'A carcass on the wall is heavier, with what stands in it, than its brackets carry.',
    why: 'A wall carcass that comes down hurts whoever stands before it. All of it is weighed by sizes and densities; what stands in it is what the job says (`load`), what brackets carry is the maker’s figure. No structural approval: what the wall and the screws in it carry is for someone competent to judge on the spot.',
    remedy: 'Use brackets that carry more, part the carcass into two, use lighter board, or put less in it.',
    example: 'kind: wall\nwidth: 900\nload: 20\nfixed-shelves: 2',
    shop: 'habits: { bracket-rating: 60 }',
  },
  check(context) {
    const { spec, carcass, shop, boring } = context;
    const bracket = boring.brackets[0]?.bracket;
    const own = bracket?.rating ?? null;
    const rating = own ?? shop.habits.bracketRating;
    if (rating === null || !isAboveFloor(spec)) return [];
    const [weight, load] = [weightOfAll(carcass.panels), loadIn(spec, carcass)];
    if (weight + load <= rating) return [];
    const named = bracket === undefined || own === null ? null : bracket.name;
    const message = say.hangs({ weight, load, rating, bracket: named, caution: sayOfLoads.noApproval() });
    const repairs = bracket === undefined ? [] : otherBrackets(context, bracket, weight + load);
    return [{ place: spec.name.place, message, repairs }];
  },
};
