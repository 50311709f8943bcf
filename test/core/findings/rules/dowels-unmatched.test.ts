import { rule } from './rule-tests.js';

rule('dowels-unmatched', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { dowels: «[21, 117, 245]» }',
      says: 'The bores of left, bottom and top do not match. At bottom, left has 3 bores and bottom has 4. No bore lies opposite 117 mm and 245 mm in left or opposite 85 mm, 213 mm and 277 mm in bottom, counted from the front of the carcass. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'left',
      related: [
        ['sink', 'bottom is bored for left at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.'],
        ['sink', 'top is bored for left at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { dowels: «[21, 277]» }',
      says: 'The bores of bottom, left and right do not match. At left, bottom has 2 bores and left has 4. No bore lies opposite 85 mm and 213 mm in left, counted from the front of the carcass. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'bottom',
      related: [
        ['sink', 'left is bored for bottom at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.'],
        ['sink', 'right is bored for bottom at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.'],
      ],
    },
    {
      // counted from the shelf's own front edge, which stands 20 back
      carcass:
        'kind: wall\nwidth: 600\nfixed-shelves:\n  - { at: 360, setback: 20 }\npanels:\n  shelf-1: { dowels: «[53, 213]» }',
      says: 'The bores of shelf-1, left and right do not match. At left, shelf-1 has 2 bores and left has 3. No bore lies opposite 73 mm and 233 mm in shelf-1 or opposite 53 mm, 181 mm and 277 mm in left, counted from the front of the carcass. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'shelf-1',
      related: [
        ['sink', 'left is bored for shelf-1 at 53 mm, 181 mm and 277 mm from the carcass front.'],
        ['sink', 'right is bored for shelf-1 at 53 mm, 181 mm and 277 mm from the carcass front.'],
      ],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { joint: «dowel-10x40» }\n  bottom: { joint: dowel-8x30 }',
      says: 'The bores of left and bottom do not match: those in the face of left are 10 mm wide and those in the end of bottom 8 mm. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'left',
      related: [['sink', 'bottom is bored for left at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.']],
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { joint: «screw-7x50» }\n  bottom: { joint: dowel-8x30 }',
      says: 'The bores of left and bottom do not match: left is bored for a connector screw and bottom for a dowel. Give both the same places and the same fitting.',
      severity: 'error',
      panel: 'left',
      related: [['sink', 'bottom is bored for left at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.']],
    },
    {
      carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  left: { face-depth: «10» }',
      says: 'The bores of left, bottom and top do not match: the screw holes are only 10 mm deep in left, which is 16 mm thick, and do not come through. Leave their depth to the fitting.',
      severity: 'error',
      panel: 'left',
      related: [
        ['sink', 'bottom is bored for left at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.'],
        ['sink', 'top is bored for left at 21 mm, 85 mm, 213 mm and 277 mm from the carcass front.'],
      ],
    },
  ],
  sound: [
    // The sides are bored where the bottom is.
    { carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-dowels: [53, 149, 277] }' },
    { carcass: 'kind: wall\nwidth: 600\njoint: cam-15\nloose-shelves: 1' },
    { carcass: 'kind: base\nwidth: 600\ntop: over\nbottom: under' },
    { carcass: 'kind: open\nwidth: 800\nfixed-shelves: 2' },
  ],
  repairs: [
    [
      'Bore left and right for bottom at the same places (`end-dowels`)',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      bottom: { dowels: [53, 149, 277] }\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      bottom: { end-dowels: [53, 149, 277] }\n',
    ],
    [
      'Bore left at 21 mm, 85 mm, 213 mm and 277 mm, like bottom and top',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 245]\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [21, 85, 213, 277]\n',
    ],
    [
      'Remove `dowels` of left, so that it is bored like bottom and top',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 245]\n        rows: both\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        rows: both\n',
    ],
  ],
});
