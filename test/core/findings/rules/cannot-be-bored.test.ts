import { demoText } from '../jobs.js';
import { rule } from './rule-tests.js';

const HIGH_FENCE = `vertical-heads:
  upright: { spindles: 21, pitch: 32, fence: far, from: above, fence-offset: 60 to 80, depth: 0 to 60, stops: { A: { side: left, range: 0 to 1300 }, B: { side: right, range: 0 to 1300 } } }
horizontal-heads:
  level: { spindles: 21, pitch: 32, height: 4 to 40, depth: 0 to 80, stops: { E: { side: left, range: 20 to 80 }, F: { side: right, range: 20 to 80 } } }`;

/** A head that reaches the middle of a tall door, and a cup borer that does not. */
const SHORT_PRESS = `${HIGH_FENCE.replace('60 to 80', '20 to 80').replaceAll('0 to 1300', '0 to 2000')}
cup-borers:
  press: { distance: 18 to 26, depth: 5 to 15, stops: { C: { side: left, range: 0 to 1000 }, D: { side: right, range: 0 to 1000 } } }`;

rule('cannot-be-bored', {
  tells: [
    {
      // 80 and 20 pitches of 32 are 720; the upright head is long enough
      carcass: 'kind: wall\nwidth: 600\ndepth: 800\nrows: none\nback: none\ndowels: [53, 181, 309, 437, 565, «725»]',
      shop: HIGH_FENCE.replace('spindles: 21', 'spindles: 30').replace('60 to 80', '20 to 80'),
      says: 'The 4 dowel bores in bottom and top cannot be bored. The 21 spindles of ‘level’ reach at most 720 mm from the squaring stop (`spindles`); 725 mm is needed. Move the bores toward the front (`dowels`), or choose a head with more spindles (`machines: ends`).',
      severity: 'error',
      panel: 'bottom',
    },
    {
      carcass: 'kind: wall\nwidth: 600\ndowels: [«53», 213, 277]\nrows: none',
      shop: HIGH_FENCE,
      says: 'The 12 dowel bores in left and right cannot be bored. No fence offset of ‘upright’ between 60 mm and 80 mm (`fence-offset`) puts spindles over these bores, the first 53 mm from the front edge. Move the bores to places under the spindles (`dowels`). Widen the range in the shop file only if the machine’s manual allows it.',
      severity: 'error',
      panel: 'left',
    },
    {
      // the built-in hinge has its cup 22.5 mm from the edge of the door
      carcass: 'kind: wall\nwidth: 600\ndoors: { hung: «left» }',
      shop: demoText('shed.shop.yaml').replace('distance: 18 to 26', 'distance: 30 to 40'),
      says: 'The 2 cup bores in door-1 cannot be bored. The fence of ‘cup-press’ can be set between 30 mm and 40 mm from the cup (`distance`); 22.5 mm is needed. Move the cups (`reveal` or `gap` of the doors). Widen the range in the shop file only if the machine’s manual allows it.',
      severity: 'error',
      panel: 'door-1',
    },
    {
      // The middle one of five: 31 pitches of 32 and half of one over the first hole, 8 from the end of a side.
      carcass: 'kind: tall\nwidth: 600\nrows: none\ndoors: «left»',
      shop: SHORT_PRESS,
      says: 'The cup bore in door-1 cannot be bored. The cup stands 1016 mm from one end of the door and 1045 mm from the other, and no stop of ‘press’ can be set there (`stops`). List the stop if the machine has one there, or have lower doors, one over another (`fronts`).',
      severity: 'error',
      panel: 'door-1',
    },
  ],
  sound: [
    // 720 is the last place under 21 spindles
    {
      carcass: 'kind: wall\nwidth: 600\ndepth: 800\nrows: none\nback: none\ndowels: [80, 208, 336, 464, 592, 720]',
      shop: HIGH_FENCE.replace('spindles: 21', 'spindles: 30').replace('60 to 80', '20 to 80'),
    },
  ],
});
