import fc from 'fast-check';
import { expect, test } from 'vitest';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { inWords } from '../../in-words.js';
import { carcassText } from '../job/schema-texts.js';
import { analyse } from './jobs.js';

// In a shop this careless the slow rules have much to say.
const shops = {
  'careless.yaml': 'tolerances: { stop: 0.6, drill: 0.6, front-limit: 0.1, step-limit: 0.1, gap-limit: 0.1 }',
};

type Written = readonly (readonly [name: string, text: string])[];

/** All that is known of each carcass by itself: what is said of it, with its places, and what its machines are to do. */
function known(carcasses: Written): readonly (readonly (string | undefined)[])[] {
  const text = `shop: careless.yaml\ncarcasses:\n${carcasses.map(([name, flow]) => `  ${name}: ${flow}\n`).join('')}`;
  return analyse(text, shops).carcasses.map(({ name, nameAt, spec, carcass, boring, operations, findings }) => [
    ...[name, nameAt, spec?.name, carcass?.panels, carcass?.joints, boring, operations].map((one) =>
      JSON.stringify(one),
    ),
    ...findings.map(({ message, repairs, ...one }) =>
      JSON.stringify([one, inWords(message), repairs.map(({ title, changes }) => [inWords(title), changes])]),
    ),
  ]);
}

test('a carcass is the same beside others, equal to it or nearly, as alone', () => {
  let slow = 0;
  const lone = carcassText(neutralShop);
  fc.assert(
    fc.property(lone, lone, (one, other) => {
      const nearly = one.replace(/(\d+)(?=[^\d]*$)/, (figure) => String(Number(figure) + 1));
      const all: Written = [
        ['an-equal-one', one],
        ['nearly', nearly],
        ['another', other],
        ['box', one],
        ['box-2', nearly],
        ['bax', one],
      ];
      const alone = all.map((carcass) => known([carcass])[0]!);
      slow += Number(alone[0]!.some((words) => words?.includes('misfit-past-limit')));
      expect(known(all)).toEqual(alone);
    }),
    { numRuns: 20 },
  );
  expect(slow).toBeGreaterThan(1);
});
