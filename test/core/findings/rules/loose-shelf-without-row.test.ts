import { rule } from './rule-tests.js';

rule('loose-shelf-without-row', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 900\ndividers: 1\nloose-shelves: [{ at: «360», bay: 2 }]\nrow-holes: { bays: [1] }',
      says: 'loose-1-bay-2 has no front and rear rows of pin holes on divider-1 and right, because `row-holes` leaves them out. Take in the bays and the heights of loose shelves.',
    },
    {
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [«136»]\nrow-holes: { from: 200, to: 520 }',
      says: 'loose-1 stands at 136 mm, and the front row of left has holes only from 200 mm to 520 mm. Move the shelf to a height between them.',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrows: «front»\nloose-shelves: 1',
      says: 'loose-1 has no rear row of pin holes on left and right (`rows: front`). Bore both rows with `rows: both`.',
      severity: 'error',
      panel: 'loose-1',
      related: [['1', 'loose-1 stands at 360 mm.']],
    },
    {
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [328, 488]\npanels:\n  right: { rows: «none» }',
      says: 'loose-1 and loose-2 have no front and rear rows of pin holes on right (`rows: none`). Bore both rows with `rows: both`.',
      severity: 'error',
      panel: 'loose-1',
      related: [
        ['328', 'loose-1 stands at 328 mm.'],
        ['488', 'loose-2 stands at 488 mm.'],
      ],
    },
    {
      // 104 + 19 x 32 = 712
      carcass: 'kind: base\nwidth: 600\nrow-offset: 104\nloose-shelves: [«72»]',
      says: 'loose-1 stands at 72 mm, and the front row of left has holes only from 104 mm to 712 mm. Move the shelf to a height between them.',
      severity: 'error',
      panel: 'loose-1',
    },
    {
      // 120 deep: clear 101, so no second row before 64
      carcass: 'kind: open\nwidth: 600\ndepth: 120\nloose-shelves: [«328»]',
      says: 'loose-1 has no rear row of pin holes on left and right, because there is no room behind the front row. Make the carcass deeper, or the shelf a fixed one.',
      severity: 'error',
      panel: 'loose-1',
    },
    {
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [{ at: 360, setback: «40» }]',
      says: 'loose-1 reaches from 40 mm to 540 mm behind the front and does not lie on its front pins, which stand at 37 mm in left. Make the setback of the shelf smaller.',
      severity: 'error',
      panel: 'loose-1',
    },
    {
      // 560 less the play of 1; the pin's hole reaches to 559.5
      carcass: 'kind: base\nwidth: 600\nback: none\nrear-row: «557»\nloose-shelves: 1',
      says: 'loose-1 reaches from 5 mm to 559 mm behind the front and does not lie on its rear pins, which stand at 557 mm in left. Move the rear row toward the front.',
      severity: 'error',
      panel: 'loose-1',
    },
  ],
  sound: [
    {
      carcass:
        'kind: wall\nwidth: 900\ndividers: 1\nloose-shelves: [{ at: 360, bay: 2 }]\nrow-holes: { bays: [2], round-shelves: 2 }',
      besides: ['partial-rows-cost'],
    },
    { carcass: 'kind: base\nwidth: 600\nloose-shelves: 2' },
    { carcass: 'kind: tall\nwidth: 600\nfixed-shelves: 2\nloose-shelves: 4' },
    { carcass: 'kind: base\nwidth: 900\ndividers: 1\nloose-shelves: 1' },
  ],
  repairs: [
    [
      'Bore both rows on right',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { rows: front }\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { rows: both }\n',
    ],
  ],
});
