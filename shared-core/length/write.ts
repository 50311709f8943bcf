import { parseLength } from './parse.js';
import type { Micrometres, Unit } from './units.js';
import { MICROMETRES_PER_INCH } from './units.js';

/** The finest fraction of an inch on a workshop rule (common practice, no source). */
const FINEST = 64;

/** A length for its owner to read, with its unit: '600 mm', '23 5/8 in'. */
export function showLength(value: Micrometres, unit: Unit): string {
  return `${writeLength(value, unit)} ${unit}`;
}

/**
 * A length as a bare number for a file whose unit is `unit`; reading it back gives the same micrometres. Inches come as a
 * fraction down to 1/64 where that reads back exactly, else as a decimal.
 */
export function writeLength(value: Micrometres, unit: Unit): string {
  const whole = Math.round(value);
  const size = Math.abs(whole);
  const text = unit === 'mm' ? thousandths(size) : inches(size);
  return whole < 0 ? `-${text}` : text;
}

function thousandths(size: Micrometres): string {
  const rest = size % 1000;
  const whole = (size - rest) / 1000;
  return rest === 0 ? String(whole) : `${whole}.${String(rest).padStart(3, '0').replace(/0+$/, '')}`;
}

function inches(size: Micrometres): string {
  const parts = Math.round((size * FINEST) / MICROMETRES_PER_INCH);
  if (Math.round((parts * MICROMETRES_PER_INCH) / FINEST) === size) return mixed(parts);
  // 1/100000 in is 0.254 micrometres, so five decimals always single out one micrometre.
  for (let decimals = 3; decimals < 5; decimals += 1) {
    const text = (size / MICROMETRES_PER_INCH).toFixed(decimals);
    // Read as a file is read: a float product can fall on the other side of a half.
    const back = parseLength(text, 'in');
    if (back.ok && back.value === size) return text;
  }
  return (size / MICROMETRES_PER_INCH).toFixed(5);
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
