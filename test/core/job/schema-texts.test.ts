import fc from 'fast-check';
import { expect, test } from 'vitest';
import { carcassSchema } from '../../../shared-core/job/schema.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { analyse, NEVER_SHOWN } from '../findings/jobs.js';
import { inWords } from '../../in-words.js';
import { jobText } from './schema-texts.js';

/** What only a text can have that the schema did not make. */
const UNREADABLE: ReadonlySet<string> = new Set(['yaml-syntax', 'key-unknown', 'key-missing', 'name-duplicate']);

test('random jobs written from the schema alone can be read, and never show a fault of ours', () => {
  let carcasses = 0;
  let built = 0;
  const keys = new Set<string>();
  fc.assert(
    fc.property(jobText(neutralShop, 3), (text) => {
      const job = analyse(text);
      for (const { finding } of job.findings()) {
        expect(NEVER_SHOWN.has(finding.rule), `${inWords(finding.message)}\n${text}`).toBe(false);
        expect(UNREADABLE.has(finding.rule), `${inWords(finding.message)}\n${text}`).toBe(false);
      }
      carcasses += job.carcasses.length;
      built += job.carcasses.filter(({ boring }) => boring !== null).length;
      for (const [, key] of text.matchAll(/([a-z-]+): /g)) keys.add(key!);
    }),
    { numRuns: 300 },
  );
  // Enough of them are boxes for the rest to mean something, and no key is left out.
  expect(built / carcasses).toBeGreaterThan(0.3);
  for (const key of Object.keys(carcassSchema.fields)) expect(keys, key).toContain(key);
});
