import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreCollisions } from '../../../../shared-core/boring/collisions.js';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { compareHoles } from '../../../../shared-core/machining/replay/compare.js';
import { holeKey } from '../hole-key.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { SetUp } from '../../../../shared-core/machining/set-up.js';
import { neutralShop } from '../../../../shared-core/shop/neutral.js';
import {
  diagonalJobArbitrary,
  jobArbitrary,
  jobWithDoorsArbitrary,
  jobWithDrawersArbitrary,
} from '../../arbitraries.js';
import { bored, demoJob, shed, type Bored } from './jobs.js';
import { cupBorerArbitrary, machinesArbitrary, withCups, withMachines } from './machines.js';
import { inWords } from '../../../in-words.js';

const setUpsIn = (carcasses: readonly Bored[]): SetUp[] =>
  setUpsOf(carcasses.map((one) => one.operations)).map(({ setUp }) => setUp);

const missedBy = (carcasses: readonly Bored[]): string[] =>
  carcasses.flatMap((one) => one.operations.unreachable.flatMap((missed) => missed.bores.map((bore) => bore.id)));

/** What is wrong when the setUps are carried out and the holes held against the bore maps; panels without fault say nothing. */
function faults(carcasses: readonly Bored[], setUps: readonly SetUp[]): { messages: string[]; holes: number } {
  let holes = 0;
  const messages = carcasses.flatMap((one) => {
    const missed = new Set(missedBy([one]));
    return one.carcass.panels.flatMap((panel) => {
      const wanted = one.boring.bores.filter((bore) => bore.panel === panel.key && !missed.has(bore.id));
      const replay = replayPanel(setUps, one.spec.name.value, panel.key, blankOf(panel));
      if (!replay.ok)
        return replay.problems.map((problem) => `${panel.key}: ${problem.setUp}: ${inWords(problem.message)}`);
      holes += replay.holes.length;
      const difference = compareHoles(replay.holes, wanted);
      return difference ? [`${panel.key}: ${inWords(difference.message)}`] : [];
    });
  });
  return { messages, holes };
}

/** Panels that have several bores in one place. */
function inOnePlace({ carcass, boring }: Bored): ReadonlySet<string> {
  const crowded = carcass.panels.filter(({ key }) => {
    const own = boring.bores.filter(({ panel }) => panel === key);
    return new Set(own.map(holeKey)).size < own.length;
  });
  return new Set(crowded.map(({ key }) => key));
}

describe('carrying the set-ups out gives the bore maps', () => {
  test.each([
    ['kitchen.carcass.yaml', shed],
    ['studio.carcass.yaml', neutralShop],
  ])('%s, every panel', (file, shop) => {
    const carcasses = demoJob(file, shop);
    const { messages, holes } = faults(carcasses, setUpsIn(carcasses));
    expect(messages).toEqual([]);
    expect(missedBy(carcasses)).toEqual([]);
    expect(holes).toBe(carcasses.reduce((sum, one) => sum + one.boring.bores.length, 0));
  });

  test.each([
    ['2,000 random carcasses', jobArbitrary, 2000],
    ['500 random carcasses across a corner', diagonalJobArbitrary, 500],
  ])(
    '%s in random shops',
    (_title, jobs, numRuns) => {
      let made = 0;
      let missed = 0;
      let turned = 0;
      fc.assert(
        fc.property(
          jobs.chain((job) => machinesArbitrary(job.shop.habits.pitch).map((machines) => ({ job, machines }))),
          ({ job, machines }) => {
            const carcasses = [bored(job.spec, withMachines(job.shop, machines))];
            const setUps = setUpsIn(carcasses);
            turned += setUps
              .flatMap(({ runs }) => runs.flatMap(({ steps }) => steps))
              .filter(({ edge }) => edge !== 'front').length;
            const { messages, holes } = faults(carcasses, setUps);
            made += holes;
            missed += missedBy(carcasses).length;
            expect(messages).toEqual([]);
          },
        ),
        { numRuns },
      );
      // Neither of the two may be empty, or the test would prove nothing.
      expect(made).toBeGreaterThan(numRuns * 10);
      expect(missed).toBeGreaterThan(numRuns / 2);
      // Only a joint that runs along a panel has it turned by a quarter.
      if (jobs === diagonalJobArbitrary) expect(turned).toBeGreaterThan(numRuns / 2);
      else expect(turned).toBe(0);
    },
    240_000,
  );

  test.each([
    ['doors', jobWithDoorsArbitrary, ['cup', 'cup-screw', 'plate', 'pull']],
    ['drawers', jobWithDrawersArbitrary, ['slide', 'slide-in-box', 'front-clearance', 'front-pilot', 'pull', 'cup']],
  ] as const)(
    '500 random carcasses with %s in random shops',
    (_title, jobs, purposes) => {
      const made = new Map<string, number>();
      fc.assert(
        fc.property(
          jobs.chain((job) =>
            fc.record({
              job: fc.constant(job),
              machines: machinesArbitrary(job.shop.habits.pitch),
              cups: cupBorerArbitrary,
            }),
          ),
          ({ job, machines, cups }) => {
            const one = bored(job.spec, withCups(withMachines(job.shop, machines), cups));
            const missed = new Set(missedBy([one]));
            const twice = inOnePlace(one);
            const { messages } = faults([one], setUpsIn([one]));
            // Of hinges that a low door has no room for, both bores are made in one place; that is told.
            const told = boreCollisions(one.carcass, one.boring, job.shop.habits.leastWall).map(({ panel }) => panel);
            expect([...twice].filter((panel) => !told.includes(panel))).toEqual([]);
            expect(messages.filter((message) => !twice.has(message.split(':')[0]!))).toEqual([]);
            for (const { id, purpose } of one.boring.bores)
              if (!missed.has(id)) made.set(purpose, (made.get(purpose) ?? 0) + 1);
          },
        ),
        { numRuns: 500 },
      );
      // None may be empty, or the test would prove nothing.
      expect(purposes.filter((purpose) => (made.get(purpose) ?? 0) < 100)).toEqual([]);
    },
    240_000,
  );

  test('a set-up with its stops one micrometre off is found out', () => {
    const carcasses = demoJob('studio.carcass.yaml', neutralShop);
    const wrong = setUpsIn(carcasses).map((setUp) => ({
      ...setUp,
      stops: setUp.stops.map((stop) => ({ ...stop, position: stop.position + 1 })),
    }));
    expect(faults(carcasses, wrong).messages.length).toBeGreaterThan(0);
  });
});
