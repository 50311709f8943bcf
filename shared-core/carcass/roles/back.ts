import { keyBeside, UPPER_BACK } from '../../job/panel-key.js';
import type { Hand } from '../../shop/model.js';
import { CORNER_EDGES, EDGES } from '../../words/names.js';
import { backRuns } from '../back-runs.js';
import type { Box } from '../box.js';
import type { Diagonal } from '../model.js';
import { isDiagonal, reachOf } from '../diagonal.js';
import { handsSaid } from '../hands.js';
import { extent } from '../interval.js';
import { say } from '../messages.js';
import type { Outline } from '../panel.js';
import type { Role } from '../role.js';

const applied = {
  called: 'back',
  stands: 'upright',
  belongs: 'to-box',
  hiddenFace: 'outside',
  edges: EDGES,
  looks: null,
  keys: { back: 'all' },
  meetings: () => [],
} satisfies Partial<Role>;

/**
 * The back, rear face out, reference end down, u from its left edge; in two where a place between is left open, none where the job
 * wants none. Across a corner it is the one along the other wall, u from the corner.
 */
export const back: Role = {
  ...applied,
  rows: 'none',
  // Both parts of one in two are cut of one board.
  names: ({ back: { how }, ...spec }) =>
    how.value === 'none' ? [] : isDiagonal(spec) ? handsSaid(spec.diagonal).map(alongOtherWall) : ['back'],
  sizes: {
    length: ({ height }) => height,
    width: (spec) => reachOf(spec) ?? spec.width,
  },
  outlines({ box, problems }) {
    if (box.back === null) return [];
    if (box.diagonal !== null) return [inOtherWing(box, box.back, box.diagonal)];
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
};

const alongOtherWall = (hand: Hand): string => keyBeside('back', hand);

function inOtherWing(box: Box, { board }: NonNullable<Box['back']>, { hand, out }: Diagonal): Outline {
  const { depth, width, back: asked } = box.spec;
  const z = backRuns(box).z[0]!;
  return {
    key: alongOtherWall(hand),
    board,
    length: extent(z),
    width: out + depth.value,
    seen: [],
    grooves: [],
    cause: asked.how,
    pose: {
      origin: { x: hand === 'right' ? width.value : 0, y: depth.value, z: z.from },
      u: '-y',
      v: '+z',
      t: hand === 'right' ? '-x' : '+x',
    },
  };
}

/**
 * Of a carcass across a corner the back along the first wall, u from the corner: it carries a row for the pin that loose shelves
 * need there, as between two sides they would tip into the corner.
 */
export const cornerBack: Role = {
  ...applied,
  edges: CORNER_EDGES,
  rows: 'one-for-shelves',
  names: ({ back: { how }, ...spec }) => (how.value === 'none' || !isDiagonal(spec) ? [] : ['back']),
  keys: { back: 'all', rows: 'all', 'row-offset': 'all', 'row-setback': 'all' },
  sizes: { length: ({ height }) => height, width: ({ width }) => width },
  outlines({ box }) {
    if (box.back === null || box.diagonal === null) return [];
    const { board } = box.back;
    const { x, z } = backRuns(box);
    const isRight = box.diagonal.hand === 'right';
    return z.map((run) => ({
      key: 'back',
      board,
      length: extent(run),
      width: extent(x),
      seen: [],
      grooves: [],
      cause: box.spec.back.how,
      pose: {
        origin: { x: isRight ? x.to : x.from, y: box.clearDepth + board.thickness, z: run.from },
        u: isRight ? '-x' : '+x',
        v: '+z',
        t: '-y',
      },
    }));
  },
};
