import { rule } from './rule-tests.js';

rule('panel-out-of-range', {
  tells: [
    {
      // 3000 less two sides of 16
      carcass: 'kind: open\nwidth: «3000»',
      says: 'bottom and top are 2968 mm long; ‘end-head’ takes between 150 mm and 2600 mm. Change the size, or choose another machine.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrail-width: «55»',
      says: 'rail-front is 55 mm wide across a banded edge; ‘edge-bander’ takes at least 60 mm. Do not force it: band before cutting to size, or choose another machine.',
      severity: 'error',
      panel: 'rail-front',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nrail-width: 100' }],
});
