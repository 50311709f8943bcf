import type { Micrometres, Unit } from './units.js';
import { MICROMETRES_PER_INCH } from './units.js';
import { fraction, thousandths } from './write.js';

/** A thousandth of an inch is finer than any stop is set. */
const INCH_DECIMALS = 3;

/** A length to be read, without its unit: whole fractions of an inch as such, all else to a micrometre or a thousandth of an inch. */
export function figure(length: Micrometres, unit: Unit): string {
  if (unit === 'mm') return thousandths(length);
  const decimal = (length / MICROMETRES_PER_INCH).toFixed(INCH_DECIMALS);
  return fraction(length) ?? decimal.replace(/\.?0+$/, '');
}

/** The same with its unit: '600 mm', '23 5/8 in'. */
export function showLength(length: Micrometres, unit: Unit): string {
  return `${figure(length, unit)} ${unit}`;
}

/** What strays, without its unit: hundredths of a millimetre, thousandths of an inch; no rule shows more. */
export function fine(length: number, unit: Unit): string {
  return unit === 'mm'
    ? (Math.round(length / 10) / 100).toFixed(2)
    : (length / MICROMETRES_PER_INCH).toFixed(INCH_DECIMALS);
}
