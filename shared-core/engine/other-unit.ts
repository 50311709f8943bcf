import { parseLength } from '../length/parse.js';
import type { Unit } from '../length/units.js';
import { decimalInches, fraction, thousandths } from '../length/write.js';
import type { Schema } from '../schema/schema.js';

/** A length as it is written in the other unit, in a file of `unit`: with the unit, and as short as the file takes it. */
export interface OtherUnit {
  readonly figure: string;
  readonly text: string;
}

/** The same length in the other unit, of exactly the same micrometres; null where there is none, or `text` is no length. */
export function inOtherUnit(text: string, unit: Unit): OtherUnit | null {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) return null;
  const other: Unit = /mm\s*$/i.test(text) || (unit === 'mm' && /[\d.]$/.test(text)) ? 'in' : 'mm';
  const figure = other === 'mm' ? thousandths(parsed.value) : (fraction(parsed.value) ?? decimalInches(parsed.value));
  const written = other === unit ? figure : `${figure} ${other}`;
  const back = parseLength(written, unit);
  return back.ok && back.value === parsed.value ? { figure: `${figure} ${other}`, text: written } : null;
}

/** True where a length may stand. */
export function takesLength(schema: Schema): boolean {
  return schema.type === 'length' || (schema.type === 'either' && schema.of.some(({ type }) => type === 'length'));
}
