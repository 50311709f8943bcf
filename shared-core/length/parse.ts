import type { Micrometres, Unit } from './units.js';
import { MICROMETRES_PER_INCH, MICROMETRES_PER_MM } from './units.js';

/** Why a text is not a length. */
export interface LengthFault {
  readonly as: 'empty' | 'too-long' | 'by-nought' | 'too-great' | 'comma' | 'unit' | 'exponent' | 'other';
  /** As it stands, with plain quotes and signs. */
  readonly text: string;
  /** What was most likely meant, as a length of the same unit of file; exact. */
  readonly instead: string | null;
}

export type ParsedLength =
  { readonly ok: true; readonly value: Micrometres } | { readonly ok: false; readonly fault: LengthFault };

/** An exact quotient; `den` is positive. */
interface Fraction {
  readonly num: bigint;
  readonly den: bigint;
}

/** Nothing that a workshop writes is longer; it also bounds the work of a hostile text. */
const LONGEST_TEXT = 80;
/** A kilometre: far beyond every bound of the schema, far below the safe integers. */
const GREATEST: bigint = 1_000_000_000n;

const NUMBER = String.raw`\d+(?:\s+|-)\d+\/\d+|\d+\/\d+|\d+(?:\.\d*)?|\.\d+`;
const INCH = String.raw`"|in|inch|inches`;
const LENGTH = new RegExp(
  String.raw`^(?<sign>[-+]?)\s*(?:` +
    String.raw`(?<feet>${NUMBER})\s*(?:'|ft)(?:\s*-?\s*(?<rest>${NUMBER})\s*(?:${INCH})?)?` +
    String.raw`|(?<number>${NUMBER})\s*(?<unit>mm|${INCH})?)$`,
  'i',
);

/** The form of a length as a regular expression for other programs: no named groups, lower-case units, straight quotes. */
export const LENGTH_PATTERN = LENGTH.source.replace(/\?<\w+>/g, '?:');

/**
 * Reads one length exactly and rounds it to the nearest micrometre, halves away from zero. `unit` is that of a bare
 * number. Accepts decimals, fractions, mixed numbers, mm, inches, and feet with inches, each with a sign; nothing else.
 * Never throws.
 */
export function parseLength(text: string, unit: Unit): ParsedLength {
  const tidy = text
    .trim()
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/\u2212/g, '-');
  if (tidy === '') return fail('empty', tidy);
  if (tidy.length > LONGEST_TEXT) return fail('too-long', tidy);
  const groups = LENGTH.exec(tidy)?.groups;
  if (groups === undefined) return fail(reason(tidy), tidy, meant(tidy, unit));
  const magnitude = groups.feet === undefined ? fraction(groups.number!) : addFeet(groups.feet, groups.rest);
  if (magnitude === null) return fail('by-nought', tidy);
  const scale =
    groups.feet === undefined && (groups.unit === undefined ? unit === 'mm' : groups.unit.toLowerCase() === 'mm')
      ? MICROMETRES_PER_MM
      : MICROMETRES_PER_INCH;
  const value = roundedQuotient(magnitude.num * BigInt(scale), magnitude.den);
  if (value > GREATEST) return fail('too-great', tidy);
  return { ok: true, value: groups.sign === '-' && value !== 0n ? -Number(value) : Number(value) };
}

function fail(as: LengthFault['as'], text: string, instead: string | null = null): ParsedLength {
  return { ok: false, fault: { as, text, instead } };
}

function reason(text: string): LengthFault['as'] {
  if (/^[-+]?[\d.,]+\s*(?:cm|m|dm)$/i.test(text)) return 'unit';
  if (/^[-+]?\d+,\d+\s*(?:mm|inches|inch|in|")?$/i.test(text)) return 'comma';
  if (/^[-+]?[\d.]+e[-+]?\d+$/i.test(text)) return 'exponent';
  return 'other';
}

/** Millimetres in the metric units that people write and files do not. */
const METRIC: Readonly<Record<string, bigint>> = { cm: 10n, dm: 100n, m: 1000n };

/** A length with a decimal comma, or in another metric unit, as it should be written; null for anything else. */
function meant(text: string, unit: Unit): string | null {
  const [, sign, whole, decimals = '', suffix = ''] =
    /^([-+]?)(\d+)(?:[.,](\d+))?\s*(mm|cm|dm|m|inch|inches|in|")?$/i.exec(text) ?? [];
  if (sign === undefined || whole === undefined) return null;
  const factor = METRIC[suffix.toLowerCase()];
  if (factor === undefined) {
    const space = suffix === '' || suffix === '"' ? '' : ' ';
    return decimals === '' ? null : `${sign}${whole}.${decimals}${space}${suffix}`;
  }
  const digits = String(BigInt(`${whole}${decimals}`) * factor).padStart(decimals.length + 1, '0');
  const point = digits.length - decimals.length;
  const rest = digits.slice(point).replace(/0+$/, '');
  // Millimetres are the exact way to write metric units in a file of inches too.
  return `${sign}${digits.slice(0, point)}${rest === '' ? '' : `.${rest}`}${unit === 'mm' ? '' : ' mm'}`;
}

/** The value of a NUMBER; null where it divides by nought. */
function fraction(text: string): Fraction | null {
  const parts = /^(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)$/.exec(text);
  if (parts !== null) {
    const den = BigInt(parts[3]!);
    if (den === 0n) return null;
    return { num: BigInt(parts[1] ?? '0') * den + BigInt(parts[2]!), den };
  }
  const [whole = '', decimals = ''] = text.split('.');
  return { num: BigInt(`0${whole}${decimals}`), den: 10n ** BigInt(decimals.length) };
}

/** Feet and inches as inches. */
function addFeet(feet: string, rest: string | undefined): Fraction | null {
  const a = fraction(feet);
  const b = rest === undefined ? { num: 0n, den: 1n } : fraction(rest);
  if (a === null || b === null) return null;
  return { num: 12n * a.num * b.den + b.num * a.den, den: a.den * b.den };
}

/** num / den to the nearest whole number, halves up; both are not negative. */
function roundedQuotient(num: bigint, den: bigint): bigint {
  return (2n * num + den) / (2n * den);
}
