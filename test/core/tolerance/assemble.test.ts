import { describe, expect, test } from 'vitest';
import { NOTHING } from '../../../shared-core/machining/replay/stray.js';
import { realSolid } from '../../../shared-core/machining/replay/solid.js';
import { figureIn, putTogether, type Readings } from '../../../shared-core/tolerance/assemble.js';
import type { RealHalf } from '../../../shared-core/tolerance/joint.js';
import type { Half, LoneJoint } from '../../../shared-core/tolerance/lone-joint.js';
import { jointCases } from '../../../shared-core/tolerance/tolerance.js';
import { mm } from '../specs.js';
import { box } from './boxes.js';

/*
 * A bottom 560 wide against the left side, with dowels 30 long at 53, 213, 373 and 533 from the front, 8 up from the bottom end:
 * 12 deep in the side, 18 in the bottom. Their middle is 293 from the front, 267 from the back. Frames are the carcass's: along
 * is y to the back, across z up.
 */
const JOINT: LoneJoint = jointCases(box({}, {}, undefined, { glueGap: 0 })).cases.find(
  ({ joint }) => joint.id === 'bottom/left',
)!;

interface Off {
  /** How far a bore is from its place as drawn, by its place from the front. */
  readonly u?: (u: number) => number;
  readonly v?: (u: number) => number;
  readonly depth?: number;
  /** Out of square, in the metre, at the end that is in the joint. */
  readonly slope?: number;
}

function real({ blank, names, drawn }: Half, { u = () => 0, v = () => 0, depth = 0, slope = 0 }: Off): RealHalf {
  const solid = realSolid(blank, names, NOTHING);
  return {
    solid: { ...solid, slope: { ...solid.slope, 'reference-end': slope / 1000 } },
    holes: drawn.map((hole) => ({
      ...hole,
      u: hole.u + u(hole.u),
      v: hole.v + v(hole.u),
      depth: hole.depth + depth,
      diameter: mm(8),
      through: false,
    })),
  };
}

const read = (face: Off, end: Off = {}, joint: LoneJoint = JOINT): Readings =>
  putTogether(joint, real(joint.face, face), real(joint.end, end), NOTHING).readings;

/** To the micrometre. */
const whole = (figures: readonly number[]): readonly number[] => figures.map((figure) => Math.round(figure) + 0);

test('the joint is as it says above', () => {
  expect(JOINT.end.drawn.map(({ u, v, depth }) => [u, v, depth])).toEqual(
    [53, 213, 373, 533].map((u) => [u, 8, 18].map(mm)),
  );
  expect(JOINT.face.drawn.map(({ v, depth }) => [v, depth])).toEqual(Array.from({ length: 4 }, () => [mm(8), mm(12)]));
});

describe('the end panel goes where its dowels hold it', () => {
  test('all moved alike move it: up, and to the back', () => {
    const readings = read({ u: () => 120, v: () => 100 });
    expect([whole(readings.front), whole(readings.step)]).toEqual([[120], [100, 100]]);
    // In the end it is the other way about.
    const other = read({}, { u: () => 120, v: () => 100 });
    expect([whole(other.front), whole(other.step)]).toEqual([[-120], [-100, -100]]);
  });
  test('holes that rise by 1 in 1000 to the back turn it about their middle, up at the back and down at the front', () => {
    // The outside face lies 8 under the middle, so that its front corner goes back by 8 in 1000.
    const readings = read({ v: (u) => (u - mm(293)) / 1000 });
    expect([whole(readings.front), whole(readings.step)]).toEqual([[8], [-293, 267]]);
    expect(whole(Object.values(readings.play).slice(1).flat())).toEqual([0, 0, 0, 0, -240, -80, 80, 240]);
  });
  test('and so do holes that do not stand in one line', () => {
    // Two 120 above the others: turned by 1 in 1000 what lies above goes to the front, what lies below to the back.
    const above = (u: number): number => (u === mm(213) || u === mm(373) ? mm(120) : 0);
    const turned = read(
      { u: (u) => (mm(60) - above(u)) / 1000, v: (u) => above(u) + (u - mm(293)) / 1000 },
      { v: above },
    );
    // The middle is 60 higher now, so 68 over the outside face.
    expect([whole(turned.front), whole(turned.step)]).toEqual([[68], [-293, 267]]);
  });
  test('one dowel alone is moved and not turned', () => {
    const only = (half: Half): Half => ({ ...half, drawn: half.drawn.slice(0, 1) });
    const lone = { ...JOINT, ties: JOINT.ties.slice(0, 1), face: only(JOINT.face), end: only(JOINT.end) };
    expect(whole(read({ v: () => 100 }, {}, lone).step)).toEqual([100, 100]);
  });
});

describe('the gap of an end out of square', () => {
  const gap = (face: Off, end: Off, joint?: LoneJoint): number => Math.round(figureIn(read(face, end, joint), 'gap'));

  test('is what its corners differ by, over the part that has the face before it', () => {
    expect([gap({}, { slope: 1 }), gap({}, { slope: -1 })]).toEqual([560, 560]);
    const part = {
      ...JOINT,
      ties: JOINT.ties.map(() => ({ dowelLength: null })),
      contact: { from: mm(20), to: mm(300) },
    };
    expect([gap({}, { slope: 1 }, part), gap({}, { slope: -1 }, part)]).toEqual([280, 280]);
  });
  test('is wider where a dowel that touches bottom holds it off', () => {
    // The back corner stands out by 560, the end at the last dowel by 533: that, bored 0.1 too shallow, touches at 633.
    expect(gap({ depth: -100 }, { slope: -1 })).toBe(633);
    // Square, each holds it off by what is missing; bored deeper, none does.
    expect([gap({ depth: -100 }, {}), gap({}, { depth: -70 }), gap({ depth: 100 }, {})]).toEqual([100, 70, 0]);
    // Where the back corner is behind the front one, the first dowel touches, 53 in 1000 further in.
    expect(gap({ depth: -100 }, { slope: 1 })).toBe(607);
  });
});
