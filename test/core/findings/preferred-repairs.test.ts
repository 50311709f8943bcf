import fc from 'fast-check';
import { expect, test } from 'vitest';
import { batchEdits, preferredRepairs, repairEdits } from '../../../shared-core/engine/repairs.js';
import { inWords } from '../../in-words.js';
import { applied } from './after-repair.js';
import { opened } from './jobs.js';
import { faultyJob } from './random-jobs.js';

test('repairs that need no choice come to rest, taken one by one or all at once: none undoes another', () => {
  const read = opened();
  let taken = 0;
  fc.assert(
    fc.property(faultyJob, fc.nat(), (text, pick) => {
      const steps: string[] = [];
      const met = new Set<string>();
      for (let now = text; ;) {
        expect(met, steps.join('\n')).not.toContain(now);
        expect(met.size, steps.join('\n')).toBeLessThan(25);
        met.add(now);
        const job = read(now);
        const repairs = preferredRepairs(job);
        if (repairs.length === 0) break;
        const next = repairs[(pick + met.size) % repairs.length]!;
        steps.push(`${inWords(next.repair.title)}\n${now}`);
        now = applied(now, repairEdits(job, next)!);
        taken += 1;
      }
      const seen: string[] = [];
      for (let now = text; !seen.includes(now);) {
        seen.push(now);
        const job = read(now);
        now = applied(now, batchEdits(job, preferredRepairs(job)));
        // What is left as it is has come to rest.
        if (now === seen.at(-1)) break;
        expect(seen, seen.join('\n')).not.toContain(now);
      }
    }),
    { numRuns: 12 },
  );
  expect(taken).toBeGreaterThan(20);
});
