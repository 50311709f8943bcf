import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const wardrobeRailUnknown: CarcassRule = {
  name: 'wardrobe-rail-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A wardrobe rail is named that the shop does not have.',
    why: 'It decides how the uprights are bored and how long the rail is cut. Until the name is right, the shop’s usual rail is taken.',
    remedy: 'Use a wardrobe rail of the shop file, or add this one there.',
    example: 'kind: tall\nwidth: 800\nwardrobe-rails: [{ at: 1700, rail: tube-30 }]',
  },
  check({ spec, shop }) {
    const names = (spec.wardrobeRails?.value ?? []).map(({ value }) => value.rail);
    return unknownNames(names, [...shop.wardrobeRails.keys()], 'wardrobe-rail');
  },
};
