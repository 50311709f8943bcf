import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderSetUps, orderTask, planInOrder, type Plan } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf, type BatchedSetUp } from '../../../../shared-core/machining/plan/set-ups.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { Blank, SetStop, SetUp } from '../../../../shared-core/machining/set-up.js';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import type { Changeover, Shop } from '../../../../shared-core/shop/model.js';
import { jobsArbitrary } from '../../arbitraries.js';
import { obeys, permutations } from '../order/brute-force.js';
import { bored, demoJob, readJob, shed, type Bored } from './jobs.js';
import { machinesArbitrary, withMachines } from './machines.js';

const setUpsIn = (carcasses: readonly Bored[]): BatchedSetUp[] =>
  setUpsOf(carcasses.map(({ operations }) => operations));

/** What a hand does on one machine, simulated stop by stop; what may stay is asked of the replay, and of nothing else. */
class Hand {
  readonly #blanks = new Map<string, Blank>();
  readonly #asked = new Map<string, boolean>();

  readonly #times: Changeover;

  constructor(carcasses: readonly Bored[], times: Changeover) {
    this.#times = times;
    for (const { spec, carcass } of carcasses) {
      for (const panel of carcass.panels) this.#blanks.set(`${spec.name.value}\n${panel.key}`, blankOf(panel));
    }
  }

