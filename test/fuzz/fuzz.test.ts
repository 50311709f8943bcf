import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Reader } from './check.js';
import { damaged } from './documents.js';

// A million of them: `npm run soak -- documents`.

test('of 10,000 damaged job and shop files none throws, and each fault is told where it stands', () => {
  const reader = new Reader();
  const count = { job: 0, shop: 0 };
  fc.assert(
    fc.property(damaged, fc.nat(), (file, at) => {
      reader.read(file, at);
      count[file.kind] += 1;
    }),
    { numRuns: 10_000 },
  );
  expect(Math.min(count.job, count.shop)).toBeGreaterThan(2000);
}, 240_000);
