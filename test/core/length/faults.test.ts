import { describe, expect, test } from 'vitest';
import { parseLength, type LengthFault } from '../../../shared-core/length/parse.js';
import type { Unit } from '../../../shared-core/length/units.js';

// Why a text is no length, and what it says was meant.

const CASES: readonly (readonly [text: string, as: LengthFault['as'], instead: string | null, unit?: Unit])[] = [
  ['', 'empty', null],
  ['  ', 'empty', null],
  ['7'.repeat(81), 'too-long', null],
  ['7'.repeat(80), 'too-great', null],
  ['1000000.001', 'too-great', null],
  ['1/0', 'by-nought', null],
  ['3 1/0 in', 'by-nought', null],
  ["1/0'", 'by-nought', null],
  ['1\' 1/0"', 'by-nought', null],
  // Decimal commas.
  ['12,5', 'comma', '12.5'],
  ['-12,55', 'comma', '-12.55'],
  ['+1,5', 'comma', '+1.5'],
  ['12,5 mm', 'comma', '12.5 mm'],
  ['12,5mm', 'comma', '12.5 mm'],
  ['12,5 IN', 'comma', '12.5 IN'],
  ['12,5"', 'comma', '12.5"'],
  ['12,5 inches', 'comma', '12.5 inches'],
  ['a12,5', 'other', null],
  ['12,5x', 'other', null],
  ['12,', 'other', null],
  [',5', 'other', null],
  ['1,2,3', 'other', null],
  // Other metric units.
  ['60 cm', 'unit', '600'],
  ['60cm', 'unit', '600'],
  ['-60 CM', 'unit', '-600'],
  ['1.25 m', 'unit', '1250'],
  ['0.0125 m', 'unit', '12.5'],
  ['7 dm', 'unit', '700'],
  ['60 cm', 'unit', '600 mm', 'in'],
  ['1,25 m', 'unit', '1250'],
  ['60,55 cm', 'unit', '605.5'],
  ['60 cm x', 'other', null],
  ['x60 cm', 'other', null],
  ['1.2.3 m', 'unit', null],
  // Exponents.
  ['6e2', 'exponent', null],
  ['-6.5E+2', 'exponent', null],
  ['6e-2', 'exponent', null],
  ['x6e2', 'other', null],
  ['6e2 mm', 'other', null],
  ['600 kg', 'other', null],
  ['five', 'other', null],
  ['600 cmm', 'other', null],
  ['12,55 cubits', 'other', null],
];

for (const [text, as, instead, unit = 'mm'] of CASES)
  test(`${JSON.stringify(text)} in a file in ${unit} is no length: ${as}`, () => {
    expect(parseLength(text, unit)).toEqual({ ok: false, fault: { as, text: text.trim(), instead } });
  });

describe('what stands at a bound', () => {
  test('a kilometre is read, and so is a text of eighty letters', () => {
    expect(parseLength('1000000', 'mm')).toEqual({ ok: true, value: 1_000_000_000 });
    expect(parseLength(`12.${'0'.repeat(77)}`, 'mm')).toEqual({ ok: true, value: 12_000 });
  });

  test('blanks around it do not count', () => {
    expect(parseLength(`${' '.repeat(100)}12.5\t`, 'mm')).toEqual({ ok: true, value: 12_500 });
  });
});
