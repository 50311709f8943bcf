import { rule } from './rule-tests.js';

rule('dowel-depths', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: «15» }',
      says: 'The bores of bottom, left and right add up to 27 mm (12 mm in the face of left, 15 mm in the end of bottom), but ‘dowel-8x30’ is 3 mm longer. Change a depth so that both together are 31 mm: 30 mm for the dowel and 1 mm for the glue (between 0.5 mm and 2 mm).',
      severity: 'error',
      panel: 'bottom',
      related: [
        ['sink', 'left is bored 12 mm deep for bottom.'],
        ['sink', 'right is bored 12 mm deep for bottom.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { face-depth: «10» }',
      says: 'The bores of left, bottom and top add up to 29 mm (10 mm in the face of left, 19 mm in the end of bottom), but ‘dowel-8x30’ is 1 mm longer. Change a depth so that both together are 31 mm: 30 mm for the dowel and 1 mm for the glue (between 0.5 mm and 2 mm).',
      severity: 'error',
      panel: 'left',
      related: [
        ['sink', 'bottom is bored 19 mm deep for left.'],
        ['sink', 'top is bored 19 mm deep for left.'],
      ],
    },
    {
      // 12 + 18.4 - 30
      carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: «18.4» }',
      says: 'The bores of bottom, left and right add up to 30.4 mm (12 mm in the face of left, 18.4 mm in the end of bottom), which leaves only 0.4 mm for the glue of ‘dowel-8x30’. Change a depth so that both together are 31 mm: 30 mm for the dowel and 1 mm for the glue (between 0.5 mm and 2 mm).',
      severity: 'error',
      panel: 'bottom',
      related: [
        ['sink', 'left is bored 12 mm deep for bottom.'],
        ['sink', 'right is bored 12 mm deep for bottom.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: «20.1» }',
      says: 'The bores of bottom, left and right add up to 32.1 mm (12 mm in the face of left, 20.1 mm in the end of bottom), which leaves 2.1 mm for the glue of ‘dowel-8x30’. Change a depth so that both together are 31 mm: 30 mm for the dowel and 1 mm for the glue (between 0.5 mm and 2 mm).',
      severity: 'error',
      panel: 'bottom',
      related: [
        ['sink', 'left is bored 12 mm deep for bottom.'],
        ['sink', 'right is bored 12 mm deep for bottom.'],
      ],
    },
  ],
  sound: [
    // 12 + 20 and 12 + 18.5 leave 2 and 0.5 for the glue: the bounds are inside.
    { carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 20 }' },
    { carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 18.5 }' },
  ],
  repairs: [
    [
      'Bore bottom 19 mm deep, which makes 31 mm with left and right',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      bottom: { end-depth: 25 mm }\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      bottom: { end-depth: 19 }\n',
    ],
  ],
});
