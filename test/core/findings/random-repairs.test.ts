import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkRepair } from './after-repair.js';
import { NEVER_SHOWN, opened } from './jobs.js';
import { faultyJob } from './random-jobs.js';
import { inWords } from '../../in-words.js';

test('in faulty jobs of any kind, every repair makes its finding go away and brings no other', () => {
  const read = opened();
  let taken = 0;
  fc.assert(
    fc.property(faultyJob, (text) => {
      const job = read(text);
      for (const found of job.findings()) {
        for (const repair of found.finding.repairs) {
          checkRepair(read, job, found, repair);
          taken += 1;
        }
      }
    }),
    { numRuns: 12 },
  );
  expect(taken).toBeGreaterThan(10);
});

test('every finding stands at words of the file, whatever is wrong', () => {
  const read = opened();
  fc.assert(
    fc.property(faultyJob, (text) => {
      const job = read(text);
      for (const { finding, carcass } of job.findings()) {
        expect(NEVER_SHOWN.has(finding.rule), inWords(finding.message)).toBe(false);
        const { start, end } = job.locate(finding.place, carcass);
        expect(text.slice(start, end).trim()).not.toBe('');
        expect(inWords(finding.message)).not.toMatch(/NaN|undefined|Infinity|null/);
      }
    }),
    { numRuns: 30 },
  );
});
