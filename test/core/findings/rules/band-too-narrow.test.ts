import { rule } from './rule-tests.js';

const shop =
  'bands: { tape: { thickness: 1, height: 17 }, wide: { thickness: 1, height: 23 }, roll: { thickness: 1 } }';

rule('band-too-narrow', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nboard: board-19\nback: none\nband: «tape»',
      shop,
      says: '‘tape’ is 17 mm wide and does not cover edges of left, right, bottom and rail-front, 19 mm thick. Choose a wider band.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass:
        'kind: base\nwidth: 600\nback: none\nband: wide\npanels:\n  bottom: { board: board-18, bands: { front: wide, back: «tape» } }',
      shop,
      says: '‘tape’ is 17 mm wide and does not cover an edge of bottom, 18 mm thick. Choose a wider band.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      // On the edge that the cut of a corner makes.
      carcass:
        'kind: wall\nwidth: 600\ndepth: 320\nback: none\nband: wide\ndiagonal: { left: 600 }\npanels:\n  bottom: { board: board-18, bands: { front: «tape» } }',
      shop,
      says: '‘tape’ is 17 mm wide and does not cover an edge of bottom, 18 mm thick. Choose a wider band.',
      panel: 'bottom',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nback: none\nband: tape', shop },
    // Nothing is known of a roll whose width is not written.
    { carcass: 'kind: base\nwidth: 600\nboard: board-19\nback: none\nband: roll', shop },
  ],
});
