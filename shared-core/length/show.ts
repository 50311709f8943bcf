import { decimalsFor, inchesFor, unitFor, type Reader } from './reader.js';
import type { Micrometres, Unit } from './units.js';
import { MICROMETRES_PER_INCH } from './units.js';
import { fraction, thousandths } from './write.js';

/** A thousandth of an inch is finer than any stop is set. */
const INCH_DECIMALS = 3;

const TENTH = 100;

/**
 * How far a length that is written as it was shown may be from the one that was shown: half of the last digit, of inches rounded
 * up as lengths are whole micrometres (0.0005 in is 12.7). Of millimetres every micrometre is shown; halves were rounded.
 */
export const SHOWN_WITHIN: Readonly<Record<Unit, Micrometres>> = {
  mm: 1,
  in: Math.ceil(MICROMETRES_PER_INCH / 10 ** INCH_DECIMALS / 2),
};

/** A length to be read, without its unit: whole fractions of an inch as such, all else to a micrometre or a thousandth of an inch. */
export function figure(length: Micrometres, reader: Reader): string {
  if (unitFor(reader) === 'mm') return decimalsFor(thousandths(length), reader);
  return fractionFor(length, reader) ?? decimalInches(length, reader);
}

/** Null where the length is no whole fraction of an inch, and where this reader wants none. */
function fractionFor(length: Micrometres, reader: Reader): string | null {
  return inchesFor(reader) === 'fractions' ? fraction(length) : null;
}

function decimalInches(length: Micrometres, reader: Reader): string {
  return decimalsFor((length / MICROMETRES_PER_INCH).toFixed(INCH_DECIMALS).replace(/\.?0+$/, ''), reader);
}

/**
 * How lengths that are read side by side are written (a column, the sizes of a panel): in one notation, inches as fractions only
 * where each of them is one, else all as decimals.
 */
export function inOneNotation(lengths: readonly Micrometres[], reader: Reader): (length: Micrometres) => string {
  const mixed = unitFor(reader) === 'in' && lengths.some((length) => fraction(length) === null);
  return (length) => (mixed ? decimalInches(length, reader) : figure(length, reader));
}

/** Sizes side by side with their unit: '720 × 560 × 16 mm', '28.346 × 22.047 × 0.63 in'. */
export function showSizes(lengths: readonly Micrometres[], reader: Reader): string {
  return `${lengths.map(inOneNotation(lengths, reader)).join(' × ')} ${unitFor(reader)}`;
}

/**
 * The size that a bit, a pitch or a dowel is sold by, with its unit: '5 mm', '32 mm', '1/4 in'. Where it is a round one only in
 * the other unit (tenths of a millimetre, whole fractions of an inch), it is shown in that one: 5 mm are no size in inches.
 */
export function nominal(length: Micrometres, reader: Reader): string {
  return nominalUnit(length, reader) === unitFor(reader) ? showLength(length, reader) : inOtherUnit(length, reader);
}

/** The same for a place that says the unit: it stands here only where it is the other one. */
export function nominalFigure(length: Micrometres, reader: Reader): string {
  return nominalUnit(length, reader) === unitFor(reader) ? figure(length, reader) : nominal(length, reader);
}

function nominalUnit(length: Micrometres, reader: Reader): Unit {
  const isMetric = length % TENTH === 0;
  const isInches = fraction(length) !== null;
  if (isMetric === isInches) return unitFor(reader);
  return isMetric ? 'mm' : 'in';
}

/** The same with its unit: '600 mm', '23 5/8 in'. */
export function showLength(length: Micrometres, reader: Reader): string {
  return `${figure(length, reader)} ${unitFor(reader)}`;
}

/** With the unit that this reader does not take: '23 5/8 in' to one with millimetres. */
export function inOtherUnit(length: Micrometres, reader: Reader): string {
  if (unitFor(reader) === 'in') return `${decimalsFor(thousandths(length), reader)} mm`;
  return `${fractionFor(length, reader) ?? decimalInches(length, reader)} in`;
}

/** What strays, without its unit: hundredths of a millimetre, thousandths of an inch; no rule shows more. */
export function fine(length: number, reader: Reader): string {
  const told =
    unitFor(reader) === 'mm'
      ? (Math.round(length / 10) / 100).toFixed(2)
      : (length / MICROMETRES_PER_INCH).toFixed(INCH_DECIMALS);
  return decimalsFor(told, reader);
}
