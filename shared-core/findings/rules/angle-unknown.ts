import { standsStill } from '../../carcass/fronts/still.js';
import { NO_ANGLE } from '../../shop/habits.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const angleUnknown: CarcassRule = {
  name: 'angle-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'An angle is named that the shop does not have.',
    why: 'It decides where fixed fronts, blind panels and fillers are bored, and what stands behind them. Until the name is right, they are bored for the shop’s usual angle, or for none where it has none.',
    remedy: 'Use an angle of the shop file, add this one there, or write `none`.',
    example: 'kind: base\nwidth: 600\nfronts: [{ front: fixed, height: 140 }, pair]\nangles: angle-9',
  },
  check({ spec, carcass, shop }) {
    const isAsked = carcass.panels.some(standsStill) && spec.angles.value !== NO_ANGLE;
    return isAsked ? unknownNames([spec.angles], [...shop.angles.keys()], 'angle') : [];
  },
};
