import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../../shared-core/boring/bores.js';
import type { BoreMap } from '../../../../shared-core/boring/model.js';
import { buildCarcass } from '../../../../shared-core/carcass/build.js';
import type { Carcass } from '../../../../shared-core/carcass/model.js';
import { cutJob } from '../../../../shared-core/document/cut.js';
import { readCarcass } from '../../../../shared-core/job/carcass.js';
import { readHead } from '../../../../shared-core/job/head.js';
import type { CarcassSpec } from '../../../../shared-core/job/model.js';
import { blankOf, operationsOf } from '../../../../shared-core/machining/plan/operations.js';
import type { Unreachable } from '../../../../shared-core/machining/plan/operation.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import type { SetUp } from '../../../../shared-core/machining/setup-sheet.js';
import { compareHoles } from '../../../../shared-core/machining/replay/compare.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { Shop } from '../../../../shared-core/shop/model.js';
import { neutralShop } from '../../../../shared-core/shop/neutral.js';
import { readShop } from '../../../../shared-core/shop/read.js';
import { jobArbitrary } from '../../arbitraries.js';
import { machinesArbitrary, withMachines } from './machines.js';

interface Bored {
  readonly spec: CarcassSpec;
  readonly carcass: Carcass;
  readonly boring: BoreMap;
}

function bored(spec: CarcassSpec, shop: Shop): Bored {
  const { carcass } = buildCarcass(spec, shop);
  if (!carcass) throw new Error('the test’s carcass cannot be built');
  return { spec, carcass, boring: boreCarcass(spec, carcass, shop) };
}

interface Planned {
  readonly setUps: readonly SetUp[];
  /** By carcass. */
  readonly unreachable: readonly (readonly Unreachable[])[];
}

function planned(carcasses: readonly Bored[], shop: Shop): Planned {
  const operations = carcasses.map(({ spec, carcass, boring }) => operationsOf(spec.name.value, spec, carcass, boring, shop));
  return { setUps: setUpsOf(operations).map((sheet) => sheet.setUp), unreachable: operations.map((one) => one.unreachable) };
}

/** What is wrong when the sheets are carried out and the holes held against the bore maps; panels without fault say nothing. */
function faults(carcasses: readonly Bored[], { setUps, unreachable }: Planned): { messages: string[]; holes: number } {
  let holes = 0;
  const messages = carcasses.flatMap(({ spec, carcass, boring }, index) => {
    const missed = new Set((unreachable[index] ?? []).flatMap((one) => one.bores.map((bore) => bore.id)));
    return carcass.panels.flatMap((panel) => {
      const wanted = boring.bores.filter((bore) => bore.panel === panel.key && !missed.has(bore.id));
      const replay = replayPanel(setUps, spec.name.value, panel.key, blankOf(panel));
      if (!replay.ok) return replay.problems.map((problem) => `${panel.key}: ${problem.setUp}: ${problem.message}`);
      holes += replay.holes.length;
      const difference = compareHoles(replay.holes, wanted);
      return difference ? [`${panel.key}: ${difference.message}`] : [];
    });
  });
  return { messages, holes };
}

function demo(file: string, shop: Shop): Bored[] {
  const parts = cutJob(readFileSync(new URL(`../../../demo/${file}`, import.meta.url), 'utf8'));
  const { head, defaults } = readHead(parts);
  return parts.carcasses.map((part) => {
    const { spec } = readCarcass(part, head, defaults, shop);
    if (!spec) throw new Error(`${part.text} cannot be read`);
    return bored(spec, shop);
  });
}

describe('carrying the set-up sheets out gives the bore maps', () => {
  const shed = readShop(readFileSync(new URL('../../../demo/shed.shop.yaml', import.meta.url), 'utf8')).shop;

  test.each([
    ['kitchen.carcass.yaml', shed],
    ['studio.carcass.yaml', neutralShop],
  ])('%s, every panel', (file, shop) => {
    const carcasses = demo(file, shop);
    const plan = planned(carcasses, shop);
    const { messages, holes } = faults(carcasses, plan);
    expect(messages).toEqual([]);
    expect(plan.unreachable.flat()).toEqual([]);
    expect(holes).toBe(carcasses.reduce((sum, c) => sum + c.boring.bores.length, 0));
  });

  test('2,000 random carcasses in random shops', () => {
    let made = 0;
    let missed = 0;
    fc.assert(
      fc.property(
        jobArbitrary.chain((job) => machinesArbitrary(job.shop.habits.pitch).map((machines) => ({ job, machines }))),
        ({ job, machines }) => {
          const shop = withMachines(job.shop, machines);
          const carcasses = [bored(job.spec, shop)];
          const plan = planned(carcasses, shop);
          const { messages, holes } = faults(carcasses, plan);
          made += holes;
          missed += plan.unreachable.flat().reduce((sum, one) => sum + one.bores.length, 0);
          expect(messages).toEqual([]);
        },
      ),
      { numRuns: 2000, seed: 20 },
    );
    // Neither of the two may be empty, or the test would prove nothing.
    expect(made).toBeGreaterThan(20_000);
    expect(missed).toBeGreaterThan(1000);
  }, 240_000);

  test('a sheet with one wrong stop is found out', () => {
    const carcasses = demo('studio.carcass.yaml', neutralShop);
    const plan = planned(carcasses, neutralShop);
    const wrong = {
      ...plan,
      setUps: plan.setUps.map((setUp) => ({
        ...setUp,
        stops: setUp.stops.map((stop) => ({ ...stop, position: stop.position + 1 })),
      })),
    };
    expect(faults(carcasses, wrong).messages.length).toBeGreaterThan(0);
  });
});
