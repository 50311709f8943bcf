import { rule } from './rule-tests.js';

rule('bore-in-groove', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: «542»',
      says: 'The 46 row holes in left and right, 542 mm from the front edge, meet the groove of the back, which runs from 541 mm to 544.2 mm. Move the bores toward the front.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: «537»\nback: { how: grooved, inset: 16 }',
      says: 'The 46 row holes in left and right, 537 mm from the front edge, leave 1.5 mm of wood before the groove of the back, which runs from 541 mm to 544.2 mm; the minimum is 3 mm (`least-wall`). Move the bores toward the front.',
      severity: 'warning',
      panel: 'left',
      related: [['16', 'The place of the groove is set here.']],
    },
  ],
  sound: [
    // 541 less 3 and half of 5 is 535.5.
    { carcass: 'kind: base\nwidth: 600\nrear-row: 535.5' },
    { carcass: 'kind: base\nwidth: 600\nback: rebated' },
    { carcass: 'kind: base\nwidth: 600\nback: none' },
  ],
  repairs: [
    [
      'Remove `rear-row` and use the usual place of the rear row',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rear-row: 542\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n',
    ],
  ],
});
