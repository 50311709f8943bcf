import { rule } from './rule-tests.js';

rule('dowels-unmatched', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { dowels: «[53, 117, 245]» }',
      says: 'left and bottom and top do not match: at bottom, left has 3 bores and bottom has 3; counted from the carcass front, without a mate are 117 mm and 245 mm in left and 181 mm and 277 mm in bottom. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'left',
      related: [
        ['sink', 'bottom is bored for left at 53 mm, 181 mm and 277 mm from the carcass front.'],
        ['sink', 'top is bored for left at 53 mm, 181 mm and 277 mm from the carcass front.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { dowels: «[53, 277]» }',
      says: 'bottom and left and right do not match: at left, bottom has 2 bores and left has 3; counted from the carcass front, without a mate are none in bottom and 181 mm in left. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'bottom',
      related: [
        ['sink', 'left is bored for bottom at 53 mm, 181 mm and 277 mm from the carcass front.'],
        ['sink', 'right is bored for bottom at 53 mm, 181 mm and 277 mm from the carcass front.'],
      ],
    },
    {
      // counted from the shelf's own front edge, which stands 20 back
      carcass:
        'kind: wall\nwidth: 600\nfixed-shelves:\n  - { at: 360, setback: 20 }\npanels:\n  shelf-1: { dowels: «[53, 213]» }',
      says: 'shelf-1 and left and right do not match: at left, shelf-1 has 2 bores and left has 3; counted from the carcass front, without a mate are 73 mm and 233 mm in shelf-1 and 53 mm, 181 mm and 277 mm in left. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'shelf-1',
      related: [
        ['sink', 'left is bored for shelf-1 at 53 mm, 181 mm and 277 mm from the carcass front.'],
        ['sink', 'right is bored for shelf-1 at 53 mm, 181 mm and 277 mm from the carcass front.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { joint: «dowel-10x40» }\n  bottom: { joint: dowel-8x30 }',
      says: 'left and bottom do not match: the bores in the face of left are 10 mm wide and those in the end of bottom 8 mm. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'left',
      related: [['sink', 'bottom is bored for left at 53 mm, 181 mm and 277 mm from the carcass front.']],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { joint: «screw-7x50» }\n  bottom: { joint: dowel-8x30 }',
      says: 'left and bottom do not match: left is bored for a connector screw and bottom for a dowel. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'left',
      related: [['sink', 'bottom is bored for left at 53 mm, 181 mm and 277 mm from the carcass front.']],
    },
    {
      carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  left: { face-depth: «10» }',
      says: 'left and bottom and top do not match: the holes for the screws are 10 mm deep in left, which is 16 mm thick, and do not come through. Leave their depth to the fitting.',
      severity: 'error',
      panel: 'left',
      related: [
        ['sink', 'bottom is bored for left at 53 mm, 181 mm and 277 mm from the carcass front.'],
        ['sink', 'top is bored for left at 53 mm, 181 mm and 277 mm from the carcass front.'],
      ],
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\njoint: cam-15\nloose-shelves: 1' },
    { carcass: 'kind: base\nwidth: 600\ntop: over\nbottom: under' },
    { carcass: 'kind: open\nwidth: 800\nfixed-shelves: 2' },
  ],
  repairs: [
    [
      'Bore left at 53 mm, 181 mm and 277 mm, like bottom and top',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 245]\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 181, 277]\n',
    ],
    [
      'Take out its own list of dowels of left, so that it is bored like bottom and top',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 245]\n        rows: both\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        rows: both\n',
    ],
  ],
});
