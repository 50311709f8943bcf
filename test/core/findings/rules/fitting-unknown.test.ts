import { rule } from './rule-tests.js';

rule('fitting-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\njoint: «dowl-8x30»',
      says: '‘dowl-8x30’ is not a fitting of the shop. Use ‘dowel-8x30’, ‘dowel-8x35’, ‘dowel-10x40’, ‘screw-7x50’ or ‘cam-15’.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\njoint: dowel-8x35' }],
  repairs: [
    [
      'Use ‘dowel-8x30’',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    joint: dowl-8x30\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    joint: dowel-8x30\n',
    ],
  ],
});
