import fc from 'fast-check';
import * as reference from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { NOTHING, boundOf, type StrayKind } from '../../../shared-core/machining/replay/stray.js';
import { FIGURE_NAMES, figureIn, measure } from '../../../shared-core/tolerance/assemble.js';
import { PLAY, type Misses } from '../../../shared-core/tolerance/play.js';
import {
  chance,
  deviation,
  draw,
  drawAll,
  mean,
  quantile,
  sampleTolerance,
  xoshiro128,
  type Distribution,
} from '../../../shared-core/tolerance/sample.js';
import { variablesOf } from '../../../shared-core/tolerance/spread.js';
import { jointCases, toleranceOf } from '../../../shared-core/tolerance/tolerance.js';
import { box } from './boxes.js';

/** The outside check of everything statistical: simple-statistics 7.12, a general library of published formulas. */

const REAL = { thickness: 200, width: 200, length: 200, squareness: 300, stop: 50, drill: 50, dowelPlay: 60 };
const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 200 });

describe('statistics, against simple-statistics', () => {
  it('mean and standard deviation', () => {
    fc.assert(
      fc.property(values, (list) => {
        expect(mean(list)).toBeCloseTo(reference.mean(list), 6);
        expect(deviation(list)).toBeCloseTo(reference.standardDeviation(list), 6);
      }),
    );
  });

  it('quantiles', () => {
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (list, p) => {
        expect(quantile(list, p)).toBeCloseTo(reference.quantile(list, p), 6);
      }),
    );
  });
});

describe('chance', () => {
  /** The generator in whole numbers of any size, straight from its definition (D. Blackman, S. Vigna, 2018). */
  function* byDefinition(state: readonly bigint[]): Generator<bigint> {
    const word = (x: bigint): bigint => x & 0xffffffffn;
    const rotate = (x: bigint, k: bigint): bigint => word(x << k) | (x >> (32n - k));
    const s = [...state] as [bigint, bigint, bigint, bigint];
    for (;;) {
      yield word(rotate(word(s[1] * 5n), 7n) * 9n);
      const t = word(s[1] << 9n);
      s[2] ^= s[0];
      s[3] ^= s[1];
      s[1] ^= s[2];
      s[0] ^= s[3];
      s[2] ^= t;
      s[3] = rotate(s[3], 11n);
    }
  }

  it('follows the definition of xoshiro128**', () => {
    const seed = fc.integer({ min: 1, max: 0xffffffff });
    fc.assert(
      fc.property(fc.tuple(seed, seed, seed, seed), (state) => {
        const next = xoshiro128(state);
        const wanted = byDefinition(state.map(BigInt));
        for (let i = 0; i < 20; i += 1) expect(next()).toBe(Number(wanted.next().value));
      }),
    );
  });

  it('gives the same sequence for the same seed and another for another', () => {
    const take = (seed: number): number[] => {
      const by = chance(seed);
      return Array.from({ length: 5 }, () => by.word());
    };
    expect(take(1)).toEqual(take(1));
    expect(take(1)).not.toEqual(take(2));
    expect(new Set(Array.from({ length: 100 }, (_, seed) => take(seed)[0])).size).toBe(100);
  });

  it.each<[string, Distribution, (x: number) => number, number]>([
    // Even over (-1, 1): standard deviation 1 / root 3.
    ['even', 'even', (x) => (x + 1) / 2, 1 / Math.sqrt(3)],
    // Normal with the bound at 3 deviations, cut off: 1/3 of root(1 - 6 phi(3) / (2 Phi(3) - 1)), phi and Phi by the library.
    [
      'normal',
      'normal',
      (x) =>
        (reference.cumulativeStdNormalProbability(3 * x) - reference.cumulativeStdNormalProbability(-3)) /
        (2 * reference.cumulativeStdNormalProbability(3) - 1),
      0.986578 / 3,
    ],
  ])('%s draws have the distribution they are named after (Kolmogorov-Smirnov)', (_, kind, cumulative, spread) => {
    const by = chance(7);
    const n = 20_000;
    const drawn = Array.from({ length: n }, () => draw(by, kind, 1)).sort((a, b) => a - b);
    expect(reference.mean(drawn)).toBeCloseTo(0, 1);
    expect(reference.standardDeviation(drawn) / spread).toBeCloseTo(1, 1);
    expect(reference.max(drawn.map(Math.abs))).toBeLessThanOrEqual(1);
    const gap = reference.max(
      drawn.map((x, i) => Math.max(Math.abs((i + 1) / n - cumulative(x)), Math.abs(i / n - cumulative(x)))),
    );
    // 1.63 / root n is the 1 % point of the statistic (Smirnov's table); the library's Phi is a table with steps of 0.01.
    expect(gap).toBeLessThan(1.63 / Math.sqrt(n) + 0.005);
  });
});

