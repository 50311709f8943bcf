import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Surface } from '../../../shared-core/boring/model.js';
import type { StrayKind } from '../../../shared-core/machining/replay/stray.js';
import { FIGURE_NAMES, measure } from '../../../shared-core/tolerance/assemble.js';
import type { Cause } from '../../../shared-core/tolerance/spread.js';
import {
  jointCases,
  overLimits,
  toleranceOf,
  type JointTolerance,
  type ToleranceCase,
} from '../../../shared-core/tolerance/tolerance.js';
import type { CarcassWish } from '../specs.js';
import { mm } from '../specs.js';
import { box, EXACT } from './boxes.js';
import type { Reference } from './set-ups-for.js';
import { inWords } from '../../in-words.js';

/** What a figure comes from, kind by kind, the greatest first. */
function causesByKind(causes: readonly Cause[]): readonly Pick<Cause, 'kind' | 'rise'>[] {
  const sums = new Map<StrayKind, number>();
  for (const { kind, rise } of causes) sums.set(kind, (sums.get(kind) ?? 0) + rise);
  return [...sums].map(([kind, rise]) => ({ kind, rise })).sort((a, b) => b.rise - a.rise);
}

const of = (tolerance: ToleranceCase, joint: string): JointTolerance => {
  const found = toleranceOf(tolerance).joints.find((one) => one.joint === joint);
  if (found === undefined) throw new Error(`${joint} is unknown: ${JSON.stringify(toleranceOf(tolerance).unknown)}`);
  return found;
};
const causes = (tolerance: JointTolerance, figure: 'front' | 'step' | 'gap' | 'play'): string[] =>
  tolerance[figure].causes.map(({ kind, of: thing, rise }) => `${kind} ${thing} ${Math.round(rise)}`);

/** Boxes with every kind of joint. */
const BOXES: Readonly<Record<string, Partial<CarcassWish>>> = {
  'between the sides': {},
  'over and under': { top: 'over', bottom: 'under' },
  'with rails': { top: 'rails' },
  'with shelves and a divider': {
    width: mm(900),
    dividers: [{ at: mm(450) }],
    fixedShelves: [
      { at: mm(300), bay: 1 },
      { at: mm(428), bay: 2 },
    ],
  },
  'over and under, with dividers': {
    width: mm(1200),
    top: 'over',
    bottom: 'under',
    dividers: [{ at: mm(400) }, { at: mm(800) }],
    fixedShelves: [{ at: mm(300), bay: 2 }],
  },
  'with screws': { joint: 'screw-7x50' },
  'with cams': { joint: 'cam-15' },
  'of thick board': { board: 'board-19' },
};

describe('one-point referencing', () => {
  const flush = (tolerance: ToleranceCase) =>
    jointCases(tolerance).cases.filter(({ front, outside }) => front.drawn === 0 || outside.drawn === 0);

  it.each(Object.keys(BOXES))('%s: has joints that are flush', (name) => {
    const tolerance = box({}, BOXES[name]);
    expect(toleranceOf(tolerance).unknown).toEqual([]);
    expect(flush(tolerance).length).toBeGreaterThanOrEqual(4);
  });

  it.each(Object.keys(BOXES))('%s: keeps front and outside exactly flush for any thickness and width', (name) => {
    const cases = flush(box({}, BOXES[name]));
    fc.assert(
      fc.property(fc.infiniteStream(fc.integer({ min: -3000, max: 3000 })), (errors) => {
        const drawn = new Map<string, number>();
        const stray = (kind: StrayKind, thing: string): number => {
          if (kind !== 'thickness' && kind !== 'width') return 0;
          const key = `${kind} ${thing}`;
          const error = drawn.get(key) ?? (errors.next().value as number);
          drawn.set(key, error);
          return error;
        };
        for (const joint of cases) {
          const { front, step } = measure(joint, stray);
          // Both signs of each reading are listed, so 0 and -0 occur.
          for (const reading of [...front, ...(joint.outside.drawn === 0 ? step : [])])
            expect(reading === 0).toBe(true);
        }
      }),
      { numRuns: 50 },
    );
  });

  it.each(Object.keys(BOXES))(
    '%s: the sensitivity of front and step to thickness and width is exactly zero',
    (name) => {
      const { joints } = toleranceOf(box({ thickness: 500, width: 500 }, BOXES[name]));
      for (const { front, step, joint } of joints) expect([joint, front, step]).toEqual([joint, NONE, NONE]);
    },
  );

  it.each(Object.keys(BOXES))('%s: nor do lengths show, where each joint is bored from its own end', (name) => {
    const { joints } = toleranceOf(box({ length: 500 }, BOXES[name]));
    for (const { front, step, stepFlush } of joints) {
      expect(front).toEqual(NONE);
      if (stepFlush) expect(step).toEqual(NONE);
    }
  });
});

const NONE = { worst: 0, rootSumSquare: 0, causes: [] };

