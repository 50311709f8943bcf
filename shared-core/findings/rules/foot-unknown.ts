import { NO_FOOT } from '../../shop/habits.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const footUnknown: CarcassRule = {
  name: 'foot-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A foot is named that the shop does not have.',
    why: 'It decides where the bottom and the plinth are bored, and how high a plinth can be. Until the name is right, the bottom is bored for the shop’s usual foot, or for none where it has none.',
    remedy: 'Use a foot of the shop file, add this one there, or write `none`.',
    example: 'kind: base\nwidth: 600\nplinth: 120\nfeet: foot-9',
  },
  check({ spec, shop }) {
    const isAsked = spec.plinth.value > 0 && spec.feet.value !== NO_FOOT;
    return isAsked ? unknownNames([spec.feet], [...shop.feet.keys()], 'foot') : [];
  },
};
