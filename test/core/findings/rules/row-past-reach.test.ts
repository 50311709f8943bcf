import { rule } from './rule-tests.js';

rule('row-past-reach', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\ndepth: 800\nrear-row: «741»',
      says: 'The rear row of left and right stands 741 mm from the front edge; the maximum of ‘row-drill’ is 700 mm (`throat`). Move the row toward the front, or choose a drill with a deeper throat.',
      severity: 'error',
      panel: 'left',
      offers: [
        '> Move the rear row to 677 mm from the front edge, 20 pitches behind the front row',
        'Leave the rear row out',
      ],
    },
    {
      // 900 deep: clear 881, less the margin of 37: 37 + 25 x 32 = 837
      carcass: 'kind: base\nwidth: 600\ndepth: «900»',
      says: 'The rear row of left and right stands 837 mm from the front edge; the maximum of ‘row-drill’ is 700 mm (`throat`). Move the row toward the front, or choose a drill with a deeper throat.',
      severity: 'error',
      panel: 'left',
    },
    {
      // 29 in = 736.6 mm
      carcass: 'kind: base\nwidth: 24\ndepth: 32\nrear-row: «29»',
      unit: 'in',
      says: 'The rear row of left and right stands 29 in from the front edge; the maximum of ‘row-drill’ is 27.559 in (`throat`). Move the row toward the front, or choose a drill with a deeper throat.',
      severity: 'error',
      panel: 'left',
    },
  ],
  sound: [
    // 37 + 20 x 32 = 677 is the deepest row that both heads reach, 700 the throat
    {
      carcass:
        'kind: base\nwidth: 600\ndepth: 740\nback: none\nrear-row: 677\nmachines: { clamp: case-clamp }\nheight: 720',
      besides: ['clamp-too-small'],
    },
  ],
  repairs: [
    [
      'Move the rear row to 677 mm from the front edge, 20 pitches behind the front row',
      'unit: mm\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    depth: 800\n    rear-row: 741 # deep\n  b:\n    kind: base\n    width: 400\n',
      'unit: mm\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    depth: 800\n    rear-row: 677 # deep\n  b:\n    kind: base\n    width: 400\n',
    ],
  ],
});
