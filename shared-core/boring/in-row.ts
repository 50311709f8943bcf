import type { Bore } from './model.js';

/** A screw that needs a hole in the face of an upright. */
type Screw = Pick<Bore, 'panel' | 'face' | 'u' | 'v' | 'diameter' | 'depth'>;

/** Whether a screw finds the hole of a row where it needs one, so that it needs no bore of its own. */
export function takesScrew(hole: Bore, { panel, face, u, v, diameter, depth }: Screw): boolean {
  return (
    hole.panel === panel &&
    (hole.face === face || hole.through) &&
    hole.u === u &&
    hole.v === v &&
    hole.diameter === diameter &&
    hole.depth >= depth
  );
}
