import { mayHavePull, pullNames } from '../../carcass/fronts/pull.js';
import { NO_PULL } from '../../shop/habits.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const pullUnknown: CarcassRule = {
  name: 'pull-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A pull is named that the shop does not have.',
    why: 'It decides how many bores a front gets and how far apart they stand; a front bored for another pull is lost. Until the name is right, fronts are bored for the shop’s usual pull, or for none where it has none.',
    remedy: 'Use a pull of the shop file, add this one there, or write `none` for fronts without one.',
    example: 'kind: base\nwidth: 600\ndoors: left\npulls: bar-106',
  },
  check({ spec, carcass, shop }) {
    const names = carcass.panels.filter(mayHavePull).map(pullNames(spec));
    const asked = names.filter((name) => name !== null && name.value !== NO_PULL);
    return asked.length === 0 ? [] : unknownNames(asked, [...shop.pulls.keys()], 'pull');
  },
};
