import { rule } from './rule-tests.js';

rule('wardrobe-rail-unknown', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 800\nwardrobe-rails: [{ at: 1700, rail: «tube-52» }]',
      says: '‘tube-52’ is not a wardrobe rail of the shop. Use ‘tube-25’.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: tall\nwidth: 800\nwardrobe-rails: [{ at: 1700, rail: tube-25 }]' }],
  repairs: [
    [
      'Use ‘tube-25’',
      'carcasses:\n  a:\n    kind: tall\n    width: 800\n    wardrobe-rails: [{ at: 1700, rail: tube-52 }] # coats\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 800\n    wardrobe-rails: [{ at: 1700, rail: tube-25 }] # coats\n',
    ],
  ],
});
