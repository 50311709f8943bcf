import { rule } from './rule-tests.js';

/** A drill that goes on past one stroke by stops alone. */
const WITHOUT_PINS = `line-drills:
  row-drill: { spindles: 27, pitch: 32, heads: 2, fence: far, from: above, setback: 20 to 80, head-distance: 96 to 640,
    throat: 700, depth: 0 to 60, index-pins: none, stops: {
      G: { side: left, range: 0 to 1600, lowers: yes }, H: { side: right, range: 0 to 1600, lowers: yes } } }
`;

rule('index-unbalanced', {
  tells: [
    {
      // 880 = 27 x 32 + 16: one hole more than one stroke bores
      carcass: 'kind: tall\nwidth: 600\nheight: «880»',
      says: 'The rows of left and right cannot be bored evenly from both ends: they have an even count of 28 holes, and ‘row-drill’ has an odd count of 27 spindles. With 27 holes they take 2 strokes and 19 min 58 s less. Give them one hole more or less, or accept the cost.',
      severity: 'info',
      panel: 'left',
    },
    {
      carcass: 'kind: tall\nwidth: 600\nheight: «1072»',
      shop: WITHOUT_PINS,
      says: 'The rows of left and right cannot be bored evenly from both ends: they have an even count of 34 holes, and ‘row-drill’ has an odd count of 27 spindles. With 33 holes they take 1 set-up and 15 min less. Give them one hole more or less, or accept the cost.',
      severity: 'info',
      panel: 'left',
    },
  ],
  sound: [
    // 63 holes, as odd as the spindles
    { carcass: 'kind: tall\nwidth: 600\nheight: 2000' },
    // 64 holes cannot be centred, and cost nothing more: three strokes, one set-up
    { carcass: 'kind: tall\nwidth: 600\nheight: 2032' },
  ],
  repairs: [
    [
      // 8 + 16; 880 - 2 x 24 = 26 x 32
      'Start the rows half a pitch further in, 24 mm from the ends (27 holes)',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 880\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 880\n    row-offset: 24\n',
    ],
    [
      'Make the carcass 848 mm high, one pitch lower (27 holes)',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 880\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 600\n    height: 848\n',
    ],
  ],
});
