import { rule } from './rule-tests.js';

const FIGURES =
  'cup-diameter: 35, cup-depth: 12, distance: 20.5 to 24.5, usual-distance: 22.5, arms: [5], plates: [0], setback: 37, plate-diameter: 5, plate-depth: 13, body-height: 62, body-depth: 80';
const shop = (rating: string): string =>
  `boards:\n  board-19: { thickness: 19 }\n  board-16: { thickness: 16 }\n  back-3: { thickness: 3 }\nhinges:\n  light: { ${FIGURES}, rating: ${rating} }\n  strong: { ${FIGURES}, rating: 6 }\nhabits: { hinge: light, board: board-19 }\n`;

rule('door-too-heavy', {
  tells: [
    {
      // 0.597 x 0.72 x 0.019 m of 680 kg/m³.
      carcass: 'kind: wall\nwidth: 600\ndoors: { hung: «left», hinge: light }',
      shop: shop('2.5'),
      says: 'door-1 weighs 5.55 kg; 2 of ‘light’ carry 5 kg at the most. Use a lighter board, more hinges (`hinges-by-weight`), or a hinge with a greater `rating`. This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'error',
    },
  ],
  repairs: [
    [
      'Make the doors of ‘board-16’',
      // 4.16 kg on two hinges of 2 kg each; of 16 mm it is 3.5 kg.
      'shop: faults.shop.yaml\ncarcasses:\n  sink:\n    kind: wall\n    width: 450\n    doors: { hung: left, hinge: light, board: board-19 }\n',
      'shop: faults.shop.yaml\ncarcasses:\n  sink:\n    kind: wall\n    width: 450\n    doors: { hung: left, hinge: light, board: board-16 }\n',
    ],
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\ndoors: { hung: left, hinge: light }', shop: shop('3') },
    { carcass: 'kind: wall\nwidth: 600\ndoors: left' },
  ],
});
