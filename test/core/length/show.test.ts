import { expect, test } from 'vitest';
import { inOneNotation, nominal, nominalFigure, showLength, showSizes } from '../../../shared-core/length/show.js';
import { messages, tell } from '../../../shared-core/words/message.js';

test.each([
  // Sizes of bits and pitches by which they are sold (common practice, no source).
  [5_000, 'in', '5 mm'],
  [32_000, 'in', '32 mm'],
  [6_350, 'in', '1/4 in'],
  [6_350, 'mm', '1/4 in'],
  [5_000, 'mm', '5 mm'],
  // 12.7 mm is a round size in both: the reader's unit decides.
  [12_700, 'mm', '12.7 mm'],
  [12_700, 'in', '1/2 in'],
  // A round size in neither.
  [5_037, 'in', '0.198 in'],
] as const)('a size of %i µm to a reader of %s is %s', (length, unit, words) => {
  expect(nominal(length, unit)).toBe(words);
  expect(nominalFigure(length, unit)).toBe(words.endsWith(` ${unit}`) ? words.slice(0, -unit.length - 1) : words);
});

test.each([
  [12_700, { fileUnit: 'in', wish: { unit: null, inches: 'decimals' } }, '0.5 in'],
  [12_700, { fileUnit: 'mm', wish: { unit: null, inches: 'decimals' } }, '12.7 mm'],
  [12_700, { fileUnit: 'mm', wish: { unit: 'in', inches: 'fractions' } }, '1/2 in'],
  [12_700, { fileUnit: 'in', wish: { unit: 'mm', inches: 'fractions' } }, '12.7 mm'],
] as const)('%i µm to a reader with a wish of his own (%o) are %s', (length, reader, words) => {
  expect(showLength(length, reader)).toBe(words);
  expect(showSizes([length, 2 * length], reader)).toContain(words.split(' ')[1]);
});

test('a wish is for the message of another file too', () => {
  const say = messages('test', { deep: ({ deep }: { readonly deep: number }, show) => `${show.length(deep)} deep` });
  const message = say.deep({ deep: 12_700 }).in('in');
  expect(tell(message, 'mm')).toBe('1/2 in deep');
  expect(tell(message, { fileUnit: 'mm', wish: { unit: null, inches: 'decimals' } })).toBe('0.5 in deep');
  expect(tell(message, { fileUnit: 'mm', wish: { unit: 'mm', inches: 'decimals' } })).toBe('12.7 mm deep');
});

test('lengths side by side are in one notation', () => {
  const half = 12_700;
  expect([half, 2 * half].map(inOneNotation([half, 2 * half], 'in'))).toEqual(['1/2', '1']);
  expect([half, 5_037].map(inOneNotation([half, 5_037], 'in'))).toEqual(['0.5', '0.198']);
  expect(showSizes([600_075, 5_037], 'in')).toBe('23.625 × 0.198 in');
  expect(showSizes([720_000, 560_000, 16_000], 'mm')).toBe('720 × 560 × 16 mm');
});
