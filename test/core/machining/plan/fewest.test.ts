import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Derived } from '../../../../shared-core/derived/derived.js';
import { inOneGo } from '../../../../shared-core/derived/steps.js';
import type { Bore } from '../../../../shared-core/boring/model.js';
import { groupOperations, leastBatches } from '../../../../shared-core/machining/plan/group.js';
import type { Operation, Way } from '../../../../shared-core/machining/plan/operation.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { checkSetUp } from '../../../../shared-core/machining/replay/check-setup.js';
import { compareHoles } from '../../../../shared-core/machining/replay/compare.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { LoadedSpindle, SetStop, SetUp } from '../../../../shared-core/machining/set-up.js';
import { jobsArbitrary } from '../../arbitraries.js';
import { bored, demoJob, shed } from './jobs.js';
import { machinesArbitrary, withMachines } from './machines.js';

/** One way for each operation, in every combination. */
function* combinations(operations: readonly Operation[]): Generator<readonly Way[]> {
  const [first, ...rest] = operations;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const way of first.ways) for (const others of combinations(rest)) yield [way, ...others];
}

/** Every way to put stops of the right hand at places, no stop at two. */
function* standing(
  machine: Operation['machine'],
  places: readonly Pick<SetStop, 'side' | 'position'>[],
): Generator<readonly SetStop[]> {
  const [first, ...rest] = places;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const set of standing(machine, rest)) {
    for (const { name, side } of machine.stops) {
      if (side === first.side && set.every((one) => one.name !== name)) yield [{ ...first, name }, ...set];
    }
  }
}

/** Every set-up that might make these operations in these ways; none where a spindle would have to carry two bits. */
function* trials(operations: readonly Operation[], ways: readonly Way[]): Generator<SetUp> {
  const { machine, fence, height, through, blank } = operations[0]!;
  const spindles = new Map<string, LoadedSpindle>();
  for (const { head, spindle, bore } of ways.flatMap(({ strokes }) => strokes.flatMap(({ wanted }) => wanted))) {
    const before = spindles.get(`${head}/${spindle}`);
    if (before !== undefined && before.diameter !== bore.diameter) return;
    spindles.set(`${head}/${spindle}`, { head, spindle, diameter: bore.diameter });
  }
  const places = new Map(ways.map(({ side, position }) => [`${side} ${position}`, { side, position }]));
  const depth = Math.max(...operations.map((operation) => operation.depth));
  for (const extension of machine.kind === 'vertical' && machine.extension > 0 ? [false, true] : [false]) {
    for (const stops of standing(machine, [...places.values()])) {
      const runs = operations.map(({ carcass, panel }, index) => {
        const way = ways[index]!;
        const stop = stops.find(({ side, position }) => side === way.side && position === way.position)!;
        const steps = way.strokes.map(({ moved }) => ({
          down: way.down,
          edge: 'front' as const,
          end: way.end,
          stop: stop.name,
          moved,
          spindles: [...spindles.values()],
          holes: [],
        }));
        return { carcass, panel, pieces: 1, steps };
      });
      yield {
        id: 'trial',
        machine,
        fence,
        height,
        stops,
        extension,
        depth,
        thickness: through ? null : blank.thickness,
        through,
        runs,
      };
    }
  }
}

const boresOf = ({ ways }: Operation): readonly Bore[] =>
  ways[0]!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore));

/** Whether the replay carries some set-up out that makes the bores of these operations and no other. */
function isOneSetUp(operations: readonly Operation[]): boolean {
  const panels = new Map(operations.map((one) => [`${one.carcass}\n${one.panel}`, one]));
  for (const ways of combinations(operations)) {
    for (const setUp of trials(operations, ways)) {
      if (checkSetUp(setUp).length > 0) continue;
      const isMade = [...panels].every(([key, { carcass, panel, blank }]) => {
        const replay = replayPanel([setUp], carcass, panel, blank);
        if (!replay.ok) return false;
        const own = operations.filter((one) => `${one.carcass}\n${one.panel}` === key);
        // A drill that may enter a hole twice bores some bores in two strokes.
        return compareHoles(replay.holes, [...new Set(own.flatMap(boresOf))]) === null;
      });
      if (isMade) return true;
    }
  }
  return false;
}

