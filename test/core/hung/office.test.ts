import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { analyse } from '../findings/jobs.js';

test('the office of the demo has nothing to tell, and every cup and plate in it is bored by a machine', () => {
  const job = analyse(readFileSync(join(import.meta.dirname, '../../demo/office.carcass.yaml'), 'utf8'));
  expect(job.findings().map(({ finding }) => finding.rule)).toEqual(['shop-neutral']);
  const doors = job.carcasses.flatMap(({ carcass }) => carcass!.doors);
  const hinges = job.carcasses.flatMap(({ boring }) => boring!.hung.flatMap((one) => one.hinges));
  // Two pairs, five single doors, one of them without hinges; five hinges on a tall door, two on any other.
  expect([doors.length, hinges.length]).toEqual([9, 3 * 5 + 5 * 2]);
  for (const { boring, operations } of job.carcasses) {
    const made = operations!.operations.flatMap(({ ways }) =>
      ways[0]!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.id)),
    );
    for (const { id, purpose } of boring!.bores)
      if (purpose === 'cup' || purpose === 'plate') expect(made.filter((one) => one === id)).toEqual([id]);
  }
});
