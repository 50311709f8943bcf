import { expect, it } from 'vitest';
import type { PlannedHole, Run } from '../../../shared-core/machining/set-up.js';
import { firstPiece } from '../../../shared-core/papers/set-up/first-piece.js';
import { handMade, um } from '../drawing/panels.js';

const left = handMade().carcass.panels[0]!;
const hole = (face: PlannedHole['face'], u: number, v: number, diameter: number, depth: number): PlannedHole => ({
  bore: `${face}:${u}:${v}`,
  face,
  u: um(u),
  v: um(v),
  diameter: um(diameter),
  depth: um(depth),
  through: false,
});
const runOf = (...strokes: readonly (readonly PlannedHole[])[]): Run => ({
  carcass: 'a',
  panel: 'left',
  pieces: 1,
  steps: strokes.map((holes) => ({ holes }) as unknown as Run['steps'][number]),
});

it('tells where the holes of all strokes stand, as the bore map counts them, and how wide and deep they are', () => {
  const row = [8, 40, 72, 104].map((v) => hole('inside', 37, v, 5, 13));
  const rear = row.map((one) => ({ ...one, u: um(485) }));
  expect(firstPiece(runOf(row, rear), left, 'mm')).toEqual([
    { name: 'from front edge', value: '37, 485 mm' },
    { name: 'from bottom end', value: '8 to 104 by 32 mm' },
    { name: 'diameter', value: '5 mm' },
    { name: 'depth', value: '13 mm' },
  ]);
});

it('names the face where there are several, and counts on an end from the outside face', () => {
  const through = { ...hole('inside', 100, 200, 8, 16), through: true };
  expect(firstPiece(runOf([through], [hole('far-end', 53, 8, 8, 24)]), left, 'mm')).toEqual([
    { name: 'inside face, from front edge', value: '100 mm' },
    { name: 'inside face, from bottom end', value: '200 mm' },
    { name: 'inside face, diameter', value: '8 mm' },
    { name: 'inside face, depth', value: 'through' },
    { name: 'top end, from front edge', value: '53 mm' },
    { name: 'top end, from outside face', value: '8 mm' },
    { name: 'top end, diameter', value: '8 mm' },
    { name: 'top end, depth', value: '24 mm' },
  ]);
});
