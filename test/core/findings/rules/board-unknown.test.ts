import { rule } from './rule-tests.js';

rule('board-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nloose-shelves:\n  - { at: 328, board: «bord-18» }',
      says: '‘bord-18’ is not a board of the shop. Use ‘board-16’, ‘board-18’, ‘board-19’, ‘back-3’ or ‘back-8’.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nloose-shelves:\n  - { at: 328, board: board-18 }' }],
  repairs: [
    [
      'Use ‘board-18’',
      "defaults: { board: 'bord-18' }\ncarcasses:\n  a:\n    kind: open\n    width: 600\n",
      "defaults: { board: 'board-18' }\ncarcasses:\n  a:\n    kind: open\n    width: 600\n",
    ],
  ],
});
