import { rule } from './rule-tests.js';

const SHELF = 'carcasses:\n  sink:\n    kind: base\n    width: 600\n    rear-row: 389\n';

rule('drawer-meets-shelf', {
  tells: [
    {
      carcass:
        'kind: base\nwidth: 600\nrear-row: 389\nloose-shelves: [«424»]\nfronts: [drawer, { front: drawer, height: 140 }]',
      says: 'loose-1 lies in the way of drawer-1, which runs through the same room. Move the shelf to where no drawer runs, or remove it.',
      severity: 'error',
      panel: 'loose-1',
    },
  ],
  sound: [
    {
      carcass:
        'kind: base\nwidth: 600\nrear-row: 389\nloose-shelves: [264]\nfronts: [{ front: drawer, height: 140 }, open]',
    },
  ],
  repairs: [
    [
      'Remove loose-2',
      `${SHELF}    loose-shelves: [200, 424]\n    fronts: [{ front: drawer, height: 400 }, open]\n`,
      `${SHELF}    loose-shelves: [200]\n    fronts: [{ front: drawer, height: 400 }, open]\n`,
    ],
  ],
});
