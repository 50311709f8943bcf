import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { analyse } from '../findings/jobs.js';

test('the office of the demo has nothing to tell, and every cup, plate, slide and front in it is bored by a machine', () => {
  const job = analyse(readFileSync(join(import.meta.dirname, '../../demo/office.carcass.yaml'), 'utf8'));
  expect(job.findings().map(({ finding }) => finding.rule)).toEqual(['shop-neutral']);
  const doors = job.carcasses.flatMap(({ carcass }) => carcass!.doors);
  const hinges = job.carcasses.flatMap(({ boring }) => boring!.hung.flatMap((one) => one.hinges));
  // Two pairs, six single doors, one of them without hinges; five hinges on a tall door, two on any other.
  expect([doors.length, hinges.length]).toEqual([10, 3 * 5 + 6 * 2]);
  expect(job.carcasses.flatMap(({ carcass }) => carcass!.drawers)).toHaveLength(6);
  for (const { boring, operations } of job.carcasses) {
    const made = operations!.operations.flatMap(({ ways }) =>
      ways[0]!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.id)),
    );
    for (const { id, purpose } of boring!.bores)
      if (['cup', 'plate', 'slide', 'slide-in-box', 'front-clearance', 'front-pilot'].includes(purpose))
        expect(made.filter((one) => one === id)).toEqual([id]);
  }
});
