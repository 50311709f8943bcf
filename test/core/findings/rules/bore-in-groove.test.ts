import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { rule } from './rule-tests.js';

rule('bore-in-groove', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: «542»',
      says: 'The 46 row holes in left and right, 542 mm from the front edge, meet the groove of the back, which runs from 541 mm to 544.2 mm. Move the bores toward the front edge.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: «537»\nback: { how: grooved, inset: 16 }',
      says: 'The 46 row holes in left and right, 537 mm from the front edge, leave 1.5 mm of wood before the groove of the back, which runs from 541 mm to 544.2 mm; the minimum is 3 mm (`least-wall`). Move the bores toward the front edge.',
      severity: 'warning',
      panel: 'left',
      related: [['16', 'The place of the groove is set here.']],
    },
    {
      // counted from the lower edge the groove of the bottom runs from 12 to 15.2, and the screws stand at 14
      carcass: 'kind: for-drawers\nwidth: 600\nfronts: [«drawer»]\ndrawers: { height: 100 }',
      shop: NEUTRAL_SHOP_TEXT.replace('box-offset: 30', 'box-offset: 14').replace('box-depth: 8', 'box-depth: 11'),
      says: 'The 6 slide bores in drawer-1-left and drawer-1-right, 86 mm from the upper edge, meet the groove of the drawer bottom, which runs from 84.8 mm to 88 mm. Move the bores toward the upper edge (`box-offset` of ‘slide-45’).',
      severity: 'error',
      panel: 'drawer-1-left',
      related: [],
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
