import { existsSync, readFileSync } from 'node:fs';
import type { FaceCutter, Print } from '../shared-core/service.js';
import { faceCutter } from './face-subset.js';

/** The faces that all lettering is measured with. */
const FACES = { regular: 'fonts/LiberationSans-Regular.ttf', bold: 'fonts/LiberationSans-Bold.ttf' } as const;
const SUBSETTER = 'harfbuzz-subset.wasm';

/** A file that stands beside the program is not there. */
export class ProgramNotWhole extends Error {
  constructor(readonly file: string) {
    super(file);
  }
}

/** The whole faces, from beside the program. Throws `ProgramNotWhole`. */
export function facesBeside(): Print['fonts'] {
  return { regular: beside(FACES.regular), bold: beside(FACES.bold) };
}

let kept: FaceCutter | undefined;

/** Cuts the faces beside the program down for one drawing. Throws `ProgramNotWhole`. */
export function cutterBeside(): FaceCutter {
  kept ??= faceCutter(facesBeside(), new WebAssembly.Module(beside(SUBSETTER)));
  return kept;
}

/** The same where the program is whole; null where it runs from its sources, and drawings go without their face. */
export function cutterIfBeside(): FaceCutter | null {
  const isWhole = [FACES.regular, FACES.bold, SUBSETTER].every((name) => existsSync(placeOf(name)));
  return isWhole ? cutterBeside() : null;
}

const placeOf = (name: string): URL => new URL(`./${name}`, import.meta.url);

function beside(name: string): Uint8Array<ArrayBuffer> {
  const place = placeOf(name);
  if (!existsSync(place)) throw new ProgramNotWhole(name);
  return Uint8Array.from(readFileSync(place));
}
