import { EDGES } from '../../words/names.js';
import { extent } from '../interval.js';
import type { Role } from '../role.js';
import type { Meeting } from '../standing.js';

/** A vertical panel between bottom and top, its left face out. */
export const divider: Role = {
  called: 'divider',
  stands: 'upright',
  rows: 'keep-to-grid',
  belongs: 'to-box',
  hiddenFace: 'outside',
  edges: EDGES,
  looks: { outside: 'left', inside: 'right', explained: 'A divider’s outside face is its left one.' },
  names: ({ dividers }) => dividers.map(({ key }) => key),
  keys: { dividers: 'each', rows: 'all', 'row-offset': 'all', 'row-setback': 'all', 'rear-row': 'all' },
  sizes: { length: ({ height }) => height, width: ({ depth }) => depth },
  outlines: ({ box, dividers }) =>
    dividers.map(({ key, at, board, run }) => ({
      key,
      board,
      length: extent(box.clearZ),
      width: box.clearDepth,
      seen: ['front'],
      grooves: [],
      cause: at,
      pose: { origin: { x: run.from, y: 0, z: box.clearZ.from }, u: '+y', v: '+z', t: '+x' },
    })),
  meetings: (panel, standing): readonly Meeting[] => [
    standing.meeting(panel, 'reference-end', standing.panel('bottom')),
    ...[...standing.inRole('top'), ...standing.inRole('rail')].map((face) => standing.meeting(panel, 'far-end', face)),
  ],
};
