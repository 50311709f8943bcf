import { expect, test } from 'vitest';
import { secondsOf, workOf } from '../../../../shared-core/machining/plan/cost.js';
import { bestOrder, orderTask } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { opened } from '../jobs.js';
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

test('of many set-ups all are counted', () => {
  const bays = [1, 2, 3, 4, 5, 6, 7, 8];
  const shelves = bays.flatMap((bay) => [`{ at: 136, bay: ${bay} }`, `{ at: ${200 + 64 * bay}, bay: ${bay} }`]);
  const whole = `carcasses:
  a:
    kind: base
    width: 1500
    height: 1200
    dividers: ${bays.length - 1}
    loose-shelves: [${shelves.join(', ')}]
`;
  const read = opened();
  const work = (text: string) => {
    const { carcasses, shop } = read(text);
    const operations = carcasses[0]!.operations!.operations.filter(({ machine }) => machine.kind === 'line');
    const setUps = setUpsOf([{ operations, unreachable: [], count: 1 }]);
    const done = workOf({ runs: setUps.flatMap(({ setUp }) => setUp.runs) });
    const { cost } = bestOrder(orderTask(setUps, shop.changeover));
    return { setUps: setUps.length, seconds: cost + secondsOf(done, shop.handling) };
  };
  const partial = `${whole}    row-holes: { round-shelves: 0 }\n`;
  const told = read(partial)
    .known()
    .find(({ finding }) => finding.rule === 'partial-rows-cost')!.finding.message;
  const { more } = told.figures as { readonly more: { readonly setUps: number; readonly seconds: number } };
  const [asIs, plain] = [work(partial), work(whole)];
  expect([asIs.setUps, plain.setUps]).toEqual([9, 2]);
  expect(more.setUps).toBe(7);
  // No order of them takes less.
  expect(more.seconds).toBeGreaterThanOrEqual(asIs.seconds - plain.seconds);
  expect(more.seconds).toBeLessThan(1.1 * (asIs.seconds - plain.seconds));
});
