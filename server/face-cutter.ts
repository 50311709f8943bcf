import type { FaceCutter, Print } from '../shared-core/service.js';
import { beside, isBeside, isPackedBeside, packedBeside } from './beside.js';
import { faceCutter } from './face-subset.js';

/** The faces that all lettering is measured with. */
const FACES = { regular: 'fonts/LiberationSans-Regular.ttf', bold: 'fonts/LiberationSans-Bold.ttf' } as const;
const SUBSETTER = 'harfbuzz-subset.wasm';

/** The whole faces, from beside the program. Throws `ProgramNotWhole`. */
export function facesBeside(): Print['fonts'] {
  return { regular: beside(FACES.regular), bold: beside(FACES.bold) };
}

let kept: FaceCutter | undefined;

/** Cuts the faces beside the program down for one drawing. Throws `ProgramNotWhole`. */
export function cutterBeside(): FaceCutter {
  kept ??= faceCutter(facesBeside(), new WebAssembly.Module(packedBeside(SUBSETTER)));
  return kept;
}

/** The same where the program is whole; null where it runs from its sources, and drawings go without their face. */
export function cutterIfBeside(): FaceCutter | null {
  const isWhole = Object.values(FACES).every(isBeside) && isPackedBeside(SUBSETTER);
  return isWhole ? cutterBeside() : null;
}
