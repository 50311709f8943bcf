import { expect, test } from 'vitest';
import {
  decimalsFor,
  inchesFor,
  readerOf,
  readingFile,
  unitFor,
  writtenUnit,
  type LengthWish,
} from '../../../shared-core/length/reader.js';
import { fine, inOtherUnit } from '../../../shared-core/length/show.js';

const wish: LengthWish = { unit: 'in', inches: 'decimals', comma: true };

test('a reader without a wish takes the unit of the file, in fractions and with points', () => {
  const reader = readerOf('mm', null);
  expect([reader, unitFor(reader), writtenUnit(reader), inchesFor(reader)]).toEqual(['mm', 'mm', 'mm', 'fractions']);
  expect(decimalsFor('12.5', reader)).toBe('12.5');
  expect(readingFile(reader, 'in')).toBe('in');
});

test('a wish decides what is shown, the file what is written', () => {
  const reader = readerOf('mm', wish);
  expect([unitFor(reader), writtenUnit(reader), inchesFor(reader)]).toEqual(['in', 'mm', 'decimals']);
  expect(decimalsFor('12.5', reader)).toBe('12,5');
  expect(decimalsFor('12.5', readerOf('mm', { ...wish, comma: false }))).toBe('12.5');
  expect(readingFile(reader, 'in')).toEqual({ fileUnit: 'in', wish });
  expect(unitFor(readerOf('in', { ...wish, unit: null }))).toBe('in');
});

test.each([
  [1_234, 'mm', '1.23'],
  [1_235, 'mm', '1.24'],
  [12_700, 'in', '0.500'],
  [1_000, 'in', '0.039'],
  [1_234, readerOf('in', { ...wish, unit: 'mm' }), '1,23'],
] as const)('what strays by %i µm is shown to %j as %s', (length, reader, words) => {
  expect(fine(length, reader)).toBe(words);
});

test.each([
  [12_700, 'mm', '1/2 in'],
  [5_000, 'mm', '0.197 in'],
  [5_000, 'in', '5 mm'],
  [5_500, readerOf('in', wish), '5,5 mm'],
  [12_700, readerOf('in', { ...wish, unit: 'mm' }), '0,5 in'],
] as const)('%i µm in the unit that %j does not take are %s', (length, reader, words) => {
  expect(inOtherUnit(length, reader)).toBe(words);
});
