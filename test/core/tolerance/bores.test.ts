import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Panel } from '../../../shared-core/carcass/model.js';
import type { SetUp } from '../../../shared-core/machining/set-up.js';
import { boredWithin, type BoredWithin } from '../../../shared-core/tolerance/bores.js';
import { blankOf } from '../../../shared-core/machining/blank.js';
import { bore } from '../../../shared-core/machining/replay/bore.js';
import { strokesOf } from '../../../shared-core/machining/replay/replay.js';
import type { Tolerances } from '../../../shared-core/shop/model.js';
import { analyse } from '../findings/jobs.js';
import { shopOf } from '../specs.js';

const job = analyse('carcasses:\n  sink: { kind: base, width: 600 }\n  tall: { kind: tall, width: 600 }');
const setUps = job.plan().setUps.map(({ setUp }) => setUp);
const runs = setUps.flatMap((setUp) =>
  setUp.runs.map((run) => ({
    setUp,
    carcass: run.carcass,
    panel: job.carcasses
      .find(({ name }) => name === run.carcass)!
      .carcass!.panels.find(({ key }) => key === run.panel)!,
    run,
  })),
);
const none = shopOf().tolerances;
const with_ = (some: Partial<Tolerances>): Tolerances => ({ ...none, ...some });
const within = (setUp: SetUp, carcass: string, panel: Panel, some: Partial<Tolerances>): readonly BoredWithin[] =>
  boredWithin(setUp, carcass, panel, with_(some))!;

describe('how far holes may be off', () => {
  test('nothing where nothing strays, and the holes are those that the set-up claims', () => {
    for (const { setUp, carcass, panel, run } of runs) {
      const made = within(setUp, carcass, panel, {});
      const key = ({ face, u, v }: { face: string; u: number; v: number }): string => `${face} ${u} ${v}`;
      expect(new Set(made.map(({ hole }) => key(hole)))).toEqual(
        new Set(run.steps.flatMap(({ holes }) => holes.map(key))),
      );
      for (const one of made) expect(one.within).toEqual({ u: 0, v: 0, depth: 0 });
    }
  });

  // By hand: a bit that wanders 50 goes 50 either way. A stop that is off by 30 shifts holes along the panel by 30, and as the panel
  // is measured from its bottom end, a panel that came to the stop with its top end shifts them by its own length, 100, as well.
  test('as worked by hand on a side in a line drill', () => {
    const rows = runs.filter(({ setUp, panel }) => setUp.machine.kind === 'line' && panel.role.endsWith('side'));
    expect(rows.length).toBeGreaterThan(1);
    for (const { setUp, carcass, panel, run } of rows) {
      for (const one of within(setUp, carcass, panel, { drill: 50 })) {
        expect(one.within).toEqual({ u: 50, v: 50, depth: 0 });
      }
      const farEnd = run.steps.every(({ end }) => end === 'far-end');
      const nearEnd = run.steps.every(({ end }) => end === 'reference-end');
      expect(farEnd || nearEnd).toBe(true);
      for (const one of within(setUp, carcass, panel, { stop: 30, length: 100 })) {
        expect(one.within.v).toBeCloseTo(farEnd ? 130 : 30, 6);
        // The fence strays as a stop does.
        expect(one.within.u).toBeCloseTo(30, 6);
      }
    }
  });

  test('no panel that strays within the bounds has a hole outside the limits', () => {
    const bounds = with_({ thickness: 150, width: 200, length: 120, squareness: 200, stop: 50, drill: 60 });
    fc.assert(
      fc.property(
        fc.constantFrom(...runs),
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 9 }),
        (of, by) => {
          const known = new Map<string, number>();
          const stray = (kind: keyof Tolerances, name: string): number => {
            const key = `${kind} ${name}`;
            if (!known.has(key)) known.set(key, by[known.size % by.length]!);
            return bounds[kind] * known.get(key)!;
          };
          const read = strokesOf([of.setUp], of.carcass, of.panel.key, blankOf(of.panel));
          if (!read.ok) throw new Error('not replayed');
          const limits = new Map(
            boredWithin(of.setUp, of.carcass, of.panel, bounds)!.map((one) => [
              `${one.hole.face} ${one.hole.u} ${one.hole.v}`,
              one,
            ]),
          );
          for (const stroke of read.strokes) {
            const drawn = bore(stroke, () => 0);
            bore(stroke, stray).forEach(({ u, depth }, index) => {
              const { face, u: across, v } = drawn[index]!;
              const limit = limits.get(`${face} ${across} ${v}`);
              if (limit === undefined) return;
              expect(Math.abs(u - limit.hole.u)).toBeLessThanOrEqual(limit.within.u + 0.01);
              expect(Math.abs(depth - limit.hole.depth)).toBeLessThanOrEqual(limit.within.depth + 0.01);
            });
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
