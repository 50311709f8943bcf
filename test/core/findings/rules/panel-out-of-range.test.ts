import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { rule } from './rule-tests.js';

rule('panel-out-of-range', {
  tells: [
    {
      // 3000 less two sides of 16
      carcass: 'kind: open\nwidth: «3000»',
      says: 'The length of bottom and top is 2968 mm; ‘end-head’ takes 150 mm to 2600 mm. Change the size, or choose another machine.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrail-width: «55»',
      says: 'The width across a banded edge of rail-front is 55 mm; the minimum of ‘edge-bander’ is 60 mm. Do not force it: band it before it is cut to size, or choose another machine.',
      severity: 'error',
      panel: 'rail-front',
    },
    {
      // The slanting edge is 80 × √2 long.
      carcass: 'kind: wall\nwidth: «400»\ndepth: 320\nback: none\nbrackets: none\ndiagonal: { right: 400 }',
      says: 'The length of a banded edge of bottom and top is 113.14 mm; the minimum of ‘edge-bander’ is 120 mm. Do not force it: band it before it is cut to size, or choose another machine.',
      panel: 'bottom',
    },
    {
      // Both its ends are too short, and it is named once.
      carcass: 'kind: base\nwidth: 600\nrows: none\nangles: none\nfronts: [{ front: fixed, height: «100» }, left]',
      says: 'The length of a banded edge of fixed-1 is 100 mm; the minimum of ‘edge-bander’ is 120 mm. Do not force it: band it before it is cut to size, or choose another machine.',
      panel: 'fixed-1',
    },
    {
      // 1000 less two gaps of 1.5; cups alone are bored in it.
      carcass: 'kind: wall\nwidth: «1000»\nheight: 722\ndoors: left\npulls: none',
      says: 'The width of door-1 is 997 mm; ‘hinge-borer’ takes 150 mm to 900 mm. Change the size, or choose another machine.',
      panel: 'door-1',
      marks: { 'door-1:hinge-1': 1, 'door-1:hinge-2': 1 },
    },
    {
      // The bores of its pull are not made where its cups are.
      carcass: 'kind: wall\nwidth: «1000»\nheight: 722\ndoors: left\npulls: knob',
      says: 'The width of door-1 is 997 mm; ‘hinge-borer’ takes 150 mm to 900 mm. Change the size, or choose another machine.',
      also: [
        'The width of door-1 is 997 mm; ‘face-head’ takes 50 mm to 900 mm. Change the size, or choose another machine.',
      ],
    },
  ],
  sound: [
    {
      // A borer of cups that takes any panel.
      carcass: 'kind: wall\nwidth: 1000\nheight: 722\ndoors: left\npulls: none',
      shop: NEUTRAL_SHOP_TEXT.replace(
        '    panel: { length: 200 to 2800, width: 150 to 900, thickness: 15 to 30 }\n',
        '',
      ),
    },
    { carcass: 'kind: base\nwidth: 600\nrail-width: 100' },
    // The second of two banders takes it.
    {
      carcass: 'kind: wall\nwidth: 400\ndepth: 320\nback: none\nbrackets: none\ndiagonal: { right: 400 }',
      shop: NEUTRAL_SHOP_TEXT.replace('narrowest-panel: 60 }', '$&\n  small-bander: { shortest-edge: 100 }'),
    },
    // 85 × √2 = 120.2.
    { carcass: 'kind: wall\nwidth: 405\ndepth: 320\nback: none\nbrackets: none\ndiagonal: { right: 405 }' },
    {
      carcass:
        'kind: wall\nwidth: 400\ndepth: 320\nback: none\nbrackets: none\ndiagonal: { right: 400 }\npanels: { bottom: { bands: { front: none } }, top: { bands: { front: none } } }',
      besides: ['band-missing', 'band-missing'],
    },
  ],
});
