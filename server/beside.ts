import { existsSync, readFileSync } from 'node:fs';
import { brotliDecompressSync } from 'node:zlib';

/** A file that stands beside the program is not there. */
export class ProgramNotWhole extends Error {
  constructor(readonly file: string) {
    super(file);
  }
}

const placeOf = (name: string): URL => new URL(`./${name}`, import.meta.url);
const packedName = (name: string): string => `${name}.br`;

/** Whether a file stands beside the program: none does where it runs from its sources. */
export const isBeside = (name: string): boolean => existsSync(placeOf(name));

/** The same of a packed file. */
export const isPackedBeside = (name: string): boolean => isBeside(packedName(name));

/** A file beside the program. Throws `ProgramNotWhole`. */
export function beside(name: string): Uint8Array<ArrayBuffer> {
  const place = placeOf(name);
  if (!existsSync(place)) throw new ProgramNotWhole(name);
  return Uint8Array.from(readFileSync(place));
}

/** A file that the build packed, unpacked. Throws `ProgramNotWhole`. */
export function packedBeside(name: string): Uint8Array<ArrayBuffer> {
  return brotliDecompressSync(beside(packedName(name)));
}
