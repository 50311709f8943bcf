import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import { orderTask, orderSetUps } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf, type BatchedSetUp } from '../../../../shared-core/machining/plan/set-ups.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { LineDrill, Shop } from '../../../../shared-core/shop/model.js';
import { jobArbitrary } from '../../arbitraries.js';
import { mm } from '../../specs.js';
import { obeys, permutations } from '../order/brute-force.js';
import { bored, readJob, secondsOf, shed, type Bored } from './jobs.js';
import { machinesArbitrary, withMachines } from './machines.js';

const rowDrill = shed.machines.get('row-drill') as LineDrill;

/** The demo's shop with another row drill, one head of bits from below. */
function shedWithDrill(change: Partial<LineDrill>): Shop {
  const drill: LineDrill = { ...rowDrill, heads: 1, from: 'below', indexRange: mm(600), ...change };
  return { ...shed, machines: new Map(shed.machines).set(drill.name, drill) };
}

const setUpsIn = (carcasses: readonly Bored[]): BatchedSetUp[] =>
  setUpsOf(carcasses.map(({ operations }) => operations));
const onDrill = (setUps: readonly BatchedSetUp[]): BatchedSetUp[] =>
  setUps.filter(({ setUp }) => setUp.machine.kind === 'line');

/** Whether the replay carries these set-ups out, in this order, on every panel. */
const replays = (carcasses: readonly Bored[], order: readonly BatchedSetUp[]): boolean =>
  carcasses.every(({ spec, carcass }) =>
    carcass.panels.every(
      (panel) =>
        replayPanel(
          order.map(({ setUp }) => setUp),
          spec.name.value,
          panel.key,
          blankOf(panel),
        ).ok,
    ),
  );

/** Every order of some set-ups, with whether the planner allows it and whether the replay carries it out. */
function everyOrder(carcasses: readonly Bored[], setUps: readonly BatchedSetUp[], shop: Shop) {
  const { before } = orderTask(setUps, shop.changeover);
  return Array.from(permutations(setUps.length), (indexes) => {
    const order = indexes.map((index) => setUps[index]!);
    return { order, allowed: obeys(indexes, before), replayed: replays(carcasses, order) };
  });
}

const tallUnit = 'carcasses:\n  larder: { kind: tall, width: 600, height: 2064, rows: front }\n';

describe('a tall unit whose rows are bored from both ends', () => {
  const shop = shedWithDrill({});
  const carcasses = readJob(tallUnit, shop);

  test('waits with each index move only for the holes that its own pins stand in', () => {
    // Worked by hand: six set-ups on the row drill; what moves along from one end waits for that end alone.
    const plan = orderSetUps(setUpsIn(carcasses), shop.changeover);
    expect(plan.seconds).toBeLessThanOrEqual(3120);
    expect(plan.proven).toBe(true);
    expect(
      replays(
        carcasses,
        plan.setUps.map(({ setUp }) => setUpsIn(carcasses).find((one) => one.setUp.id === setUp.id)!),
      ),
    ).toBe(true);
  });

  test('is planned in no more time than the cheapest of all orders that the replay carries out', () => {
    const setUps = onDrill(setUpsIn(carcasses));
    const best = Math.min(
      ...everyOrder(carcasses, setUps, shop)
        .filter(({ replayed }) => replayed)
        .map(({ order }) => secondsOf(order, shop)),
    );
    const plan = orderSetUps(setUps, shop.changeover);
    expect(plan.seconds).toBe(best);
    expect(plan.proven).toBe(true);
  });

  test('takes three set-ups of 17 spindles: strokes from one end share them with those from the other', () => {
    const seventeen = shedWithDrill({ spindles: 17 });
    expect(onDrill(setUpsIn(readJob(tallUnit.replace('600,', '600, depth: 330,'), seventeen)))).toHaveLength(3);
  });
});

test('pins wait for a hole of their own row, though another machine has bored one in line with it', () => {
  const shop = shedWithDrill({ from: 'above', spindles: 8 });
  const job =
    'carcasses:\n  a: { kind: tall, width: 600, height: 1680, rows: front, row-holes: { from: 800, to: 1280 }, doors: left }\n';
  const [one] = readJob(job, shop);
  const inLine = (panel: string) => one!.boring.bores.filter((bore) => bore.panel === panel && bore.u === mm(37));
  const purposes = new Set(inLine('left').map(({ purpose }) => purpose));
  expect([...purposes].sort()).toEqual(['plate', 'row']);
  const left = one!.operations.operations.filter(
    ({ panel, machine }) => panel === 'left' && machine.kind !== 'horizontal',
  );
  const carcasses = [{ ...one!, operations: { ...one!.operations, operations: left } }];
  const setUps = setUpsIn(carcasses);
  expect(onDrill(setUps)).toHaveLength(2);
  const all = everyOrder(carcasses, setUps, shop);
  expect(all.filter(({ replayed }) => replayed)).toHaveLength(all.length / 2);
  for (const { allowed, replayed } of all) expect(allowed).toBe(replayed);
});

/** Short heads that go on by index moves on pins in the row, not far. */
const shortDrill = fc.record({
  spindles: fc.integer({ min: 3, max: 14 }),
  indexRange: fc.constantFrom(null, mm(300), mm(400), mm(600)),
  lowers: fc.boolean(),
  stopReach: fc.constantFrom(mm(60), mm(300)),
});

test('orders with index moves: the planner allows those that the replay carries out, and takes the cheapest', () => {
  let withMoves = 0;
  let refused = 0;
  const job = jobArbitrary.chain((made) =>
    fc.record({
      made: fc.constant(made),
      machines: machinesArbitrary(made.shop.habits.pitch),
      short: shortDrill,
    }),
  );
  fc.assert(
    fc.property(job, ({ made, machines: [faces, ends, rows], short }) => {
      const { spindles, indexRange, lowers, stopReach } = short;
      const stops = (['left', 'right'] as const).map((side) => ({
        ...rows.stops[0]!,
        name: `row-${side}`,
        side,
        range: { min: 0, max: stopReach },
        lowers: lowers || spindles % 2 === 0,
      }));
      const drill: LineDrill = { ...rows, spindles, indexRange, stops, indexPins: 'row' };
      const shop = withMachines(made.shop, [faces, ends, drill]);
      const carcasses = [bored(made.spec, shop)];
      const setUps = onDrill(setUpsIn(carcasses));
      const moves = setUps.some(({ batch }) => batch.chosen.some(({ operation }) => operation.pinsIn !== null));
      if (!moves || setUps.length > 6) return;
      withMoves += 1;
      const all = everyOrder(carcasses, setUps, shop);
      refused += all.filter(({ replayed }) => !replayed).length;
      for (const { allowed, replayed } of all) expect(allowed).toBe(replayed);
      const best = Math.min(...all.flatMap(({ order, replayed }) => (replayed ? [secondsOf(order, shop)] : [])));
      const plan = orderSetUps(setUps, shop.changeover);
      expect([plan.seconds, plan.leastSeconds, plan.proven]).toEqual([best, best, true]);
    }),
    { numRuns: 1500 },
  );
  // Neither may be empty, or the test would prove nothing.
  expect(withMoves).toBeGreaterThan(40);
  expect(refused).toBeGreaterThan(200);
}, 240_000);
