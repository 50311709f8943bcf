import { parseLength } from './parse.js';
import type { Micrometres, Unit } from './units.js';
import { MICROMETRES_PER_INCH } from './units.js';

/** The finest fraction of an inch on a workshop rule (common practice, no source). */
const FINEST = 64;

/** How a file writes inches that are not whole. */
export type Inches = 'fractions' | 'decimals';

/** How lengths are written in a file. */
export interface Notation {
  readonly unit: Unit;
  readonly inches: Inches;
}

/**
 * A length as its owner would write it in a file whose unit is `unit`; reading it back gives the same micrometres. In a file
 * in inches what is no fraction of an inch down to 1/64 comes as a decimal.
 */
export function writeLength(value: Micrometres, unit: Unit, inches: Inches = 'fractions'): string {
  if (unit === 'mm') return thousandths(value);
  return (inches === 'fractions' ? fraction(value) : null) ?? decimalInches(value);
}

/** Inches as a decimal that reads back as this length. Five decimals are a quarter of a micrometre apart, so they always do. */
export function decimalInches(value: Micrometres): string {
  const texts = [0, 1, 2, 3, 4, 5].map((decimals) => (value / MICROMETRES_PER_INCH).toFixed(decimals));
  const exact = texts.find((text) => {
    const back = parseLength(text, 'in');
    return back.ok && back.value === value;
  });
  return exact ?? texts.at(-1)!;
}

/** Millimetres as a decimal, exactly. */
export function thousandths(value: Micrometres): string {
  const size = Math.abs(Math.round(value));
  const rest = size % 1000;
  const whole = (size - rest) / 1000;
  const text = rest === 0 ? String(whole) : `${whole}.${String(rest).padStart(3, '0').replace(/0+$/, '')}`;
  return value < 0 ? `-${text}` : text;
}

/** Inches as a whole number with a reduced fraction down to 1/64; null where no such fraction reads back as this length. */
export function fraction(value: Micrometres): string | null {
  const size = Math.abs(Math.round(value));
  const parts = Math.round((size * FINEST) / MICROMETRES_PER_INCH);
  if (Math.round((parts * MICROMETRES_PER_INCH) / FINEST) !== size) return null;
  return value < 0 && parts > 0 ? `-${mixed(parts)}` : mixed(parts);
}

/** So many 64ths as a whole number and a reduced fraction. */
function mixed(parts: number): string {
  const whole = Math.floor(parts / FINEST);
  let num = parts % FINEST;
  if (num === 0) return String(whole);
  let den = FINEST;
  while (num % 2 === 0) {
    num /= 2;
    den /= 2;
  }
  return whole === 0 ? `${num}/${den}` : `${whole} ${num}/${den}`;
}
