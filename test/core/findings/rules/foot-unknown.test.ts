import { rule } from './rule-tests.js';

rule('foot-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nplinth: 120\nfeet: «level-fot»',
      says: '‘level-fot’ is not a foot of the shop. Use ‘level-foot’.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nplinth: 120\nfeet: level-foot' },
    { carcass: 'kind: base\nwidth: 600\nplinth: 120\nfeet: none' },
  ],
});
