import { rule } from './rule-tests.js';

rule('shelf-off-grid', {
  tells: [
    {
      // 8 + 10 x 32 = 328
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [«330»]',
      says: 'loose-1 stands at 330 mm, between the holes of left at 328 mm and 360 mm (first hole 8 mm, pitch 32 mm). Move the shelf to one of them.',
      severity: 'warning',
      panel: 'loose-1',
    },
    {
      carcass: 'kind: base\nwidth: 900\nrow-offset: 24\ndividers: 1\nloose-shelves:\n  - { at: «340», bay: 2 }',
      says: 'loose-1 stands at 340 mm, between the holes of divider-1 at 312 mm and 344 mm (first hole 24 mm, pitch 32 mm). Move the shelf to one of them.',
      severity: 'warning',
      panel: 'loose-1-bay-2',
      related: [['24', 'The rows start 24 mm from the bottom end.']],
    },
    {
      // 12.914 in is 328.016 mm: a figure that no hole is shown as.
      carcass: 'kind: base\nwidth: 24\nloose-shelves: [«12.914»]',
      unit: 'in',
      says: 'loose-1 stands at 12.914 in, between the holes of left at 12.913 in and 14.173 in (first hole 0.315 in, pitch 32 mm). Move the shelf to one of them.',
    },
  ],
  sound: [
    // 12.913 in is 327.99 mm, and the hole at 328 mm is shown as 12.913 in.
    { carcass: 'kind: base\nwidth: 24\nloose-shelves: [12.913]', unit: 'in' },
    {
      carcass: 'kind: base\nwidth: 24\nloose-shelves: [12.913]\nrow-holes: { from: 12.913, to: 24 }',
      unit: 'in',
      besides: ['partial-rows-cost'],
    },
    { carcass: 'kind: wall\nwidth: 600\nloose-shelves: [328, 488]' },
    { carcass: 'kind: base\nwidth: 900\ndividers: 1\nfixed-shelves: 1' },
    // A fixed shelf has bores of its own: here half way between two holes of the rows.
    { carcass: 'kind: base\nwidth: 600\nfixed-shelves: [344]' },
  ],
  repairs: [
    [
      'Move loose-1 up to 360 mm (hole 12)',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: [ 350 ] # as drawn\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: [ 360 ] # as drawn\n',
    ],
    // The two sides differ: the odd one comes back to the carcass's grid.
    [
      'Start the rows of right where those of the carcass start',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { row-offset: 24, bands: { back: band-1 } }\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { bands: { back: band-1 } }\n',
    ],
  ],
});