describe('play that dowels need', () => {
  /** Least greatest |miss - a - b * station| by golden search over the slope; the best a for a slope is plain. */
  function leastGreatest(stations: readonly number[], misses: readonly number[], turns: boolean): number {
    const at = (b: number): number => {
      const rest = misses.map((miss, i) => miss - b * stations[i]!);
      return (reference.max(rest) - reference.min(rest)) / 2;
    };
    if (!turns) return at(0);
    let [low, high] = [-1e3, 1e3];
    for (let i = 0; i < 200; i += 1) {
      const [p, q] = [low + (high - low) * 0.382, low + (high - low) * 0.618];
      if (at(p) < at(q)) high = q;
      else low = p;
    }
    return at((low + high) / 2);
  }
  const greatestReading = (misses: Misses): number =>
    Math.max(0, ...[...PLAY.readings(misses)].map(({ read }) => Math.abs(read(misses))));

  it('is the least that any slide and any turn leave, and the greatest of its readings', () => {
    const dowels = fc
      .uniqueArray(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 7 })
      .chain((places) =>
        fc.tuple(
          fc.constant(places.map((k) => k * 32)),
          fc.array(fc.integer({ min: -300, max: 300 }), { minLength: places.length, maxLength: places.length }),
        ),
      );
    fc.assert(
      fc.property(dowels, ([stations, misses]) => {
        const none = misses.map(() => 0);
        for (const turns of [false, true]) {
          const both = { stations, along: turns ? none : misses, across: turns ? misses : none };
          expect(PLAY.greatest(both)).toBeCloseTo(leastGreatest(stations, misses, turns), 4);
          expect(greatestReading(both)).toBeCloseTo(PLAY.greatest(both), 9);
        }
      }),
    );
  });

  it('of two dowels in one place is half of what they differ by', () => {
    expect(PLAY.greatest({ stations: [37, 37, 37], along: [0, 0, 0], across: [10, -20, 0] })).toBe(15);
    expect(greatestReading({ stations: [37, 37, 37], along: [0, 0, 0], across: [-20, 0, 10] })).toBe(15);
  });
});

describe('worst case, root-sum-square and sampling are of one mind', () => {
  const made = box(REAL, { fixedShelves: [{ at: 300_000 }] });
  const { joints } = toleranceOf(made);
  const cases = jointCases(made).cases;
  const bound = (kind: StrayKind): number => boundOf(made.shop.tolerances, kind);

  it.each<[Distribution, number]>([
    ['even', 1 / Math.sqrt(3)],
    ['normal', 0.986578 / 3],
  ])('the sampled deviation of a reading (%s) is its root-sum-square in deviations', (distribution, spread) => {
    const by = chance(3);
    const n = 4000;
    for (const joint of cases.slice(0, 3)) {
      const variables = variablesOf((stray) => measure(joint, stray));
      const taken: number[] = [];
      for (let i = 0; i < n; i += 1) taken.push(measure(joint, drawAll(variables, by, distribution, bound)).front[0]!);
      const { front } = joints.find(({ joint: id }) => id === joint.joint.id)!;
      // The deviation of a sample of n strays by about 1 / root(2n) = 1.1 %.
      const ratio = reference.standardDeviation(taken) / (front.rootSumSquare * spread);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.045);
      expect(Math.abs(reference.mean(taken))).toBeLessThan((4 * front.rootSumSquare * spread) / Math.sqrt(n));
    }
  });

  it('no box drawn passes the worst case, and the worst case is reached where all bounds fall that way', () => {
    const sampled = sampleTolerance(made, { samples: 500, seed: 5, distribution: 'even' });
    sampled.joints.forEach((joint, i) => {
      // Products of two strays are not in the linear worst case: micrometres times parts of a thousand.
      for (const figure of FIGURE_NAMES)
        expect(joint[figure].greatest).toBeLessThanOrEqual(joints[i]![figure].worst + 0.5);
    });
    const { front, joint } = joints[0]!;
    const one = cases.find(({ joint: { id } }) => id === joint)!;
    const worse = (sign: 1 | -1): number => {
      const stray = (kind: StrayKind, of: string): number => {
        const alone = measure(one, (k, o) => (k === kind && o === of ? bound(kind) : 0)).front[0]!;
        return sign * Math.sign(alone) * bound(kind);
      };
      return figureIn(measure(one, stray), 'front');
    };
    expect(worse(1)).toBeCloseTo(front.worst, 1);
    expect(worse(-1)).toBeCloseTo(front.worst, 1);
  });

  it('sampling is the same every time, and summarised as the library would', () => {
    const sampling = { samples: 200, seed: 11, distribution: 'normal' } as const;
    expect(sampleTolerance(made, sampling)).toEqual(sampleTolerance(made, sampling));
    const { joints: sampled, boxesClose, unknown } = sampleTolerance(made, sampling);
    expect(unknown).toEqual([]);
    expect(boxesClose).toBeGreaterThan(0);
    expect(boxesClose).toBeLessThanOrEqual(Math.min(...sampled.map(({ closes }) => closes)));

    const by = chance(11);
    const variables = variablesOf((stray) => cases.map((joint) => measure(joint, stray)));
    const gaps = Array.from({ length: 200 }, () => {
      const stray = drawAll(variables, by, 'normal', bound);
      return figureIn(measure(cases[0]!, stray), 'gap');
    });
    expect(sampled[0]!.gap.mean).toBeCloseTo(reference.mean(gaps), 9);
    expect(sampled[0]!.gap.deviation).toBeCloseTo(reference.standardDeviation(gaps), 9);
    expect(sampled[0]!.gap.greatest).toBe(reference.max(gaps));
    expect(sampled[0]!.gap.p95).toBeCloseTo(reference.quantile(gaps, 0.95), 9);
  });

  it('nominal readings are exact', () => {
    for (const joint of cases) {
      const { front, step, play } = measure(joint, NOTHING);
      const readings = [...front, ...step, ...play.along, ...play.across];
      for (const reading of readings) expect(reading === 0).toBe(true);
    }
  });
});
