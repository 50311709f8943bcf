import { UPPER_BACK } from '../../job/panel-key.js';
import { EDGES } from '../../words/names.js';
import { backRuns } from '../back-runs.js';
import { extent } from '../interval.js';
import { say } from '../messages.js';
import type { Role } from '../role.js';

/** The back, rear face out, reference end down, u from its left edge; in two where a place between is left open, none where the job wants none. */
export const back: Role = {
  called: 'back',
  stands: 'upright',
  rows: 'none',
  belongs: 'to-box',
  hiddenFace: 'outside',
  edges: EDGES,
  looks: null,
  // Both parts of one in two are cut of one board.
  names: (spec) => (spec.back.how.value === 'none' ? [] : ['back']),
  keys: { back: 'all' },
  sizes: { length: ({ height }) => height, width: ({ width }) => width },
  outlines({ box, problems }) {
    if (box.back === null) return [];
    const { board } = box.back;
    const { x, z } = backRuns(box);
    const { openFrom, openTo, how } = box.spec.back;
    if (z.length === 0) problems.add((openFrom ?? openTo)!, say.backAllOpen());
    return z.map((run, i) => ({
      key: i === 0 ? 'back' : UPPER_BACK,
      board,
      length: extent(run),
      width: extent(x),
      seen: [],
      grooves: [],
      cause: how,
      pose: { origin: { x: x.from, y: box.clearDepth + board.thickness, z: run.from }, u: '+x', v: '+z', t: '-y' },
    }));
  },
  meetings: () => [],
};
