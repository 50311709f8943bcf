import { rule } from './rule-tests.js';

rule('shelf-sags', {
  tells: [
    {
      // 968 mm of 16 mm, 310.8 mm deep: EI = 1600·310.8·16³/12 = 1.697e8; its own weight is 3.27 kg;
      // 5·(33.27·9.80665/968)·968⁴/(384·1.697e8) = 22.7 mm, and half as much again in years. The limit is 2.6 mm in a metre.
      carcass: 'kind: open\nwidth: 1000\nload: «30»\nfixed-shelves: 1',
      says: 'bottom and shelf-1 sag too much: shelf-1 sags 34.04 mm under 30 kg spread evenly and the shelf’s own weight, creep of 1.5 times the first sag counted; the limit is 2.52 mm. Make the span shorter with a divider, or the shelf stiffer with a thicker board or a lipping. This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'warning',
    },
  ],
  repairs: [
    // 468 mm: the shelf, 310.8 mm deep, sags 1.25 mm and the bottom, 330 mm deep, 1.19 mm; the limit is 1.22 mm.
    [
      'Make shelf-1 of ‘board-18’',
      'carcasses:\n  sink:\n    kind: open\n    width: 500\n    load: 9.2\n    fixed-shelves: 1\n',
      'carcasses:\n  sink:\n    kind: open\n    width: 500\n    load: 9.2\n    fixed-shelves: 1\n    panels:\n      shelf-1:\n        board: board-18\n',
    ],
    [
      'Put in a divider',
      'carcasses:\n  sink:\n    kind: open\n    width: 500\n    load: 9.2\n    fixed-shelves: 1\n',
      'carcasses:\n  sink:\n    kind: open\n    width: 500\n    load: 9.2\n    fixed-shelves: 1\n    dividers: 1\n',
    ],
    [
      'Give shelves a lipping of 40 mm',
      'carcasses:\n  sink:\n    kind: open\n    width: 500\n    load: 9.2\n    fixed-shelves: 1\n',
      'carcasses:\n  sink:\n    kind: open\n    width: 500\n    load: { on-shelf: 9.2, lipping: 40 }\n    fixed-shelves: 1\n',
    ],
  ],
  sound: [
    { carcass: 'kind: open\nwidth: 400\nload: 10\nfixed-shelves: 1' },
    // Without a load that is stated nothing is said, however long the shelf.
    { carcass: 'kind: open\nwidth: 1400\nfixed-shelves: 1' },
  ],
});
