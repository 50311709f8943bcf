import { stepsOf } from '../../steps.js'; // First, so that it counts in all that follows.
import { expect, test } from 'vitest';
import { formatEdits } from '../../../shared-core/document/format.js';

const lines = (size: number, line: (nth: number) => string): string =>
  Array.from({ length: size }, (_, i) => line(i)).join('');

test.each([
  ['blanks at the ends of lines', (n: number) => `carcasses:\n  a:\n${lines(n, (i) => `    k${i}: 1  \n`)}`],
  ['remarks under one another', (n: number) => `a:\n  b: 1\n${lines(n, () => '   # x\n')}  c: 2\n`],
  ['blank lines', (n: number) => `a:\n  b: 1\n${lines(n, () => '  \n')}  c: 2\n`],
])('a text with double the %s costs no more than double the work', (_, text) => {
  const cost = (size: number): number => stepsOf(() => expect(formatEdits(text(size)).length).toBeGreaterThan(0));
  cost(50);
  const [once, twice] = [cost(800), cost(1600)];
  expect(twice / once).toBeLessThan(2.4);
});
