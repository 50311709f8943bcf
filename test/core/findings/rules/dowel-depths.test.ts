import { rule } from './rule-tests.js';

rule('dowel-depths', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: «15» }',
      says: 'The bores of bottom and left and right do not add up: 12 mm in the face of left and 15 mm in the end of bottom make 27 mm; dowel-8x30 is 30 mm long and wants 1 mm for the glue (0.5 mm to 2 mm): the dowel is 3 mm longer than its two bores. Change one of the depths.',
      severity: 'error',
      panel: 'bottom',
      related: [
        ['sink', 'left is bored 12 mm deep for bottom.'],
        ['sink', 'right is bored 12 mm deep for bottom.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { face-depth: «10» }',
      says: 'The bores of left and bottom and top do not add up: 10 mm in the face of left and 19 mm in the end of bottom make 29 mm; dowel-8x30 is 30 mm long and wants 1 mm for the glue (0.5 mm to 2 mm): the dowel is 1 mm longer than its two bores. Change one of the depths.',
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
      says: 'The bores of bottom and left and right do not add up: 12 mm in the face of left and 18.4 mm in the end of bottom make 30.4 mm; dowel-8x30 is 30 mm long and wants 1 mm for the glue (0.5 mm to 2 mm): that leaves 0.4 mm, too little. Change one of the depths.',
      severity: 'error',
      panel: 'bottom',
      related: [
        ['sink', 'left is bored 12 mm deep for bottom.'],
        ['sink', 'right is bored 12 mm deep for bottom.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: «20.1» }',
      says: 'The bores of bottom and left and right do not add up: 12 mm in the face of left and 20.1 mm in the end of bottom make 32.1 mm; dowel-8x30 is 30 mm long and wants 1 mm for the glue (0.5 mm to 2 mm): that leaves 2.1 mm, too much. Change one of the depths.',
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
