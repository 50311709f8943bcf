import type { LengthFault } from '../length/parse.js';
import type { Unit } from '../length/units.js';
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
