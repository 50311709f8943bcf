import { rule } from './rule-tests.js';

const shop = (rating: number): string =>
  `feet:
  weak: { range: 90 to 150, from-front: 110, from-back: 60, from-side: 60, apart: 700, diameter: 10, depth: 11, rating: ${rating} }
  strong: { range: 90 to 150, from-front: 110, from-back: 60, from-side: 60, apart: 700, diameter: 10, depth: 11, rating: 200 }
`;
const heavy = 'kind: wall\nwidth: 400\nback: none\nload: 10\nfixed-shelves: 1\nplinth: 100';

rule('feet-overloaded', {
  // 9.13 kg without its plinth (as the test of brackets has it), and that of 400 x 100 x 16 mm more.
  tells: [
    {
      carcass: `${heavy}\nfeet: weak`,
      shop: shop(7),
      says: 'The carcass weighs 9.57 kg, and 20 kg stand in it; 4 feet ‘weak’ carry 28 kg, and no worktop is counted. Use feet that carry more, or stand them nearer to each other (`apart`). This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: `${heavy}\nfeet: weak`, shop: shop(7.5) }],
});