/** The fewest parts of a list of which each is one set-up, by trying all. */
function fewestParts(operations: readonly Operation[]): number {
  // A set-up has one machine, one fence, and one depth for one thickness, which the operations bring with them.
  const settingOf = ({ machine, fence, height, depth, through, blank }: Operation): string => {
    const level = machine.kind === 'cup' || ('from' in machine && machine.from === 'above') ? blank.thickness : 0;
    return [machine.name, fence.join(), height, through ? 'through' : `${depth} ${level}`].join('|');
  };
  const all = 2 ** operations.length;
  const best = new Array<number>(all).fill(Infinity);
  best[0] = 0;
  const isPart = Array.from({ length: all }, (_, set) => {
    const own = operations.filter((_one, index) => (set >> index) & 1);
    return own.length > 0 && new Set(own.map(settingOf)).size === 1 && isOneSetUp(own);
  });
  for (let set = 1; set < all; set += 1) {
    for (let part = set; part > 0; part = (part - 1) & set) {
      if (isPart[part]) best[set] = Math.min(best[set]!, 1 + best[set ^ part]!);
    }
  }
  return best[all - 1]!;
}

test('few operations are sorted into the fewest set-ups that the replay carries out, and the bound says so', () => {
  let shared = 0;
  let split = 0;
  const job = jobsArbitrary(3).chain((made) =>
    fc.record({
      made: fc.constant(made),
      machines: machinesArbitrary(made.shop.habits.pitch),
      picked: fc.array(fc.nat(200), { minLength: 2, maxLength: 6 }),
    }),
  );
  fc.assert(
    fc.property(job, ({ made, machines, picked }) => {
      const shop = withMachines(made.shop, machines);
      const all = made.specs
        .flatMap((spec, index) => {
          const named = { ...spec, name: { ...spec.name, value: `box-${index}` } };
          return bored(named, shop).operations.operations;
        })
        .filter(
          ({ pinsIn, ways }) =>
            pinsIn === null && ways.every(({ strokes }) => strokes.every(({ moved }) => moved === 0)),
        );
      for (const kind of ['vertical', 'horizontal', 'line'] as const) {
        const own = all.filter(({ machine }) => machine.kind === kind);
        const some = [...new Set(picked.flatMap((index) => own[index % own.length] ?? []))];
        if (some.length < 2 || some.reduce((product, { ways }) => product * ways.length, 1) > 100) continue;
        const batches = inOneGo(groupOperations(some, new Derived()));
        const fewest = fewestParts(some);
        expect([kind, batches.length, leastBatches(batches)]).toEqual([kind, fewest, fewest]);
        shared += Number(fewest < some.length);
        split += Number(fewest > 1);
      }
    }),
    { numRuns: 400 },
  );
  // Neither may be empty, or the test would prove nothing.
  expect(shared).toBeGreaterThan(100);
  expect(split).toBeGreaterThan(100);
}, 240_000);

test('the bound of larger jobs never passes what is planned, and little lies between', () => {
  let planned = 0;
  let least = 0;
  fc.assert(
    fc.property(
      jobsArbitrary(6).chain((made) => fc.tuple(fc.constant(made), machinesArbitrary(made.shop.habits.pitch))),
      ([{ shop, specs }, machines]) => {
        const operations = specs.flatMap((spec) => bored(spec, withMachines(shop, machines)).operations.operations);
        const batches = inOneGo(groupOperations(operations, new Derived()));
        expect(leastBatches(batches)).toBeLessThanOrEqual(batches.length);
        planned += batches.length;
        least += leastBatches(batches);
      },
    ),
    { numRuns: 150 },
  );
  expect((planned - least) / planned).toBeLessThan(0.01);
}, 120_000);

test('the demo job is sorted into as few as its strokes can be', () => {
  const batches = setUpsOf(demoJob('kitchen.carcass.yaml', shed).map(({ operations }) => operations)).map(
    ({ batch }) => batch,
  );
  expect(leastBatches(batches)).toBe(batches.length);
});

test('asked again in another job, the same operations are sorted the same', () => {
  const sorted = (): unknown =>
    setUpsOf(demoJob('kitchen.carcass.yaml', shed).map(({ operations }) => operations)).map(({ setUp }) => setUp);
  expect(sorted()).toEqual(sorted());
});
