import { keysOfKind } from '../../carcass/fronts/asked.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const slideUnknown: CarcassRule = {
  name: 'slide-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A slide is named that the shop does not have.',
    why: 'It decides how wide and how long the drawers are, and where the bores for its screws stand. Until the name is right, drawers are made for the shop’s usual slide.',
    remedy: 'Use a slide of the shop file, or add this one there.',
    example: 'kind: base\nwidth: 600\nfronts: [drawer, drawer]\ndrawers: { slide: slide-54 }',
  },
  check({ spec, shop }) {
    return keysOfKind(spec, 'drawer').length === 0
      ? []
      : unknownNames([spec.drawers.slide], [...shop.slides.keys()], 'slide');
  },
};
