import { expect, test } from 'vitest';
import { readTree } from '../../../shared-core/document/read.js';
import { inchesOf } from '../../../shared-core/job/notation.js';
import { writeLength } from '../../../shared-core/length/write.js';

test.each([
  ['width: 24 1/2\nheight: 30', 'fractions'],
  ['width: 24\nheight: 30', 'fractions'],
  ['width: 24.5\nheight: 30', 'decimals'],
  ['width: 24\nloose-shelves: [{ at: 10.25 }]', 'decimals'],
  ['width: 24.5\nheight: 30 1/4', 'fractions'],
  ['width: 24\nrow-offset: 18.5 mm', 'fractions'],
] as const)('%j writes inches as %s', (text, wanted) => {
  expect(inchesOf(readTree(text, 'self').root)).toBe(wanted);
});

test('half an inch in either notation', () => {
  expect(writeLength(12_700, 'in', 'fractions')).toBe('1/2');
  expect(writeLength(12_700, 'in', 'decimals')).toBe('0.5');
});
