import { expect, test } from 'vitest';
import { inWords } from '../../../in-words.js';
import { jobOf, rule } from './rule-tests.js';

rule('break-through', {
  tells: [
    {
      // the groove leaves 2 of 16
      carcass: 'kind: wall\nwidth: 600\nback: { groove: «14» }',
      says: 'The groove of the back, 14 mm deep, leaves 2 mm of wood in left, right, bottom and top, 16 mm thick; the minimum is 3 mm (`least-wall`). Make the groove shallower.',
      severity: 'warning',
      panel: 'left',
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { face-depth: «14» }',
      says: 'The 8 dowel bores in left, 14 mm deep in a panel 16 mm thick, leave 2 mm of wood; the minimum is 3 mm (`least-wall`). Bore less deep, or use a thicker board.',
      severity: 'warning',
      panel: 'left',
    },
    {
      carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { face-depth: «16» }',
      says: 'The 8 dowel bores in left, 16 mm deep in a panel 16 mm thick, come out on the other side. Bore less deep, or use a thicker board.',
      severity: 'error',
      panel: 'left',
    },
  ],
  sound: [
    // 13 of 16 leave the 3 that must stay.
    { carcass: 'kind: wall\nwidth: 600\nback: { groove: 13 }' },
  ],
  repairs: [
    [
      'Leave the depth in left to the fitting',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left: { face-depth: 14 }\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n',
    ],
    [
      'Leave the depth of the groove to the shop',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    back: { groove: 14 }\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n',
    ],
  ],
});

test('a board thinner than the row holes are deep is told once, at the carcass’s name', () => {
  const shop =
    'boards: { thin: { thickness: 12 }, back-3: { thickness: 3 } }\nhabits: { board: thin, back-board: back-3 }';
  const found = jobOf({ carcass: 'kind: open\nwidth: 600\nloose-shelves: 1', shop })
    .findings()
    .filter(({ finding }) => finding.rule === 'break-through');
  const messages = found.map(({ finding }) => inWords(finding.message)).filter((words) => words.includes('row hole'));
  expect(messages).toEqual([
    'The 92 row holes in left and right, 13 mm deep in a panel 12 mm thick, come out on the other side. Choose a smaller `row-depth` in the shop file, or use a thicker board.',
  ]);
});
