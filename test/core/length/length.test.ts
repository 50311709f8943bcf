import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLength } from '../../../shared-core/length/parse.js';
import type { Unit } from '../../../shared-core/length/units.js';
import { half, MICROMETRES_PER_INCH } from '../../../shared-core/length/units.js';
import { notALength } from '../../../shared-core/schema/length-words.js';
import { showLength } from '../../../shared-core/length/show.js';
import { writeLength } from '../../../shared-core/length/write.js';

const read = (text: string, unit: Unit = 'mm'): number => {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) throw new Error(parsed.fault.as);
  return parsed.value;
};
const refusal = (text: string, unit: Unit = 'mm'): string => {
  const parsed = parseLength(text, unit);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.value}`);
  return notALength(parsed.fault, unit);
};

const unit = fc.constantFrom<Unit>('mm', 'in');
const micrometres = fc.integer({ min: -20_000_000, max: 20_000_000 });

describe('reading', () => {
  // The inch is 25.4 mm exactly, the foot twelve of them (International Yard and Pound agreement, 1959).
  test.each([
    ['600', 600_000],
    ['600 mm', 600_000],
    ['600.5mm', 600_500],
    ['.5', 500],
    ['1.', 1_000],
    ['1 in', 25_400],
    ['23 5/8 in', 600_075],
    ['23 5/8"', 600_075],
    ['23-5/8"', 600_075],
    [`1' 11 5/8"`, 600_075],
    [`1'11-5/8"`, 600_075],
    [`2'`, 609_600],
    [`2' 6`, 762_000],
    ['1 ft', 304_800],
    ['3000/127 in', 600_000],
    ['1/3 mm', 333],
    ['1/64 in', 397],
    ['-12', -12_000],
    ['+ 12 MM', 12_000],
    ['\u2212 1/2 in', -12_700],
    ['1\u2032 11 5/8\u2033', 600_075],
    ['-0', 0],
    ['000012', 12_000],
  ])('%s', (text, wanted) => {
    expect(read(text)).toBe(wanted);
    expect(Object.is(read(text), -0)).toBe(false);
  });

  test('a bare number is in the unit of the file, a number with a unit is not', () => {
    expect(read('23 5/8', 'in')).toBe(600_075);
    expect(read('1', 'in')).toBe(25_400);
    expect(read('600 mm', 'in')).toBe(600_000);
  });

  test('halves of a micrometre round away from zero', () => {
    expect(read('0.0005')).toBe(1);
    expect(read('-0.0005')).toBe(-1);
    expect(read('0.00049999999999999999999999999')).toBe(0);
    expect(read('1/2000')).toBe(1);
    expect(read('1/16 in')).toBe(1588);
  });

  test.each([
    '',
    ' ',
    'NaN',
    'Infinity',
    '1e999',
    '1e3',
    '12 abc',
    '60 cm',
    '6 5',
    '1/',
    '/2',
    '1/0',
    '0 1/0 in',
    '1,5',
    '--1',
    '1 mm in',
    "'",
    '"',
    `1' 2'`,
    '0x10',
    '१२',
    'mm',
    '1 2/3/4',
    '9'.repeat(200),
    '9'.repeat(60),
  ])('says of ‘%s’ what to write', (text) => {
    for (const unit of ['mm', 'in'] as const) {
      const message = refusal(text, unit);
      expect(message).toMatch(
        /Write it like .*23 5\/8.*600 mm|Write it like 600, 600\.5 mm, 23 5\/8 in|Write the number in full|Write [\d.]+( mm)?\.$/,
      );
      expect(message.length).toBeLessThan(250);
    }
  });

  test('says what is wrong', () => {
    expect(refusal('600,5')).toContain('600.5');
    expect(refusal('60 cm')).toContain('unit');
    expect(refusal('1e999')).toContain('exponent');
    expect(refusal('1/0')).toContain('zero');
    expect(refusal('9999999999')).toContain('kilometre');
  });

  test('never throws, and gives whole micrometres', () => {
    const pieces = fc.array(
      fc.constantFrom('1', '23', '5/8', ' ', '.', '-', "'", '"', 'mm', 'in', 'ft', '/', ',', 'e', 'é', '\u2033', '0'),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          pieces.map((some) => some.join('')),
        ),
        unit,
        (text, unit) => {
          const parsed = parseLength(text, unit);
          if (parsed.ok) expect(Number.isSafeInteger(parsed.value)).toBe(true);
          else expect(notALength(parsed.fault, unit)).toMatch(/\.$/);
        },
      ),
      { numRuns: 3000 },
    );
  });
});

