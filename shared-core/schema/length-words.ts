import { parseLength, type LengthFault } from '../length/parse.js';
import type { Micrometres, Unit } from '../length/units.js';
import { quoted } from '../words/english.js';

/** What a length may look like; the first example is in the unit of the file. */
const FORMS: Readonly<Record<Unit, string>> = {
  mm: 'Write it like 600, 600.5 mm, 23 5/8 in or 1\' 11 5/8".',
  in: 'Write it like 23 5/8, 23.625, 1\' 11 5/8" or 600 mm.',
};

/** Why a text is not a length, and what to write. */
export function notALength({ as, text, instead }: LengthFault, unit: Unit): string {
  switch (as) {
    case 'empty':
      return `A length is missing. ${FORMS[unit]}`;
    case 'too-long':
      return `${quoted(text)} is too long for a length. ${FORMS[unit]}`;
    case 'by-nought':
      return `${quoted(text)} divides by zero. ${FORMS[unit]}`;
    case 'too-great':
      return `${quoted(text)} is more than a kilometre. ${FORMS[unit]}`;
    case 'comma':
      return `${quoted(text)} has a decimal comma. Write ${instead ?? 'a point'}.`;
    case 'unit':
      return `${quoted(text)} has a unit that these files do not use. Write ${instead ?? 'it in mm or in'}.`;
    case 'exponent':
      return `${quoted(text)} has an exponent. Write the number in full.`;
    case 'other':
      return `${quoted(text)} is not a length. ${FORMS[unit]}`;
  }
}

/** About one length each, written out in both units; the first that the bounds let through is taken. */
const EXAMPLES: readonly Readonly<Record<Unit, readonly [bare: string, ...more: string[]]>>[] = [
  { mm: ['600', '600.5 mm'], in: ['23 5/8', '23.625 in', '1\' 11 5/8"'] },
  { mm: ['120', '120.5 mm'], in: ['4 3/4', '4.75 in'] },
  { mm: ['18', '18.5 mm'], in: ['11/16', '0.75 in'] },
  { mm: ['5', '5.5 mm'], in: ['3/16', '0.2 in'] },
  { mm: ['0.4', '0.5 mm'], in: ['1/64', '0.02 in'] },
];

export const otherUnit = (unit: Unit): Unit => (unit === 'mm' ? 'in' : 'mm');

/** Lengths within the bounds in the forms that may be written: bare in the unit of the file, else with their unit. */
export function lengthExamples(
  { min, max }: { readonly min: Micrometres; readonly max: Micrometres },
  unit: Unit,
): readonly string[] {
  const isWithin = (text: string, of: Unit): boolean => within(text, of, min, max);
  const fitting = EXAMPLES.find((one) => isWithin(one.mm[0], 'mm') && isWithin(one.in[0], 'in')) ?? EXAMPLES.at(-1)!;
  const [bare, ...more] = fitting[unit];
  const [foreign] = fitting[otherUnit(unit)];
  return [bare, ...more, `${foreign} ${otherUnit(unit)}`].filter((text) => isWithin(text, unit));
}

function within(text: string, unit: Unit, min: Micrometres, max: Micrometres): boolean {
  const read = parseLength(text, unit);
  return read.ok && min <= read.value && read.value <= max;
}
