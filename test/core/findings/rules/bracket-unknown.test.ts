import { rule } from './rule-tests.js';

rule('bracket-unknown', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\nbrackets: «hook-310»',
      says: '‘hook-310’ is not a bracket of the shop. Use ‘hook-130’.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\nbrackets: hook-130' },
    { carcass: 'kind: wall\nwidth: 600\nbrackets: none' },
    // One that stands on the floor has none, and that is told.
    { carcass: 'kind: base\nwidth: 600\nbrackets: hook-310', besides: ['value-unused'] },
  ],
  repairs: [
    [
      'Use ‘hook-130’',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    brackets: hook-310 # by the stairs\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    brackets: hook-130 # by the stairs\n',
    ],
  ],
});
