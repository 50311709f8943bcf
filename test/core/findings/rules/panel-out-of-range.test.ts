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
  ],
  sound: [
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
