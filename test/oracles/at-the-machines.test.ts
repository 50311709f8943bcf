import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import type { SetUp } from '../../shared-core/machining/set-up.js';
import { setUpsOf } from '../../shared-core/machining/plan/set-ups.js';
import {
  diagonalJobArbitrary,
  jobArbitrary,
  jobWithDoorsArbitrary,
  jobWithDrawersArbitrary,
  type Job,
} from '../core/arbitraries.js';
import { bored, type Bored } from '../core/machining/plan/jobs.js';
import { cupBorerArbitrary, machinesArbitrary, withCups, withMachines } from '../core/machining/plan/machines.js';
import { bitsInto } from './at-the-machines.js';
import { clear, differenceOf } from './solids.js';

afterEach(clear);

/** Random carcasses, bored at random machines. */
const jobsAtMachines = (jobs: fc.Arbitrary<Job>): fc.Arbitrary<Bored> =>
  jobs.chain(({ spec, shop }) =>
    fc
      .tuple(machinesArbitrary(shop.habits.pitch), cupBorerArbitrary)
      .map(([machines, cups]) => bored(spec, withCups(withMachines(shop, machines), cups))),
  );

/** The set-ups of a carcass, and the panels with the bores that they are to make. */
function whatIsMade({ spec, carcass, boring, operations }: Bored) {
  const missed = new Set(operations.unreachable.flatMap(({ bores }) => bores.map(({ id }) => id)));
  const panels = carcass.panels.map((panel) => ({
    panel,
    bores: boring.bores.filter(({ id, panel: key }) => key === panel.key && !missed.has(id)),
  }));
  return { name: spec.name.value, setUps: setUpsOf([operations]).map(({ setUp }) => setUp), panels };
}

test.each([
  ['plain ones', jobArbitrary, ['dowel', 'row']],
  ['across a corner', diagonalJobArbitrary, ['dowel', 'row']],
  ['with doors', jobWithDoorsArbitrary, ['cup', 'cup-screw', 'plate', 'pull']],
  ['with drawers', jobWithDrawersArbitrary, ['slide', 'slide-in-box', 'front-clearance', 'front-pilot', 'pull', 'cup']],
] as const)('what set-ups take out of the panels of carcasses, %s, is what their bores take', (_, jobs, purposes) => {
  const made = new Map<string, number>();
  fc.assert(
    fc.property(jobsAtMachines(jobs), (one) => {
      const { name, setUps, panels } = whatIsMade(one);
      for (const { panel, bores } of panels) {
        const bits = bitsInto(panel, name, setUps);
        if (bits.length + bores.length === 0) continue;
        expect([panel.key, differenceOf(panel, bits, bores)]).toEqual([panel.key, 0]);
        for (const { purpose } of bores) made.set(purpose, (made.get(purpose) ?? 0) + 1);
      }
      clear();
    }),
    { numRuns: 25 },
  );
  // None may be empty, or the test would prove nothing.
  expect(purposes.filter((purpose) => (made.get(purpose) ?? 0) < 4)).toEqual([]);
});

/** A tenth of a millimetre. */
const OFF = 100;

test('the check fails where a stop, a fence or a depth is a tenth of a millimetre off, or a bit is left out', () => {
  const wrong: readonly ((setUp: SetUp) => SetUp)[] = [
    (setUp) => ({ ...setUp, stops: setUp.stops.map((stop) => ({ ...stop, position: stop.position + OFF })) }),
    ({ fence, height, ...setUp }) => ({
      ...setUp,
      fence: fence.map((place) => place + OFF),
      height: height === null ? null : height + OFF,
    }),
    (setUp) => (setUp.through ? { ...setUp, runs: [] } : { ...setUp, depth: setUp.depth - OFF }),
    ({ runs, ...setUp }) => ({
      ...setUp,
      runs: runs.map((run) => ({
        ...run,
        steps: run.steps.map((step) => ({ ...step, spindles: step.spindles.slice(1) })),
      })),
    }),
  ];
  const seen = new Set<string>();
  fc.assert(
    fc.property(jobsAtMachines(jobWithDrawersArbitrary), (one) => {
      const { name, setUps, panels } = whatIsMade(one);
      for (const { panel, bores } of panels) {
        if (bores.length === 0) continue;
        for (const change of wrong)
          expect(differenceOf(panel, bitsInto(panel, name, setUps.map(change)), bores)).not.toBe(0);
        seen.add(panel.role);
      }
      clear();
    }),
    { numRuns: 4 },
  );
  expect(seen.size).toBeGreaterThan(4);
});
