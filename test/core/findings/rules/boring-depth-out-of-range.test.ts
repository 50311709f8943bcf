import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { rule } from './rule-tests.js';

/** Heads in a chain: with the first at 20 to 80 and one left empty between, rows 192 to 480 apart can be bored in one stroke. */
const HEADS = (heads: number): string => `line-drills:
  chain: { spindles: 23, pitch: 32, heads: ${heads}, fence: far, from: above, setback: 20 to 80, head-distance: 96 to 240, throat: 700, depth: 0 to 60, index-pins: row,
    stops: { G: { side: left, range: 0 to 300 }, H: { side: right, range: 0 to 300 } } }`;

rule('boring-depth-out-of-range', {
  tells: [
    {
      // front and rear rows of both sides: one cause, one finding
      carcass: 'kind: base\nwidth: 600',
      shop: HEADS(3).replace('depth: 0', 'depth: 20'),
      says: 'The 92 row holes in left and right are 13 mm deep; ‘chain’ bores between 20 mm and 60 mm deep. Change `row-depth`, or choose another machine.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  bottom: { end-depth: «90» }',
      says: 'The 12 dowel bores in bottom are 90 mm deep; ‘end-head’ bores between 0 mm and 80 mm deep. Choose another depth, fitting or machine.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      carcass: 'kind: wall\nwidth: 600\ndoors: «left»\npulls: none',
      shop: NEUTRAL_SHOP_TEXT.replace('depth: 0 to 15', 'depth: 0 to 10'),
      says: 'The 2 cup bores in door-1 are 12 mm deep; ‘hinge-borer’ bores between 0 mm and 10 mm deep. Choose another depth, fitting or machine.',
      panel: 'door-1',
    },
  ],
  sound: [
    // The vertical head bores no cups, so that its depth is not theirs.
    {
      carcass: 'kind: wall\nwidth: 600\ndoors: left\npulls: none',
      shop: NEUTRAL_SHOP_TEXT.replace('depth: 0 to 65', 'depth: 12 to 65').replace('cup-depth: 12', 'cup-depth: 11'),
    },
    { carcass: 'kind: wall\nwidth: 600\ndepth: 330\njoint: dowel-10x40\nboard: board-19' },
  ],
});