describe('writing', () => {
  test.each([
    [600_000, 'mm', '600 mm'],
    [600_500, 'mm', '600.5 mm'],
    [12, 'mm', '0.012 mm'],
    [-1_500, 'mm', '-1.5 mm'],
    [0, 'in', '0 in'],
    [600_075, 'in', '23 5/8 in'],
    [12_700, 'in', '1/2 in'],
    [397, 'in', '1/64 in'],
    [600_000, 'in', '23.622 in'],
    [12, 'in', '0 in'],
    [-600_075, 'in', '-23 5/8 in'],
  ] as const)('%d in %s', (value, unit, wanted) => {
    expect(showLength(value, unit)).toBe(wanted);
  });

  test('what is written reads back as the same micrometres, in either unit of file', () => {
    fc.assert(
      fc.property(micrometres, unit, unit, (value, unit, other) => {
        expect(read(writeLength(value, unit), unit)).toBe(value);
        // Half a thousandth of an inch is 12.7 micrometres.
        expect(Math.abs(read(showLength(value, unit), other) - value)).toBeLessThanOrEqual(unit === 'mm' ? 0 : 13);
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    [600_000, 'in', '23.62205'],
    [713_525, 'in', '28.09154'],
    [-754_001, 'in', '-29.68508'],
    [38_202, 'in', '1.504'],
    [600_075, 'in', '23 5/8'],
    [600_000, 'mm', '600'],
  ] as const)('%d in a file in %s is written %s', (value, unit, wanted) => {
    expect(writeLength(value, unit)).toBe(wanted);
  });

  test('every 64th of an inch is shown as a fraction', () => {
    for (let parts = 0; parts < 64 * 3; parts += 1) {
      const text = writeLength(read(`${parts}/64 in`), 'in');
      expect(text).toMatch(/^\d+$|^(\d+ )?\d+\/(2|4|8|16|32|64)$/);
      const [whole, fraction] = text.includes('/') ? text.split(/ (?=\d+\/)|^(?=\d+\/)/) : [text, '0/1'];
      const [num, den] = (fraction ?? whole)!.split('/').map(Number) as [number, number];
      expect((fraction === undefined ? 0 : Number(whole)) * 64 + (num * 64) / den).toBe(parts);
    }
  });
});

test('a length in millimetres is the same length as its exact fraction of inches', () => {
  const decimal = fc.tuple(fc.nat(9999), fc.nat(9999), fc.integer({ min: 0, max: 4 }));
  fc.assert(
    fc.property(decimal, fc.boolean(), ([whole, rest, places], negative) => {
      const digits = places === 0 ? '' : `.${String(rest).padStart(4, '0').slice(0, places)}`;
      const sign = negative ? '-' : '';
      // 1 mm = 5/127 in.
      const num = BigInt(`${whole}${digits.slice(1)}`) * 5n;
      const den = 127n * 10n ** BigInt(Math.max(0, digits.length - 1));
      const inches = `${sign}${num}/${den}`;
      expect(read(`${inches} in`)).toBe(read(`${sign}${whole}${digits} mm`));
      expect(read(inches, 'in')).toBe(read(`${sign}${whole}${digits}`));
    }),
    { numRuns: 2000 },
  );
});

test('half is whole, and no more than half', () => {
  fc.assert(
    fc.property(micrometres, (value) => {
      expect(value - 2 * half(value)).toBeGreaterThanOrEqual(0);
      expect(value - 2 * half(value)).toBeLessThanOrEqual(1);
    }),
  );
  expect(half(MICROMETRES_PER_INCH * 3) * 2).toBe(MICROMETRES_PER_INCH * 3);
});
