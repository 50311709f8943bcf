import { rule } from './rule-tests.js';

rule('shelf-tips', {
  tells: [
    {
      // 541 of clear depth less 5 in front and 1 behind; 293 - 37 = 256 is less than half of it.
      carcass: 'kind: base\nwidth: 600\nrear-row: «293»\nloose-shelves: 2',
      says: 'loose-1 and loose-2 tip: the pins, 37 mm and 293 mm from the front edge, stand 256 mm apart, and the minimum is half the depth of 535 mm. Move the rear row toward the back (`rear-row`), or make the shelf a fixed one.',
      severity: 'warning',
      panel: 'loose-1',
      offers: ['Remove `rear-row` and use the usual place of the rear row'],
      marks: { 'left:row-front': 23, 'left:row-rear': 23 },
    },
    {
      // One further back is 530 deep, and told by itself.
      carcass: 'kind: base\nwidth: 600\nrear-row: «293»\nloose-shelves: [{ at: 200 }, { at: 424, setback: 10 }]',
      says: 'loose-1 tips: the pins, 37 mm and 293 mm from the front edge, stand 256 mm apart, and the minimum is half the depth of 535 mm. Move the rear row toward the back (`rear-row`), or make the shelf a fixed one.',
      also: [
        'loose-2 tips: the pins, 37 mm and 293 mm from the front edge, stand 256 mm apart, and the minimum is half the depth of 530 mm. Move the rear row toward the back (`rear-row`), or make the shelf a fixed one.',
      ],
      panel: 'loose-1',
    },
    {
      // too shallow for two rows that hold it: 131 clear, so 37 and 69
      carcass: 'kind: wall\nwidth: 600\ndepth: 150\nloose-shelves: [«328»]',
      says: 'loose-1 tips: the pins, 37 mm and 69 mm from the front edge, stand 32 mm apart, and the minimum is half the depth of 125 mm. Move the rear row toward the back (`rear-row`), or make the shelf a fixed one.',
      severity: 'warning',
      panel: 'loose-1',
    },
    {
      // 579 x 579 less a corner of 253.1: its middle is 311.2 from both, so x + y = 376.3; of the rear pins 16 + 261 = 277; 99.3 / sqrt 2.
      carcass:
        'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\nback: { board: back-3 }\nloose-shelves: [«328»]',
      says: 'loose-1 tips into the corner: its middle lies 70.24 mm behind the pins in the two sides. Give the carcass backs of a board at least 16 mm thick (`back: board`), so that a row is bored for a pin there.',
      severity: 'warning',
      panel: 'loose-1',
      offers: ['> Make the backs of ‘board-16’'],
      marks: { 'left:row-front': 23, 'left:row-rear': 23, 'right:row-front': 23, 'right:row-rear': 23 },
    },
    {
      // 13 deep and a wall of 3 are more than the board of the carcass has.
      carcass: 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\nloose-shelves: [«328»]',
      shop: 'boards: { back-3: { thickness: 3 }, thin: { thickness: 15.9 } }\nhabits: { board: thin }',
      says: 'loose-1 tips into the corner: its middle lies 61.72 mm behind the pins in the two sides. Give the carcass backs of a board at least 16 mm thick (`back: board`), so that a row is bored for a pin there.',
      severity: 'warning',
      panel: 'loose-1',
      offers: [],
    },
  ],
  sound: [
    // In the corner a third pin holds it.
    { carcass: 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { left: 600 }\nloose-shelves: 2' },
    // no rows on one side, or no rear row: another rule speaks of it
    {
      carcass:
        'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\npanels: { left: { rows: none } }\nback: none\nloose-shelves: [328]',
      besides: ['loose-shelf-without-row'],
    },
    {
      carcass: 'kind: base\nwidth: 600\nrows: front\nloose-shelves: 1',
      besides: ['loose-shelf-without-row'],
    },
    // 288 apart under 535 of shelf
    { carcass: 'kind: base\nwidth: 600\nrear-row: 325\nloose-shelves: 1' },
    // 256 apart under 512 of shelf: just half
    { carcass: 'kind: base\nwidth: 600\nrear-row: 293\nloose-shelves: [{ at: 360, setback: 28 }]' },
  ],
  repairs: [
    [
      'Make the backs of ‘board-16’',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: { board: back-3 }\n    loose-shelves: [328]\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: { board: board-16 }\n    loose-shelves: [328]\n',
    ],
    [
      'Make the backs of ‘board-16’',
      'defaults:\n  back: { board: back-3 }\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    loose-shelves: [328]\n',
      'defaults:\n  back: { board: back-3 }\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    loose-shelves: [328]\n    back:\n      board: board-16\n',
    ],
    [
      'Make the backs of ‘board-16’',
      'defaults:\n  back: { board: back-3 }\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: applied\n    loose-shelves: [328]\n',
      'defaults:\n  back: { board: back-3 }\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: { how: applied, board: board-16 }\n    loose-shelves: [328]\n',
    ],
    [
      'Make the backs of ‘board-16’',
      'defaults:\n  back: { how: applied, board: back-3 }\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: { inset: 10 }\n    loose-shelves: [328]\n',
      'defaults:\n  back: { how: applied, board: back-3 }\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: { inset: 10, board: board-16 }\n    loose-shelves: [328]\n',
    ],
    [
      'Make the backs of ‘board-16’',
      'defaults:\n  back: none\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    loose-shelves: [328]\n',
      'defaults:\n  back: none\ncarcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    loose-shelves: [328]\n    back: { how: applied, board: board-16 }\n',
    ],
    [
      'Make the backs of ‘board-16’',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: none\n    loose-shelves: 1\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    back: { how: applied, board: board-16 }\n    loose-shelves: 1\n',
    ],
    [
      'Remove `rear-row` and use the usual place of the rear row',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rear-row: 293\n    loose-shelves: 2\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 2\n',
    ],
  ],
});
