import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { rule } from './rule-tests.js';

rule('near-edge', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\nrear-row: «400»',
      says: 'The 46 row holes in left and right stand 70 mm beyond the back edge, where there is no panel. Move them further in.',
      severity: 'error',
      panel: 'left',
    },
    {
      // a hole of 5 whose rim just meets the end
      carcass: 'kind: base\nwidth: 600\nrow-offset: «2.5»',
      says: 'The 4 row holes in left and right open the bottom end: they stand 2.5 mm from it and are 5 mm wide. Move them further in.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: wall\nwidth: 600\nrow-offset: «4»',
      says: 'The 4 row holes in left and right, 4 mm from the bottom end and 5 mm wide, leave 1.5 mm of wood; the minimum is 3 mm (`least-wall`). Move them further in.',
      severity: 'warning',
      panel: 'left',
    },
    {
      carcass: 'kind: wall\nwidth: 600\nrow-offset: «2»',
      says: 'The 4 row holes in left and right open the bottom end: they stand 2 mm from it and are 5 mm wide. Move them further in.',
      severity: 'error',
      panel: 'left',
    },
    {
      // 281 from the front edge and 8 from the end, of a corner of 280 by 280: 9 / sqrt 2 is 6.36 from the cut
      carcass: 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\npanels:\n  bottom: { dowels: «[281]» }',
      says: 'The dowel bore in bottom, 6.36 mm from the slanting edge and 8 mm wide, leaves 2.36 mm of wood; the minimum is 3 mm (`least-wall`). Move it further in.',
      severity: 'warning',
      panel: 'bottom',
    },
    {
      carcass: 'kind: for-drawers\nwidth: 600\nfronts: [«drawer»]\ndrawers: { height: 100 }',
      shop: NEUTRAL_SHOP_TEXT.replace('    box-offset: 30\n', ''),
      says: 'The 6 slide bores in drawer-1-left and drawer-1-right open the lower edge: they stand 0 mm from it and are 3 mm wide. Move them further in (`box-offset` of ‘slide-45’).',
      severity: 'error',
      panel: 'drawer-1-left',
    },
  ],
  sound: [
    // 5.5 less half of 5 is 3.
    { carcass: 'kind: wall\nwidth: 600\nrow-offset: 5.5' },
  ],
  repairs: [
    [
      'Remove `row-offset` and use the usual row offset',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    row-offset: 2.5\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n',
    ],
  ],
});
