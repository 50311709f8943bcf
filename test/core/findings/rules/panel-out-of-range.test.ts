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
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nrail-width: 100' }],
});
