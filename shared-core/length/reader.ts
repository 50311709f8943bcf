import type { Unit } from './units.js';
import type { Inches } from './write.js';

/** How somebody wants lengths shown to him, whatever stands in the files. */
export interface LengthWish {
  /** Null for the unit of each file. */
  readonly unit: Unit | null;
  /** `fractions` only where a length is a whole one. */
  readonly inches: Inches;
  /** Decimals with a comma, as some languages have them: only where nothing is taken into a file. */
  readonly comma?: boolean;
}

/** Whom lengths of a file are shown to: one who takes them in the unit of the file, or one with a wish of his own. */
export type Reader = Unit | { readonly fileUnit: Unit; readonly wish: LengthWish };

/** The reader of a file in this unit. */
export function readerOf(fileUnit: Unit, wish: LengthWish | null): Reader {
  return wish === null ? fileUnit : { fileUnit, wish };
}

/** The unit that this reader is shown lengths in. */
export function unitFor(reader: Reader): Unit {
  return typeof reader === 'string' ? reader : (reader.wish.unit ?? reader.fileUnit);
}

/** The unit that the file before this reader is written in: that of whatever he is told to write. */
export function writtenUnit(reader: Reader): Unit {
  return typeof reader === 'string' ? reader : reader.fileUnit;
}

/** How this reader is shown inches. */
export function inchesFor(reader: Reader): Inches {
  return typeof reader === 'string' ? 'fractions' : reader.wish.inches;
}

/** A figure with decimals as this reader takes it. */
export function decimalsFor(figure: string, reader: Reader): string {
  return typeof reader === 'string' || reader.wish.comma !== true ? figure : figure.replace('.', ',');
}

/** The same reader before a file in this unit. */
export function readingFile(reader: Reader, fileUnit: Unit): Reader {
  return typeof reader === 'string' ? fileUnit : { ...reader, fileUnit };
}
