import { rule } from './rule-tests.js';

rule('foot-out-of-range', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nplinth: «89.9»\nfeet: level-foot',
      says: 'The plinth is 89.9 mm high, and ‘level-foot’ can be set from 90 mm to 160 mm. Make the plinth as high as a foot can be, or use another foot.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nplinth: 90\nfeet: level-foot' },
    { carcass: 'kind: base\nwidth: 600\nplinth: 160\nfeet: level-foot' },
  ],
  repairs: [
    [
      'Make the plinth 160 mm high',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    plinth: 180 # tiles\n    feet: level-foot\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    plinth: 160 # tiles\n    feet: level-foot\n',
    ],
  ],
});
