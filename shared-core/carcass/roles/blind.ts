import { INNER_EDGES } from '../../words/names.js';
import { keyBeside } from '../../job/panel-key.js';
import { blindHands } from '../fronts/blind.js';
import { extent } from '../interval.js';
import type { Role } from '../role.js';

/** What closes the blind end of a front in a corner, its outside face to the front, reference end down, u from its edge toward the fronts. */
export const blindPanel: Role = {
  called: 'blind panel',
  stands: 'upright',
  rows: 'none',
  belongs: 'before-box',
  hiddenFace: 'inside',
  edges: INNER_EDGES,
  looks: null,
  names: (spec) => blindHands(spec).map((hand) => keyBeside('blind', hand)),
  keys: { blind: 'all', doors: 'all' },
  sizes: {
    length: ({ height }) => height,
    width: ({ blind, width }, { key }) => blind[key === keyBeside('blind', 'left') ? 'left' : 'right'] ?? width,
  },
  materials: ({ blind }) => blind,
  outlines: ({ blindPanels, box: { spec } }) =>
    blindPanels.map(({ key, board, hand, x, z, front, cause }) => ({
      key,
      board,
      length: extent(z),
      width: extent(x),
      // The rest of it is covered, or lies in the corner.
      seen: ['front'],
      band: spec.blind.band,
      grooves: [],
      cause,
      pose: {
        origin: { x: hand === 'left' ? x.to : x.from, y: front, z: z.from },
        u: hand === 'left' ? '-x' : '+x',
        v: '+z',
        t: '+y',
      },
    })),
  meetings: () => [],
};