describe('a wrong reference', () => {
  const wrong =
    (panel: string, reference: Reference, only?: string) =>
    (of: string, _face: Surface, joint: string): Reference =>
      of === panel && (only === undefined || joint === only) ? reference : {};

  it('a side with its back edge on the fence brings its width to the front', () => {
    const bottom = of(box({ width: 200 }, {}, wrong('left', { edge: 'back' })), 'bottom/left');
    expect(bottom.front.worst).toBe(200);
    expect(causes(bottom, 'front')).toEqual(['width left 200']);
    expect(bottom.step).toEqual(NONE);
  });

  it('a bottom with its back edge on the squaring stop brings its own', () => {
    const bottom = of(box({ width: 200 }, {}, wrong('bottom', { edge: 'back' })), 'bottom/left');
    expect(causes(bottom, 'front')).toEqual(['width bottom 200']);
  });

  it('both wrong: the two add up at the worst, and combine as a root of squares', () => {
    const bottom = of(
      box({ width: 200 }, {}, () => ({ edge: 'back' })),
      'bottom/left',
    );
    expect(causes(bottom, 'front')).toEqual(['width left 200', 'width bottom 200']);
    expect(bottom.front.worst).toBe(400);
    expect(bottom.front.rootSumSquare).toBeCloseTo(Math.hypot(200, 200), 4);
  });

  it('a bottom flipped, its height counted from the inside face, brings its thickness to the outside', () => {
    const bottom = of(box({ thickness: 200 }, {}, wrong('bottom', { down: 'inside' })), 'bottom/left');
    expect(causes(bottom, 'step')).toEqual(['thickness bottom 200']);
    expect(bottom.step.worst).toBe(200);
    expect(bottom.front).toEqual(NONE);
  });

  it('a top joint bored from the bottom end of the side brings the length of the side to the top', () => {
    const top = of(box({ length: 200 }, {}, wrong('left', { end: 'reference-end' }, 'top/left')), 'top/left');
    expect(causes(top, 'step')).toEqual(['length left 200']);
  });

  it('is seen when one box has it and the same box done right has not', () => {
    const limits = { ...EXACT, thickness: 300, width: 300, frontLimit: 200, stepLimit: 200, gapLimit: 200 };
    const right = toleranceOf(box(limits)).joints.flatMap((joint) => overLimits(joint, limits));
    expect(right).toEqual([]);
    const flipped = toleranceOf(box(limits, {}, wrong('bottom', { down: 'inside' })));
    expect(flipped.joints.flatMap((joint) => overLimits(joint, limits))).toMatchObject([
      { joint: 'bottom/left', figure: 'step', limit: 200, worst: 300, rootSumSquare: 300, asARule: true },
      { joint: 'bottom/right', figure: 'step', limit: 200, worst: 300, rootSumSquare: 300, asARule: true },
    ]);
  });
});

