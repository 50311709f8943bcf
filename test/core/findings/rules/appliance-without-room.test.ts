import { rule } from './rule-tests.js';

const job = (shelves: string): string =>
  `carcasses:\n  sink:\n    kind: tall\n    width: 600\n    back: none\n    loose-shelves: ${shelves} # trays\n    fronts: [left, { front: appliance, height: 595 }, { front: fixed, height: 560 }]\n`;

rule('appliance-without-room', {
  tells: [
    {
      // 560 and the gap of 3 are under the place: it is open from 563 to 1158.
      carcass:
        'kind: tall\nwidth: 600\nback: none\nloose-shelves: [904, 936, 1576]\nfronts: [left, { front: «appliance», height: 595 }, { front: fixed, height: 560 }]',
      says: 'loose-1 and loose-2 stand in the place of the appliance, which is 595 mm high. Move them to where the appliance does not stand, or remove them.',
      severity: 'error',
    },
  ],
  sound: [
    {
      carcass:
        'kind: tall\nwidth: 600\nback: none\nloose-shelves: [1576]\nfronts: [left, { front: appliance, height: 595 }, { front: fixed, height: 560 }]',
    },
  ],
  repairs: [['Remove loose-1', job('[904, 1576]'), job('[1576]')]],
});
