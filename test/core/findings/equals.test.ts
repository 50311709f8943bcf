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

/** What is said of each carcass by itself: everything but the places, which go with the text. */
function said(carcasses: readonly (readonly [name: string, text: string])[]): readonly string[][] {
  const text = `shop: careless.yaml\ncarcasses:\n${carcasses.map(([name, flow]) => `  ${name}: ${flow}\n`).join('')}`;
  return analyse(text, shops).carcasses.map(({ findings }) =>
    findings.map(({ rule, panel, bores, message }) => JSON.stringify([rule, panel, bores, inWords(message)])),
  );
}

test('a carcass is told the same beside others, equal to it or nearly, as alone', () => {
  let slow = 0;
  const lone = carcassText(neutralShop);
  fc.assert(
    fc.property(lone, lone, (one, other) => {
      const nearly = one.replace(/(\d+)(?=[^\d]*$)/, (figure) => String(Number(figure) + 1));
      const together = said([
        ['an-equal-one', one],
        ['nearly', nearly],
        ['another', other],
        ['box', one],
        ['box-2', nearly],
      ]);
      const [alone] = said([['box', one]]);
      slow += Number(alone!.some((words) => words.includes('misfit-past-limit')));
      expect(together[3]).toEqual(alone);
      expect(together[4]).toEqual(said([['box-2', nearly]])[0]);
    }),
  );
  expect(slow).toBeGreaterThan(10);
});
