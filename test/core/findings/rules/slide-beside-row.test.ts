import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { rule } from './rule-tests.js';

rule('slide-beside-row', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nfronts: [«drawer», drawer]',
      says: '4 screws of slides in left and right find no hole of a row and are bored extra, 389 mm from the front edge. Put the rear row there, or use a slide whose screws are in the rows.',
      severity: 'info',
    },
    {
      // No rear row at all, and the front one where the front screws are not.
      carcass: 'kind: base\nwidth: 600\nrows: front\nrow-setback: 41\nfronts: [«drawer»]',
      says: '4 screws of slides in left and right find no hole of a row and are bored extra, 37 mm and 389 mm from the front edge. Put the rear row there, or use a slide whose screws are in the rows.',
    },
  ],
  sound: [
    // They stand at holes that they do not fit.
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [drawer]',
      shop: NEUTRAL_SHOP_TEXT.replace('body-height: 46\n    diameter: 5', 'body-height: 46\n    diameter: 3'),
      besides: ['bores-collide', 'bores-collide'],
    },
    { carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [drawer, drawer]' },
    // Without rows nothing stands beside them.
    { carcass: 'kind: base\nwidth: 600\nrows: none\nfronts: [drawer, drawer]' },
  ],
  repairs: [
    [
      'Put the rear rows 389 mm from the front edge',
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n    fronts: [drawer, drawer]\n',
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n    fronts: [drawer, drawer]\n    rear-row: 389\n',
    ],
  ],
});