describe('hand-worked figures', () => {
  /**
   * Bottom 568 x 560 x 16 between sides, dowels at 53, 213, 373, 533 from the front. Stops stray by 0.05, bits by 0.04, the
   * dowels have 0.1 of play. Which bounds reach the front edge of the joint with the left side:
   * 1. The fence of the side's set-up and the squaring stop of the bottom's: 0.05 each, straight through.
   * 2. Bits along the front-to-back line: the fit takes the mean of four misses, so each of the 8 bits counts 0.04 / 4 = 0.01.
   * 3. Bits across: they turn the bottom about the middle of its dowels. Arms -240, -80, 80, 240; sum of squares 128,000. A
   *    bit turns it by arm * 0.04 / 128,000, and the corner of front edge and outside face lies 8 across from the line of
   *    dowels: 8 * 240 * 0.04 / 128,000 = 0.0006 for the outer four bits (two panels), 0.0002 for the inner four.
   * 4. The play: 0.1.
   * Worst: 0.1 + 0.1 + 8 * 0.01 + 4 * 0.0006 + 4 * 0.0002 = 0.2832.
   * Root of squares: 2 * 0.05^2 + 0.1^2 + 8 * 0.01^2 + 4 * (0.0006^2 + 0.0002^2) = 0.0158016; root 0.125704.
   */
  it('front offset of a dowelled bottom', () => {
    const { front } = of(box({ stop: 50, drill: 40, dowelPlay: 100 }), 'bottom/left');
    expect(front.worst).toBeCloseTo(283.2, 6);
    expect(front.rootSumSquare).toBeCloseTo(1000 * Math.sqrt(0.0158016), 4);
    expect(front.causes).toHaveLength(2 + 8 + 8 + 1);
    expect(causesByKind(front.causes).map(({ kind, rise }) => `${kind} ${rise.toFixed(1)}`)).toEqual([
      'dowelPlay 100.0',
      'stop 100.0',
      'drill 83.2',
    ]);
  });

  /**
   * The same bottom at its front corner, which lies further from the middle of the dowels than its back corner (293 against
   * 560 - 293 = 267) and so steps more.
   * 1. The side's stop and the height of the bottom's spindles: 0.05 each.
   * 2. Bits across: a mean of 0.04 / 4 = 0.01 each, and the turn: 293 * arm * 0.04 / 128,000 = 0.021975 for the outer, 0.007325
   *    for the inner arms. Together 0.031975, 0.017325, 0.002675, -0.011975; absolute values 0.06395, for two panels 0.1279.
   * 3. The play: 0.1.
   * Worst: 0.1 + 0.1279 + 0.1 = 0.3279.
   */
  it('step at the outside of a dowelled bottom', () => {
    expect(of(box({ stop: 50, drill: 40, dowelPlay: 100 }), 'bottom/left').step.worst).toBeCloseTo(327.9, 3);
  });

  /** The end of the bottom out of square by 0.3 over a metre: 0.3 * 0.56 = 0.168 over its width, open at one corner. */
  it('gap of an end out of square', () => {
    const { gap, joint } = of(box({ squareness: 300 }), 'bottom/left');
    expect([joint, gap.worst, gap.rootSumSquare]).toEqual([
      'bottom/left',
      expect.closeTo(168, 9),
      expect.closeTo(168, 9),
    ]);
    expect(gap.causes.map(({ of: thing }) => thing)).toEqual(['bottom reference-end']);
  });

  /**
   * No glue gap: 12 + 18 = 30 holds the dowel exactly. The depth stop limits the head's travel, so a side too thin by 0.2 is
   * bored 0.2 less deep, and the dowel holds the joint open by so much. With a glue gap of 1 it does not.
   */
  it('gap of a dowel that touches bottom', () => {
    const tight = of(box({ thickness: 200 }, {}, undefined, { glueGap: 0 }), 'bottom/left');
    expect(causes(tight, 'gap')).toEqual(['thickness left 200']);
    expect(of(box({ thickness: 200 }), 'bottom/left').gap).toEqual(NONE);
  });

  /**
   * Bits stray by 0.04: along the joint two dowels miss each other by at most 4 * 0.04, and sliding halves it: 0.08. Across,
   * of three in line (53, 213, 373) the middle one departs from the line through the others by (1 + 1/2 + 1/2) * 2 * 0.04
   * = 0.16, halved by sliding and turning: 0.08.
   * Independently: along, root of 4 * 0.04^2 = 0.08, halved: 0.04.
   */
  it('play that dowels need, and whether the joint closes', () => {
    const closing = (dowelPlay: number): JointTolerance => of(box({ drill: 40, dowelPlay }), 'bottom/left');
    expect(closing(80).play.worst).toBeCloseTo(80, 9);
    expect(closing(80).play.rootSumSquare).toBeCloseTo(40, 4);
    expect([closing(81), closing(60), closing(39)].map(({ closes }) => closes)).toEqual([
      'always',
      'as-a-rule',
      'not-always',
    ]);
  });
});

describe('what cannot be known is said', () => {
  it('where a panel’s set-up cannot be carried out, or none bores the joint', () => {
    const good = box({ stop: 50 });
    const spoiled = {
      ...good,
      setUps: good.setUps.flatMap((setUp) => {
        const { panel } = setUp.runs[0]!;
        if (panel === 'bottom') return [];
        return panel === 'top' ? [{ ...setUp, depth: mm(500) }] : [setUp];
      }),
    };
    const { joints, unknown } = toleranceOf(spoiled);
    expect(joints).toEqual([]);
    expect(unknown.map(({ joint, reason }) => `${joint}: ${inWords(reason)}`)).toEqual([
      'bottom/left: No set-up bores both halves of any of its places.',
      'bottom/right: No set-up bores both halves of any of its places.',
      'top/left: The set-ups for top cannot be carried out.',
      'top/right: The set-ups for top cannot be carried out.',
    ]);
    expect(inWords(unknown[2]!.problems[0]!.message)).toMatch(/^The depth of 500 mm is outside the range of /);
  });

  it('a shelf has nothing to be flush with, and is not held to the limit of steps', () => {
    const limits = { ...EXACT, stop: 50, dowelPlay: 1000, gapLimit: 1000 };
    const { joints } = toleranceOf(box(limits, { fixedShelves: [{ at: mm(300) }] }));
    const shelf = joints.find(({ joint }) => joint === 'shelf-1/left')!;
    expect([shelf.frontFlush, shelf.stepFlush]).toEqual([true, false]);
    expect(shelf.step.worst).toBeGreaterThan(0);
    expect(overLimits(shelf, limits).map(({ figure }) => figure)).toEqual(['front']);
  });

  it('an exact shop makes exact boxes', () => {
    for (const joint of toleranceOf(box({}, BOXES['with shelves and a divider'])).joints) {
      for (const figure of FIGURE_NAMES) expect(joint[figure]).toEqual(NONE);
      expect(joint.closes).toBe('always');
    }
  });
});
