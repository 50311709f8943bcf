import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { rule } from './rule-tests.js';

const BASE = 'carcasses:\n  sink:\n    kind: base\n    width: 600\n    loose-shelves: [360]\n';
/** A drill in which no bits stay. */
const EMPTY = NEUTRAL_SHOP_TEXT.replace('    stands: { bit: 5 }\n', '');

rule('partial-rows-cost', {
  tells: [
    {
      // Of 23 spindles 11 bore from 200 to 520, at 200, 232 … 520. Left and right sides lie at stops of either hand, so that on
      // each of the two heads 12 bits come out beside the holes for the one and go elsewhere for the other.
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [360]\nrow-holes: { from: «200», to: 520 }',
      says: 'The holes that `row-holes` leaves out of the rows of left and right save nothing: on ‘row-drill’ the rest take 1 set-up and 36 min more than whole rows, because bits have to come out for them. Bore whole rows, or accept the cost.',
      severity: 'info',
      panel: 'left',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nloose-shelves: [360]\nrow-holes: { from: 0 }' },
    { carcass: 'kind: base\nwidth: 600\nloose-shelves: [360]\nrow-holes: 2', shop: EMPTY },
  ],
  repairs: [
    ['Bore whole rows', `${BASE}    row-holes: { from: 200, to: 520 }\n`, BASE],
    ['Bore whole rows', `${BASE}    row-holes: { to: 520 }\n`, BASE],
  ],
});
