import { rule } from './rule-tests.js';

const job = (strip: string): string =>
  `carcasses:\n  sink:\n    kind: base\n    width: 1100\n    blind: { right: 580, strip: ${strip} } # the stove stands there\n    doors: left\n    pulls: bar-160\n`;

rule('pull-meets-corner', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 1100\nblind: { right: 580, strip: «20» }\ndoors: left\npulls: bar-160',
      says: '‘bar-160’ on door-1 stands out 35 mm, and between the run in the corner and the next front there are 23 mm: with such pulls on both runs, neither opens past those of the other. Make the `strip` of the blind panel wider, and the filler of the other run as wide.',
      severity: 'warning',
      panel: 'door-1',
    },
    {
      // Inset, beside a divider of 16 in the middle of 500: its face is 8 on, and 3 of gap are left.
      carcass:
        'kind: base\nwidth: 1100\nblind: { right: 590, strip: «10» }\ndividers: [500]\ndoors: { how: inset, bays: [left, none] }\npulls: bar-160',
      says: '‘bar-160’ on door-1 stands out 35 mm, and between the run in the corner and the next front there are 21 mm: with such pulls on both runs, neither opens past those of the other. Make the `strip` of the blind panel wider, and the filler of the other run as wide.',
    },
  ],
  sound: [
    // The same with the divider 14 further on.
    {
      carcass:
        'kind: base\nwidth: 1100\nblind: { right: 590, strip: 10 }\ndividers: [486]\ndoors: { how: inset, bays: [left, none] }\npulls: bar-160',
      besides: ['cannot-be-bored'],
    },
    { carcass: 'kind: base\nwidth: 1100\nblind: { right: 580, strip: 20 }\ndoors: left' },
    { carcass: 'kind: base\nwidth: 1100\nblind: { right: 580 }\ndoors: left\npulls: bar-160' },
  ],
  repairs: [['Leave 37 mm of the blind panel to be seen', job('20'), job('37')]],
});
