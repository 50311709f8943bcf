import { NO_BRACKET } from '../../shop/habits.js';
import { isAboveFloor } from '../../job/above-floor.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const bracketUnknown: CarcassRule = {
  name: 'bracket-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A hanging bracket is named that the shop does not have.',
    why: 'It decides where the sides are bored and what the carcass may weigh. Until the name is right, the sides are bored for the shop’s usual bracket, or for none where it has none.',
    remedy: 'Use a bracket of the shop file, add this one there, or write `none`.',
    example: 'kind: wall\nwidth: 600\nbrackets: hanger-9',
  },
  check({ spec, shop }) {
    const isAsked = isAboveFloor(spec) && spec.brackets.value !== NO_BRACKET;
    return isAsked ? unknownNames([spec.brackets], [...shop.brackets.keys()], 'bracket') : [];
  },
};
