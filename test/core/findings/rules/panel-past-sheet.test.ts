import { rule } from './rule-tests.js';

rule('panel-past-sheet', {
  tells: [
    {
      // banding takes 1 mm off the width to cut
      carcass: 'kind: tall\nwidth: 600\nheight: «2512»\nback: none',
      shop: 'boards: { board-16: { thickness: 16, sheet-length: 2440, sheet-width: 1220 } }',
      says: 'left and right are cut to 2512 mm × 559 mm, and a sheet of ‘board-16’ measures 2440 mm × 1220 mm. Change the size, or choose another board.',
      severity: 'error',
      panel: 'left',
    },
    {
      // along the grain only
      carcass: 'kind: wall\nwidth: «1100»\nheight: 592',
      shop: 'boards: { board-16: { thickness: 16, sheet-length: 800, sheet-width: 1200, grain: length } }',
      says: 'bottom and top are cut to 1068 mm × 329 mm, and a sheet of ‘board-16’ measures 800 mm × 1200 mm with the grain along its length. Change the size, or choose another board.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      // too long for one size, too wide for the other; of the third there is none
      carcass: 'kind: tall\nwidth: 600\nheight: «2512»\nback: none',
      shop: 'boards: { board-16: { thickness: 16, sheet-length: 2440, sheet-width: 1220, sheets: { strip: { length: 3000, width: 300 }, gone: { length: 3000, width: 2000, count: 0 } } } }',
      says: 'left and right are cut to 2512 mm × 559 mm, and a sheet of ‘board-16’ measures 2440 mm × 1220 mm or 3000 mm × 300 mm. Change the size, or choose another board.',
      severity: 'error',
      panel: 'left',
    },
    {
      // the board is had in further sizes alone
      carcass: 'kind: tall\nwidth: 600\nheight: «2512»\nback: none',
      shop: 'boards: { board-16: { thickness: 16, sheets: { half: { length: 2440, width: 1220 } } } }',
      says: 'left and right are cut to 2512 mm × 559 mm, and a sheet of ‘board-16’ measures 2440 mm × 1220 mm. Change the size, or choose another board.',
      severity: 'error',
      panel: 'left',
    },
  ],
  sound: [
    {
      // on a further size
      carcass: 'kind: tall\nwidth: 600\nheight: 2512\nback: none',
      shop: 'boards: { board-16: { thickness: 16, sheet-length: 2440, sheet-width: 1220, sheets: { long: { length: 3000, width: 1220 } } } }',
      besides: ['clamp-too-small'],
    },
    {
      carcass: 'kind: tall\nwidth: 600\nheight: 2440\nback: none',
      shop: 'boards: { board-16: { thickness: 16, sheet-length: 2440, sheet-width: 1220 } }',
      besides: ['row-unbalanced', 'clamp-too-small'],
    },
    {
      carcass: 'kind: wall\nwidth: 1100\nheight: 592',
      shop: 'boards: { board-16: { thickness: 16, sheet-length: 800, sheet-width: 1200, grain: none } }',
    },
  ],
});
