import { rule } from './rule-tests.js';

rule('index-unbalanced', {
  tells: [
    {
      // 2032 = 63 x 32 + 16
      carcass: 'kind: tall\nwidth: 600\nheight: «2032»',
      says: 'The rows of left and right cannot be centred in 3 strokes: they have an even count of 64 holes, and ‘row-drill’ has an odd count of 27 spindles. Give them one hole more or less, or accept uneven strokes.',
      severity: 'info',
      panel: 'left',
    },
  ],
  sound: [
    // 63 holes, as odd as the spindles
    { carcass: 'kind: tall\nwidth: 600\nheight: 2000' },
  ],
  repairs: [
    [
      'Make the carcass 2000 mm high, one pitch lower (63 holes)',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 2032\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 2000\n',
    ],
  ],
});
