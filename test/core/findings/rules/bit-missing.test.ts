import { rule } from './rule-tests.js';

rule('bit-missing', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\njoint: «dowel-10x40»',
      shop: 'bits: [5, 8]',
      says: 'The 32 dowel bores in left, right, bottom and top need a bit of 10 mm, which is not among the shop’s bits of 5 mm and 8 mm. Choose another fitting, or add the bit to `bits`.',
      severity: 'error',
      panel: 'left',
    },
  ],
  sound: [{ carcass: 'kind: wall\nwidth: 600', shop: 'bits: [5, 8]' }],
});
