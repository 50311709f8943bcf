import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderSetUps, planInOrder, type Plan } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf, type BatchedSetUp } from '../../../../shared-core/machining/plan/set-ups.js';
import type { Shop } from '../../../../shared-core/shop/model.js';
import { jobsArbitrary } from '../../arbitraries.js';
import { permutations } from '../order/brute-force.js';
import { Hand } from './hand.js';
import { bored, demoJob, readJob, shed, type Bored } from './jobs.js';
import { machinesArbitrary, standingAs, withMachines } from './machines.js';
import { Trial } from './trial.js';

const setUpsIn = (carcasses: readonly Bored[]): BatchedSetUp[] =>
  setUpsOf(carcasses.map(({ operations }) => operations));

const changesIn = ({ setUps }: Plan): unknown =>
  setUps.map(({ changes: { stops, fences }, seconds }) => ({ stops, fences, seconds }));

describe('a stop that no set-up names keeps its place', () => {
  test('as in the demo job, where fewer are set than from each set-up to the next', () => {
    const carcasses = demoJob('kitchen.carcass.yaml', shed);
    const plan = orderSetUps(setUpsIn(carcasses), shed.changeover);
    const simulated = new Hand(carcasses, shed.changeover).run(plan.setUps.map(({ setUp }) => setUp));
    expect(changesIn(plan)).toEqual(simulated.set);
    expect(plan.seconds).toBe(simulated.seconds);
    const found = plan.setUps.filter(({ setUp, changes }, index) =>
      setUp.stops.some(
        (stop) =>
          !changes.stops.includes(stop.name) &&
          !plan.setUps[index - 1]!.setUp.stops.some(
            ({ name, position }) => name === stop.name && position === stop.position,
          ),
      ),
    );
    expect(found.length).toBeGreaterThan(0);
  });

  test('but not where it stands in the way of a panel and cannot be lowered', () => {
    const held: Shop = {
      ...shed,
      machines: new Map(
        [...shed.machines].map(([name, machine]) => [
          name,
          machine.kind === 'vertical' || machine.kind === 'line'
            ? { ...machine, stops: machine.stops.map((stop) => ({ ...stop, lowers: stop.name.startsWith('long') })) }
            : machine,
        ]),
      ),
    };
    const job = 'carcasses:\n  a: { kind: tall, width: 600, fixed-shelves: [712] }\n  b: { kind: base, width: 600 }\n';
    const carcasses = readJob(job, held);
    const plan = orderSetUps(setUpsIn(carcasses), held.changeover);
    const simulated = new Hand(carcasses, held.changeover).run(plan.setUps.map(({ setUp }) => setUp));
    expect(changesIn(plan)).toEqual(simulated.set);
  });
});

test.each([
  ['bare machines', false],
  ['machines as they stand', true],
] as const)(
  'on %s, changes are those that a hand makes, and no order takes it less than is claimed',
  (_, stand) => {
    let kept = 0;
    let found = 0;
    let compared = 0;
    const job = jobsArbitrary(3).chain((made) =>
      fc.record({ made: fc.constant(made), machines: machinesArbitrary(made.shop.habits.pitch), picked: fc.nat(1000) }),
    );
    fc.assert(
      fc.property(job, ({ made, machines, picked }) => {
        const bare = withMachines(made.shop, machines);
        const boredIn = (shop: Shop): readonly Bored[] =>
          made.specs.map((spec, index) => bored({ ...spec, name: { ...spec.name, value: `box-${index}` } }, shop));
        const shop = stand
          ? standingAs(
              setUpsIn(boredIn(bare)).map(({ setUp }) => setUp),
              picked,
              bare,
            )
          : bare;
        const carcasses = boredIn(shop);
        const hand = new Hand(carcasses, shop.changeover);
        const setUps = setUpsIn(carcasses);
        // The set-ups in some order or other, each machine once.
        const order = [...setUps.keys()].sort(
          (a, b) =>
            setUps[a]!.setUp.machine.body.localeCompare(setUps[b]!.setUp.machine.body) ||
            ((a * 7919 + picked) % 101) - ((b * 7919 + picked) % 101),
        );
        const claims = { order, cost: 0, lowerBound: 0, proven: false, provenOnce: false };
        const plan = planInOrder(setUps, shop.changeover, claims);
        expect(changesIn(plan)).toEqual(hand.run(plan.setUps.map(({ setUp }) => setUp)).set);
        found += plan.setUps.filter((one) => one.changes.machine && one.found !== null).length;
        kept += plan.setUps.reduce((sum, { setUp, changes }) => sum + setUp.stops.length - changes.stops.length, 0);

        // Of one machine some set-ups that follow each other in the list, in all orders that can be carried out.
        const body = setUps[picked % Math.max(1, setUps.length)]?.setUp.machine.body;
        const own = setUps.filter(({ setUp }) => setUp.machine.body === body);
        const some = own.slice(picked % own.length).slice(0, 6);
        if (some.length < 3) return;
        const trial = new Trial(
          carcasses,
          some.map(({ setUp }) => setUp),
        );
        let best = Infinity;
        for (const indexes of permutations(some.length)) {
          const order = indexes.map((index) => some[index]!.setUp);
          if (trial.isMade(order)) best = Math.min(best, hand.run(order).seconds);
        }
        // Some may wait for a set-up that is not among them.
        if (best === Infinity) return;
        const few = orderSetUps(some, shop.changeover);
        expect([few.seconds, few.leastSeconds, few.proven]).toEqual([best, best, true]);
        compared += 1;
      }),
      { numRuns: 150 },
    );
    // Neither may be empty, or the test would prove nothing.
    expect(kept).toBeGreaterThan(100);
    expect(compared).toBeGreaterThan(60);
    expect(found > 100).toBe(stand);
  },
  240_000,
);
