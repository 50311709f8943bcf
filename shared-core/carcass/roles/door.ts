import { DOOR_EDGES } from '../../words/names.js';
import { doorKeys } from '../doors.js';
import { extent } from '../interval.js';
import type { Bay, Panel } from '../model.js';
import { extentsOf } from '../pose.js';
import type { Role } from '../role.js';
import type { CarcassSpec } from '../spec.js';

/** A door, its outside face to the front, reference end down, u from the edge that it is hung on. */
export const door: Role = {
  called: 'door',
  stands: 'upright',
  rows: 'none',
  belongs: 'before-box',
  hiddenFace: 'inside',
  edges: DOOR_EDGES,
  looks: null,
  names: doorKeys,
  keys: { doors: 'all' },
  materials: ({ doors }) => doors,
  sizes: { length: ({ height }) => height, width: acrossFront },
  outlines: ({ doors, box }) =>
    doors.map(({ key, board, hung, x, z, front, cause }) => ({
      key,
      board,
      length: extent(z),
      width: extent(x),
      seen: ['front', 'back', 'reference-end', 'far-end'],
      band: box.spec.doors.band,
      grooves: [],
      cause,
      pose: {
        origin: { x: hung === 'left' ? x.from : x.to, y: front, z: z.from },
        u: hung === 'left' ? '+x' : '-x',
        v: '+z',
        t: '+y',
      },
    })),
  meetings: () => [],
};

/** The divider on the right of its bay, where the place of that is written; else the width of the carcass. */
function acrossFront({ doors, width, dividers }: CarcassSpec, panel: Panel, bays: readonly Bay[]) {
  const { from, to } = extentsOf(panel).x;
  const bay = doors.bays === null ? undefined : bays.find((one) => 2 * one.from < from + to && from + to < 2 * one.to);
  const at = dividers.find(({ key }) => key === bay?.right)?.at;
  return at?.written === true ? at : width;
}
