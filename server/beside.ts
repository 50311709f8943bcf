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

/** Whether files stand beside the program: they do not where it runs from its sources. */
export const areBeside = (names: readonly string[]): boolean => names.every((name) => existsSync(placeOf(name)));

/** Whether a packed file stands beside the program. */
export const isPackedBeside = (name: string): boolean => areBeside([packedName(name)]);

/** A file beside the program. Throws `ProgramNotWhole`. */
export function beside(name: string): Uint8Array<ArrayBuffer> {
  const place = placeOf(name);
  if (!existsSync(place)) throw new ProgramNotWhole(name);
  return Uint8Array.from(readFileSync(place));
}

/** A file that the build packed, unpacked. Throws `ProgramNotWhole`. */
export function packedBeside(name: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(brotliDecompressSync(beside(packedName(name))));
}
