import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Derived } from '../../../shared-core/derived/derived.js';
import { blankOf } from '../../../shared-core/machining/blank.js';
import { setUpsOf } from '../../../shared-core/machining/plan/set-ups.js';
import { strokesOf } from '../../../shared-core/machining/replay/replay.js';
import type { Tolerances } from '../../../shared-core/shop/model.js';
import { FIGURE_NAMES } from '../../../shared-core/tolerance/assemble.js';
import { inOneGo } from '../../../shared-core/derived/steps.js';
import { likelyOverLimits } from '../../../shared-core/tolerance/likely.js';
import { likenessOf } from '../../../shared-core/tolerance/likeness.js';
import {
  casesFrom,
  overLimits,
  spreading,
  type JointTolerance,
  type StrokesCase,
} from '../../../shared-core/tolerance/tolerance.js';
import { jobArbitrary, type Job } from '../arbitraries.js';
import { contextOf } from '../findings/contexts.js';
import { machinesArbitrary, withMachines } from '../machining/plan/machines.js';
import { specOf } from '../specs.js';

const micrometres = (low: number, high: number): fc.Arbitrary<number> => fc.integer({ min: low, max: high });

/** Strays as they are in shops, and limits around what comes of them. */
const tolerances: fc.Arbitrary<Tolerances> = fc.record({
  thickness: micrometres(0, 300),
  width: micrometres(0, 300),
  length: micrometres(0, 300),
  squareness: micrometres(0, 500),
  stop: micrometres(0, 200),
  drill: micrometres(0, 200),
  dowelPlay: micrometres(50, 400),
  frontLimit: micrometres(100, 900),
  stepLimit: micrometres(100, 900),
  gapLimit: micrometres(100, 900),
});

/** Carcasses of one shop that are alike but for one of their sizes. */
const alike = fc
  .tuple(jobArbitrary, tolerances, fc.array(micrometres(-60_000, 60_000), { minLength: 1, maxLength: 2 }))
  .chain(([job, strays, changes]) =>
    fc
      .tuple(
        machinesArbitrary(job.shop.habits.pitch),
        fc.constantFrom('width' as const, 'height' as const, 'depth' as const),
      )
      .map(([machines, size]) => {
        const shop = { ...withMachines(job.shop, machines), tolerances: strays };
        const first: Job = { ...job, shop };
        return [first, ...changes.map((by) => otherwise(first, size, by))];
      }),
  );

function otherwise({ shop, wish }: Job, size: 'width' | 'height' | 'depth', by: number): Job {
  const changed = { ...wish, [size]: wish[size]! + by };
  return { shop, wish: changed, spec: specOf(shop, changed) };
}

function strokesCase(job: Job): StrokesCase | null {
  const context = contextOf(job);
  if (context === null) return null;
  const { carcass, matings, operations, shop } = context;
  const setUps = setUpsOf([operations]).map(({ setUp }) => setUp);
  const strokes = new Map(
    carcass.panels.map((panel) => [panel.key, strokesOf(setUps, 'box', panel.key, blankOf(panel))]),
  );
  return { carcass, matings, strokes, shop };
}

it('joints that are alike have the same figures, and the same is told of them as of each by itself', () => {
  let [shared, told] = [0, 0];
  fc.assert(
    fc.property(alike, (jobs) => {
      const derived = new Derived();
      const known = new Map<string, JointTolerance>();
      for (const of of jobs.map(strokesCase)) {
        if (of === null) continue;
        const spreadOf = spreading(of.shop.tolerances);
        const all = casesFrom(of).cases.map((joint) => {
          const figures = spreadOf(joint);
          const like = known.get(likenessOf(joint));
          for (const name of like === undefined ? [] : FIGURE_NAMES) {
            expect(figures[name].worst).toBeCloseTo(like![name].worst, 3);
            expect(figures[name].rootSumSquare).toBeCloseTo(like![name].rootSumSquare, 3);
          }
          shared += Number(like !== undefined);
          known.set(likenessOf(joint), figures);
          return figures;
        });
        const over = all
          .flatMap((one) => overLimits(one, of.shop.tolerances).filter(({ asARule }) => asARule))
          .map(({ joint, figure, limit, worst, rootSumSquare, causes }) => {
            return { joint, figure, limit, worst, rootSumSquare, causes: [...new Set(causes.map(({ kind }) => kind))] };
          });
        expect(inOneGo(likelyOverLimits(of, derived))).toEqual(over);
        told += over.length;
      }
    }),
    { numRuns: 40 },
  );
  // Neither may be nothing, or the test would prove nothing.
  expect(shared).toBeGreaterThan(20);
  expect(told).toBeGreaterThan(5);
});
