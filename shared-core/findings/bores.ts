import type { Bore, BorePurpose } from '../boring/model.js';
import { chosen } from '../carcass/choices.js';
import type { Located } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import { onFace } from './lookups.js';
import type { CarcassContext } from './rule.js';
import { show } from './words.js';

const NOUNS: Readonly<Record<BorePurpose, readonly [string, string]>> = {
  dowel: ['dowel bore', 'dowel bores'],
  clearance: ['clearance hole', 'clearance holes'],
  pilot: ['pilot hole', 'pilot holes'],
  cam: ['cam bore', 'cam bores'],
  'cam-bolt': ['bolt bore', 'bolt bores'],
  'cam-stud': ['stud bore', 'stud bores'],
  row: ['row hole', 'row holes'],
  cup: ['cup bore', 'cup bores'],
};

/** 'The dowel bore', 'The 4 dowel bores'; the purpose is that of the first. */
export function boresNamed(bores: readonly Bore[]): string {
  const [one, several] = NOUNS[bores[0]!.purpose];
  return bores.length === 1 ? `The ${one}` : `The ${bores.length} ${several}`;
}

/** 'hole 3 of the front row', 'the dowel bore for bottom' */
export function boreCalled(context: CarcassContext, bore: Bore): string {
  if (bore.purpose === 'row') {
    const row = context.boring.rows.find(({ id }) => id === bore.group);
    if (row !== undefined) return `hole ${(bore.v - row.offset) / row.pitch + 1} of the ${row.line} row`;
  }
  const joint = context.carcass.joints.find(({ id }) => id === bore.group);
  const mate = joint === undefined ? '' : ` for ${joint.endPanel === bore.panel ? joint.facePanel : joint.endPanel}`;
  return `the ${NOUNS[bore.purpose][0]}${mate}`;
}

/** '37 mm from the front edge and 328 mm from the reference end' */
export function boreAt(context: CarcassContext, bore: Bore): string {
  const across = onFace(bore) ? 'the reference end' : 'the outside face';
  return `${show(context, bore.u)} from the front edge and ${show(context, bore.v)} from ${across}`;
}

/** The panel's own choice that sets the depth of a bore for a joint, where it has one; the bore of a cam is its fitting's. */
export function depthOf(context: CarcassContext, bore: Bore): Located<Micrometres> | undefined {
  if (bore.purpose === 'row' || bore.purpose === 'cam') return undefined;
  return chosen(context.spec, bore.panel, onFace(bore) ? 'faceDepth' : 'endDepth');
}
