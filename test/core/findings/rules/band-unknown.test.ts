import { rule } from './rule-tests.js';

rule('band-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  left: { bands: { back: «bnad-2» } }',
      says: '‘bnad-2’ is not a band of the shop. Use ‘band-1’, ‘band-04’ or ‘band-2’.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\npanels:\n  left: { bands: { back: none } }' }],
  repairs: [
    [
      'Use ‘band-2’',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      left: { bands: { back: bnad-2 } }\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      left: { bands: { back: band-2 } }\n',
    ],
  ],
});