  /** For each set-up of an order the stops and heads that have to be set, and the seconds in all. */
  run(order: readonly SetUp[]): { set: { stops: string[]; fences: number[]; seconds: number }[]; seconds: number } {
    let stops = new Map<string, SetStop>();
    let fence: readonly number[] = [];
    const set = order.map((setUp, index) => {
      const before = order[index - 1] ?? null;
      const same = before !== null && before.machine.body === setUp.machine.body;
      const turned = same && before.machine.name !== setUp.machine.name;
      if (!same || turned) {
        stops = new Map();
        fence = [];
      }
      // What the shop file says of the machine holds as the operator comes to it first.
      const stands = { fence: null, height: null, thickness: null, depth: null, ...setUp.machine.stands };
      if (!same) {
        for (const { name, side, stands: position } of setUp.machine.stops)
          if (position !== null) stops.set(name, { name, side, position });
        fence = stands.fence ?? [];
      }
      const moved = setUp.stops.filter(({ name, position }) => stops.get(name)?.position !== position);
      const heads = setUp.fence.flatMap((place, head) => (fence[head] === place ? [] : [head]));
      const stood = same && !turned ? before : null;
      const [had, wanted] = [same ? this.#bitsOf(before) : bitsIn(setUp.machine), this.#bitsOf(setUp)];
      const bits = [...new Set([...had.keys(), ...wanted.keys()])]
        // A head with fewer spindles than the one turned away from has nothing to do with the others.
        .filter((place) => had.get(place) !== wanted.get(place) && Number(place.split('/')[1]) < spindlesOf(setUp))
        .reduce((sum, place) => sum + Number(had.has(place)) + Number(wanted.has(place)), 0);
      const isDeep = (one: Pick<SetUp, 'depth' | 'through' | 'thickness'>): string =>
        `${one.depth} ${one.through} ${one.thickness}`;
      const depth = same
        ? stood
        : stands.depth === null
          ? null
          : { depth: stands.depth, through: false, thickness: stands.thickness };
      const height = same ? stood?.height : stands.height;
      const times = this.#times;
      const seconds =
        (same ? 0 : times.machine) +
        (turned ? times.turnHead : 0) +
        moved.length * times.stop +
        (heads.length + Number(setUp.height !== null && setUp.height !== height)) * times.fence +
        bits * times.bit +
        (depth !== null && isDeep(depth) === isDeep(setUp) ? 0 : times.depth) +
        (setUp.extension === (stood?.extension ?? false) ? 0 : times.extension);
      // What is not named stays where the set-up could be run with it standing there too.
      for (const [name, stop] of stops) {
        if (setUp.stops.some((one) => one.name === name)) continue;
        if (!this.#runsAsWell(setUp, { ...setUp, stops: [...setUp.stops, stop] })) stops.delete(name);
      }
      for (const stop of setUp.stops) stops.set(stop.name, stop);
      let standing = [...setUp.fence];
      for (const place of fence.slice(standing.length)) {
        const more = [...standing, place];
        if (!this.#runsAsWell(setUp, { ...setUp, fence: more })) break;
        standing = more;
      }
      fence = standing;
      return { stops: moved.map(({ name }) => name), fences: heads, seconds };
    });
    return { set, seconds: set.reduce((sum, one) => sum + one.seconds, 0) };
  }

  #bitsOf(setUp: SetUp): Map<string, number> {
    const [step] = setUp.runs[0]!.steps;
    return new Map(step!.spindles.map(({ head, spindle, diameter }) => [`${head}/${spindle}`, diameter]));
  }

  /** Whether the replay has nothing against the other that it has not against the one. */
  #runsAsWell(one: SetUp, other: SetUp): boolean {
    const key = `${one.machine.name} ${one.id} ${JSON.stringify([other.stops, other.fence])}`;
    const known = this.#asked.get(key);
    if (known !== undefined) return known;
    const says = (setUp: SetUp): string =>
      JSON.stringify(
        setUp.runs.map(({ carcass, panel }) => {
          const replay = replayPanel([setUp], carcass, panel, this.#blanks.get(`${carcass}\n${panel}`)!);
          return replay.ok ? [] : replay.problems;
        }),
      );
    const answer = says(one) === says(other);
    this.#asked.set(key, answer);
    return answer;
  }
}

/** The bits that stay in a machine between jobs. */
function bitsIn(machine: SetUp['machine']): Map<string, number> {
  const { bit, spindles } = machine.stands ?? { bit: null, spindles: null };
  const heads = machine.kind === 'line' ? machine.heads : 1;
  const all = Array.from({ length: heads }, (_, head) =>
    Array.from({ length: machine.kind === 'cup' ? 1 : machine.spindles }, (_one, spindle) => [head, spindle] as const),
  );
  const loaded = all
    .flat()
    .filter(([, spindle]) => spindles === null || spindles.length === 0 || spindles.includes(spindle + 1));
  return new Map(bit === null ? [] : loaded.map(([head, spindle]) => [`${head}/${spindle}`, bit]));
}

/** The shop with each machine standing as one of its set-ups, or less of it, leaves it. */
function standing(shop: Shop, setUps: readonly BatchedSetUp[], picked: number): Shop {
  const machines = [...shop.machines].map(([name, machine], index) => {
    const own = setUps.filter(({ setUp }) => setUp.machine.name === name);
    const setUp = own[picked % Math.max(1, own.length)]?.setUp;
    if (setUp === undefined || !('stops' in machine) || (picked + index) % 4 === 0) return [name, machine] as const;
    const bits = setUp.runs[0]!.steps[0]!.spindles;
    const stands = {
      bit: bits[0]?.diameter ?? null,
      spindles: picked % 3 === 0 ? null : [...new Set(bits.map(({ spindle }) => spindle + 1))],
      fence: picked % 5 === 0 ? null : setUp.fence,
      height: setUp.height,
      depth: picked % 7 === 0 || setUp.through ? null : setUp.depth,
      thickness: setUp.thickness,
    };
    const stops = machine.stops.map((stop) => ({
      ...stop,
      stands: setUp.stops.find(({ name: set }) => set === stop.name)?.position ?? null,
    }));
    return [name, { ...machine, stands, stops }] as const;
  });
  return { ...shop, machines: new Map(machines) };
}

const spindlesOf = ({ machine }: SetUp): number => (machine.kind === 'cup' ? 1 : machine.spindles);

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
        const shop = stand ? standing(bare, setUpsIn(boredIn(bare)), picked) : bare;
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

        // Of one machine some set-ups that follow each other in the list, in all orders that holes for pins allow.
        const body = setUps[picked % Math.max(1, setUps.length)]?.setUp.machine.body;
        const own = setUps.filter(({ setUp }) => setUp.machine.body === body);
        const some = own.slice(picked % own.length).slice(0, 6);
        if (some.length < 3) return;
        const { before } = orderTask(some, shop.changeover);
        let best = Infinity;
        for (const order of permutations(some.length)) {
          if (obeys(order, before)) best = Math.min(best, hand.run(order.map((index) => some[index]!.setUp)).seconds);
        }
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
