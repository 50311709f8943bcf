import { doorKeys } from '../../carcass/fronts/asked.js';
import { NO_HINGE } from '../../shop/habits.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const hingeUnknown: CarcassRule = {
  name: 'hinge-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A hinge is named that the shop does not have.',
    why: 'It decides diameter, depth and place of the cups, and the bores of the plates. Until the name is right, doors are bored for the shop’s usual hinge.',
    remedy: 'Use a hinge of the shop file, add this one there, or write `none` for doors without bores for hinges.',
    example: 'kind: wall\nwidth: 600\ndoors: { hung: left, hinge: hinge-101 }',
  },
  check({ spec, shop }) {
    const { hinge } = spec.doors;
    if (doorKeys(spec).length === 0 || hinge.value === NO_HINGE) return [];
    return unknownNames([hinge], [...shop.hinges.keys()], 'hinge');
  },
};
