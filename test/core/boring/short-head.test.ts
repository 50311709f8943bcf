import { expect, test } from 'vitest';
import { analyse } from '../findings/jobs.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';

/** The built-in shop with seven spindles in both heads, and fence and squaring stops that are set so far. */
const SHORT = NEUTRAL_SHOP_TEXT.replace('spindles: 24', 'spindles: 7')
  .replace('spindles: 22', 'spindles: 7')
  .replace('fence-offset: 18 to 96', 'fence-offset: 18 to 330')
  .replaceAll('range: 14 to 100', 'range: 14 to 400');

test('a joint is held to the rear of a carcass by heads that are set twice for it', () => {
  expect(SHORT).toContain('fence-offset: 18 to 330');
  const job = analyse('shop: s.shop.yaml\ncarcasses:\n  t: { kind: base, width: 600 }\n', { 's.shop.yaml': SHORT });
  const rules = job.findings().map(({ finding }) => finding.rule);
  for (const rule of ['joint-not-held', 'cannot-be-bored', 'plan-replay-differs']) expect(rules).not.toContain(rule);
  const places = job.carcasses[0]!.boring!.bores.filter(
    ({ panel, group, face }) => panel === 'bottom' && group === 'bottom/left' && face === 'reference-end',
  );
  // Of 541 in front of the groove remains no more than the spacing behind the last.
  expect(541 - Math.max(...places.map(({ u }) => u / 1000))).toBeLessThanOrEqual(192);
});
