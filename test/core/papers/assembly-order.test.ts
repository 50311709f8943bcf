import { expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import { papersOf } from '../../../shared-core/service.js';
import { analyse } from '../findings/jobs.js';

test('a box is pressed and measured before anything is hung or put in', async () => {
  const job = analyse('carcasses:\n  a: { kind: base, width: 600, doors: pair, loose-shelves: 1, back: rebated }\n');
  const { blocks } = (await papersOf(job, coverSolver)('assembly'))!;
  const said = blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : [])).slice(-6);
  const places = [/clamp/, /^Measure both diagonals/, /^Lay the back/, /^Hang the 2 doors/, /loose shelf last/].map(
    (one) => said.findIndex((text) => one.test(text)),
  );
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(places).not.toContain(-1);
});
