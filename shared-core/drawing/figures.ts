import { MICROMETRES_PER_INCH, type Micrometres, type Unit } from '../length/units.js';
import { writeLength } from '../length/write.js';

/** A thousandth of an inch is finer than any stop is set. */
const INCH_DECIMALS = 3;

/** A length as it stands on a drawing, without its unit: whole fractions of an inch as such, all else to a thousandth. */
export function figure(length: Micrometres, unit: Unit): string {
  const exact = writeLength(length, unit);
  const point = exact.indexOf('.');
  if (unit === 'mm' || point < 0 || exact.length - point - 1 <= INCH_DECIMALS) return exact;
  return (length / MICROMETRES_PER_INCH).toFixed(INCH_DECIMALS).replace(/\.?0+$/, '');
}

/** The same with its unit, for sentences. */
export function figureWithUnit(length: Micrometres, unit: Unit): string {
  return `${figure(length, unit)} ${unit}`;
}
