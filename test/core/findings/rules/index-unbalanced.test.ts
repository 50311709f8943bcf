import { rule } from './rule-tests.js';

const EVERYWHERE = `G: { side: left, range: 0 to 1600, lowers: yes }, H: { side: right, range: 0 to 1600, lowers: yes }`;
const drill = (pins: 'row' | 'none', stops: string): string => `line-drills:
  row-drill: { spindles: 27, pitch: 32, heads: 2, fence: far, from: above, setback: 20 to 80, head-distance: 96 to 640,
    throat: 700, depth: 0 to 60, index-pins: ${pins}, stops: { ${stops} } }
`;
/** A drill that goes on past one stroke by stops alone. */
const WITHOUT_PINS = drill('none', EVERYWHERE);

/** Where nothing takes time. */
const FREE = `${drill('row', EVERYWHERE)}
handling: { panel: 0, lay: 0, stroke: 0, index-move: 0 }
changeover: { stop: 0, fence: 0, bit: 0, depth: 0, turn-head: 0, extension: 0, machine: 0 }
`;

rule('index-unbalanced', {
  tells: [
    {
      // 880 = 27 x 32 + 16: one hole more than one stroke bores
      carcass: 'kind: tall\nwidth: 600\nheight: «880»',
      says: 'The rows of left and right cannot be bored evenly from both ends: they have an even count of 28 holes, and ‘row-drill’ has an odd count of 27 spindles. With 27 holes they take 2 strokes and 19 min 58 s less. Give them one hole more or less, or accept the cost.',
      severity: 'info',
      panel: 'left',
      offers: [
        'Start the rows half a pitch further in, 24 mm from the ends (27 holes)',
        'Make the carcass 848 mm high, one pitch lower (27 holes)',
      ],
      marks: { 'left:row-front': 28, 'left:row-rear': 28, 'right:row-front': 28, 'right:row-rear': 28 },
    },
    {
      // Rows that begin elsewhere are told apart: 27 x 32 + 8 and + 18 leave 18 and 8 to the top end.
      carcass: 'kind: tall\nwidth: 600\nheight: «890»\npanels:\n  right: { row-offset: 18 }',
      says: 'The rows of left cannot be bored evenly from both ends: they have an even count of 28 holes, and ‘row-drill’ has an odd count of 27 spindles. With 27 holes they take 1 stroke and 19 min 44 s less. Give them one hole more or less, or accept the cost.',
      also: [
        'The rows of right cannot be bored evenly from both ends: they have an even count of 28 holes, and ‘row-drill’ has an odd count of 27 spindles. With 27 holes they take 1 stroke and 19 min 44 s less. Give them one hole more or less, or accept the cost.',
      ],
      marks: { 'left:row-front': 28, 'left:row-rear': 28 },
    },
    {
      carcass: 'kind: tall\nwidth: 600\nheight: «1072»',
      shop: WITHOUT_PINS,
      says: 'The rows of left and right cannot be bored evenly from both ends: they have an even count of 34 holes, and ‘row-drill’ has an odd count of 27 spindles. With 33 holes they take 1 set-up and 15 min less. Give them one hole more or less, or accept the cost.',
      severity: 'info',
      panel: 'left',
      offers: [
        'Start the rows half a pitch further in, 24 mm from the ends (33 holes)',
        'Make the carcass 1040 mm high, one pitch lower (33 holes)',
        'Make the carcass 1104 mm high, one pitch higher (35 holes)',
      ],
    },
  ],
  sound: [
    // 63 holes, as odd as the spindles
    { carcass: 'kind: tall\nwidth: 600\nheight: 2000' },
    // 64 holes cannot be centred, and cost nothing more: three strokes, one set-up
    { carcass: 'kind: tall\nwidth: 600\nheight: 2032' },
    // 55 holes take a stroke more than 54, but they are as odd as the spindles
    { carcass: 'kind: tall\nwidth: 600\nheight: 1744' },
    // of 28 holes some are left out
    { carcass: 'kind: tall\nwidth: 600\nheight: 880\nrow-holes: { from: 100 }' },
    // 29 holes in the sides, and the 28 of the divider keep to theirs
    { carcass: 'kind: tall\nwidth: 900\nheight: 944\nrow-offset: 40\ndividers: 1\nloose-shelves: 1' },
    // fewer strokes, but nothing is won by them
    { carcass: 'kind: tall\nwidth: 600\nheight: 880', shop: FREE, besides: ['cannot-be-bored', 'cannot-be-bored'] },
    // no drill that is known, and one that cannot bore the rows at all
    { carcass: 'kind: tall\nwidth: 600\nheight: 880\nmachines: { rows: nothing }', besides: ['machine-unknown'] },
    {
      carcass: 'kind: tall\nwidth: 600\nheight: 880',
      shop: drill('row', 'G: { side: left, range: 1500 to 1600, lowers: yes }'),
      besides: Array.from({ length: 4 }, () => 'cannot-be-bored'),
    },
  ],
  repairs: [
    [
      // 8 + 16; 880 - 2 x 24 = 26 x 32
      'Start the rows half a pitch further in, 24 mm from the ends (27 holes)',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 880\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 880\n    row-offset: 24\n',
    ],
    [
      'Make the carcass 848 mm high, one pitch lower (27 holes)',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 880\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 848\n',
    ],
  ],
});
