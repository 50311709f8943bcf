import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LARGEST_TABLE, orderInWindows } from '../../../../shared-core/machining/order/index.js';
import { LARGEST_COST } from '../../../../shared-core/machining/order/request.js';
import { search } from '../../../../shared-core/machining/order/search.js';
import { orders, tables } from './arbitrary.js';
import { cheapest, costOf, obeys } from './brute-force.js';
import { orderByChangeover, tripFor, type ChangeoverOrder, type OrderOptions } from './plain-tables.js';
import { readInstance } from './tsplib.js';

function solve(cost: readonly (readonly number[])[], options?: OrderOptions): ChangeoverOrder {
  const result = orderByChangeover(cost, options);
  if (result.kind === 'problem') throw new Error(result.message);
  return result;
}

/** The search that serves large problems, put to work on a small one. */
function searched(cost: readonly (readonly number[])[], options: OrderOptions): ReturnType<typeof search> {
  const request = tripFor(cost, options);
  if (request.kind === 'problem') throw new Error(request.message);
  return search(request.trip);
}

function random(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Changeovers as a shop has them: so much a stop that moves, a bit put in or taken out, a depth, another machine. */
function setUps(n: number, seed: number): number[][] {
  const draw = random(seed);
  const all = Array.from({ length: n }, () => ({
    machine: draw(3),
    stops: [draw(5), draw(5), draw(3)],
    bits: Array.from({ length: 8 }, () => draw(2)),
    depth: draw(4),
  }));
  return all.map((a) =>
    all.map(
      (b) =>
        (a.machine === b.machine ? 0 : 60) +
        a.stops.filter((stop, index) => stop !== b.stops[index]).length * 20 +
        a.bits.reduce((sum, bit, index) => sum + (bit < b.bits[index]! ? 10 : bit > b.bits[index]! ? 6 : 0), 0) +
        (a.depth === b.depth ? 0 : 15),
    ),
  );
}

/** Cost of going on to what costs least each time, from the cheapest of all first set-ups. */
function nearestNext(cost: readonly (readonly number[])[]): number {
  const from = (first: number): number => {
    const left = new Set(cost.keys());
    let [at, sum] = [first, 0];
    for (left.delete(at); left.size > 0; left.delete(at)) {
      const next = [...left].reduce((a, b) => (cost[at]![b]! < cost[at]![a]! ? b : a));
      sum += cost[at]![next]!;
      at = next;
    }
    return sum;
  };
  return Math.min(...[0, 100, 200].map(from));
}

// Source of the instances and their optima: TSPLIB, Reinelt 1991; see test/data/sequencing/README.md.
describe('published instances', () => {
  test.each([
    ['br17.atsp', 39],
    ['ftv33.atsp', 1286],
  ])('%s: closed tour of %i, proven', (name, optimum) => {
    const { cost } = readInstance(name);
    const result = solve(cost, { closed: true });
    expect(costOf(cost, result.order, { closed: true })).toBe(optimum);
    expect(result).toMatchObject({ cost: optimum, lowerBound: optimum, proven: true });
    expect(result.order[0]).toBe(0);
    expect([...result.order].sort((a, b) => a - b)).toEqual(cost.map((_, index) => index));
  });

  test.each([
    ['ESC07.sop', 2125],
    ['br17.10.sop', 55],
  ])('%s: ordered sequence of %i, proven', (name, optimum) => {
    const { cost, before } = readInstance(name);
    const result = solve(cost, { before });
    expect(costOf(cost, result.order)).toBe(optimum);
    expect(obeys(result.order, before)).toBe(true);
    expect(result).toMatchObject({ cost: optimum, lowerBound: optimum, proven: true });
  });

  test.each([
    ['br17.atsp', 39, true],
    ['ftv33.atsp', 1286, true],
    ['ESC07.sop', 2125, false],
    ['br17.10.sop', 55, false],
  ])('%s by the search alone: bound <= %i <= cost, and the route is found', (name, optimum, closed) => {
    const { cost, before } = readInstance(name);
    const result = searched(cost, { closed, before });
    expect(result.lowerBound).toBeLessThanOrEqual(optimum);
    expect(result.cost).toBe(optimum);
  });
});

describe('against trying every order', () => {
  test('an open sequence is the first of the cheapest', () => {
    fc.assert(
      fc.property(tables(0, 7), (cost) => {
        const best = cheapest(cost)!;
        expect(solve(cost)).toEqual({ kind: 'order', ...best, lowerBound: best.cost, proven: true });
      }),
      { numRuns: 150 },
    );
  });

  test('eight set-ups', () => {
    fc.assert(
      fc.property(tables(8, 8), (cost) => {
        const best = cheapest(cost)!;
        expect(solve(cost)).toMatchObject({ order: best.order, cost: best.cost, proven: true });
      }),
      { numRuns: 12 },
    );
  });

  test('with a start row, closed, and with an order asked for', () => {
    const request = tables(1, 7).chain((cost) =>
      fc.record({
        cost: fc.constant(cost),
        start: fc.array(fc.integer({ min: 0, max: 50 }), { minLength: cost.length, maxLength: cost.length }),
        before: orders(cost.length),
        closed: fc.boolean(),
      }),
    );
    fc.assert(
      fc.property(request, ({ cost, start, before, closed }) => {
        const options = closed ? { closed, before: before.filter(([, j]) => j !== 0) } : { start, before };
        const best = cheapest(cost, options)!;
        expect(solve(cost, options)).toEqual({ kind: 'order', ...best, lowerBound: best.cost, proven: true });
      }),
      { numRuns: 200 },
    );
  });

  test('the search for large problems never undercuts the truth, nor claims too much', () => {
    const request = tables(3, 7).chain((cost) => fc.tuple(fc.constant(cost), orders(cost.length)));
    fc.assert(
      fc.property(request, ([cost, before]) => {
        const best = cheapest(cost, { before })!;
        const result = searched(cost, { before });
        expect(result.lowerBound).toBeLessThanOrEqual(best.cost);
        expect(result.cost).toBeGreaterThanOrEqual(best.cost);
        expect(result.cost).toBe(best.cost);
        expect(result.lowerBound).toBe(best.cost);
      }),
      { numRuns: 200 },
    );
  });
});

test('the search agrees with the exact table on sixteen set-ups, free and ordered', () => {
  for (let seed = 1; seed <= 8; seed += 1) {
    const cost = setUps(16, seed);
    const before: [number, number][] =
      seed % 2 === 0
        ? []
        : [
            [3, 1],
            [5, 1],
            [1, 9],
            [12, 0],
            [7, 14],
          ];
    const exact = solve(cost, { before });
    const result = searched(cost, { before });
    expect(exact.proven).toBe(true);
    expect(result.lowerBound).toBeLessThanOrEqual(exact.cost);
    expect(result.cost).toBe(exact.cost);
  }
});

describe('beyond the table', () => {
  test.each([20, 30, 40])('%i set-ups are proven', (n) => {
    const cost = setUps(n, n);
    const result = solve(cost);
    expect(costOf(cost, result.order)).toBe(result.cost);
    expect(result.proven).toBe(true);
  });

  test('200 set-ups: a complete order within two per cent of what is proven, the same each time', () => {
    const cost = setUps(200, 7);
    const began = performance.now();
    const result = solve(cost);
    const took = performance.now() - began;
    console.log(`200 set-ups: ${result.cost}, proven ${result.lowerBound}, ${took.toFixed(0)} ms`);
    expect([...result.order].sort((a, b) => a - b)).toEqual(cost.map((_, index) => index));
    expect(costOf(cost, result.order)).toBe(result.cost);
    expect(result.lowerBound).toBeLessThanOrEqual(result.cost);
    expect(result.cost - result.lowerBound).toBeLessThan(result.cost * 0.02);
    expect(result.proven).toBe(result.cost === result.lowerBound);
    expect(solve(cost)).toEqual(result);
  });

  test('450 set-ups: a complete order, well under going to the nearest next', () => {
    const cost = setUps(450, 5);
    const result = solve(cost);
    expect([...result.order].sort((a, b) => a - b)).toEqual(cost.map((_, index) => index));
    expect(costOf(cost, result.order)).toBe(result.cost);
    expect(result.cost).toBeLessThan(nearestNext(cost));
    expect(result.lowerBound).toBeLessThanOrEqual(result.cost);
    expect(result.cost - result.lowerBound).toBeLessThan(result.cost * 0.02);
  });

  test('60 set-ups in an order asked for', () => {
    const cost = setUps(60, 3);
    const before = Array.from({ length: 30 }, (_, i): [number, number] => [i, i + 30]);
    const result = solve(cost, { before });
    expect(obeys(result.order, before)).toBe(true);
    expect(costOf(cost, result.order)).toBe(result.cost);
    expect(result.lowerBound).toBeLessThanOrEqual(result.cost);
    expect(result.cost).toBeGreaterThanOrEqual(solve(cost).lowerBound);
  });

  test('a route known to cost nothing is found among sixty', () => {
    const draw = random(11);
    const hidden = Array.from({ length: 60 }, (_, index) => (index * 37) % 60);
    const cost = hidden.map(() => hidden.map(() => 1 + draw(1000)));
    for (let p = 1; p < 60; p += 1) cost[hidden[p - 1]!]![hidden[p]!] = 0;
    expect(solve(cost)).toMatchObject({ order: hidden, cost: 0, lowerBound: 0, proven: true });
  });
});

describe('in windows, where no table is made', () => {
  const inWindows = (cost: number[][], start: number[], before: [number, number][]) =>
    orderInWindows({
      size: cost.length,
      start: (first) => start[first]!,
      cost: (from, to) => cost[from]![to]!,
      before,
    });

  test('obeys, and neither undercuts the truth nor claims too much', () => {
    const request = tables(1, 7).chain((cost) =>
      fc.record({
        cost: fc.constant(cost),
        start: fc.array(fc.integer({ min: 0, max: 50 }), { minLength: cost.length, maxLength: cost.length }),
        before: orders(cost.length),
      }),
    );
    fc.assert(
      fc.property(request, ({ cost, start, before }) => {
        const best = cheapest(cost, { start, before })!;
        const found = inWindows(cost, start, before)!;
        expect([...found.order].sort((a, b) => a - b)).toEqual(cost.map((_, index) => index));
        expect(obeys(found.order, before)).toBe(true);
        expect(costOf(cost, found.order, { start })).toBe(found.cost);
        expect(found.cost).toBeGreaterThanOrEqual(best.cost);
        expect(found.lowerBound).toBeLessThanOrEqual(best.cost);
      }),
      { numRuns: 200 },
    );
  });

  test('more than a table holds: a complete order that obeys, under going to the nearest next, the same each time', () => {
    const size = LARGEST_TABLE + 300;
    const stops = Array.from({ length: size }, (_, index) => (index * 7919) % 1009);
    const start = (first: number): number => stops[first]!;
    const cost = (from: number, to: number): number => 15 * (Math.abs(stops[from]! - stops[to]!) % 67);
    const before = Array.from({ length: 200 }, (_, i): [number, number] => [i + 1000, i]);
    const found = orderInWindows({ size, start, cost, before })!;
    expect([...found.order].sort((a, b) => a - b)).toEqual(Array.from({ length: size }, (_, index) => index));
    const place = new Map(found.order.map((node, index) => [node, index]));
    expect(before.every(([i, j]) => place.get(i)! < place.get(j)!)).toBe(true);
    const sum = found.order.reduce((all, to, p) => all + (p === 0 ? start(to) : cost(found.order[p - 1]!, to)), 0);
    expect(found.cost).toBe(sum);
    expect(found.lowerBound).toBeLessThanOrEqual(found.cost);
    expect(orderInWindows({ size, start, cost, before })).toEqual(found);
  });

  test('nothing where the pairs run in a circle', () => {
    expect(inWindows([[0, 1], [1, 0]], [0, 0], [[0, 1], [1, 0]])).toBeNull(); // prettier-ignore
  });
});

describe('metamorphic', () => {
  test('adding a constant to every changeover adds it once a change', () => {
    fc.assert(
      fc.property(tables(2, 10), fc.integer({ min: 0, max: 1000 }), (cost, extra) => {
        const raised = cost.map((row) => row.map((value) => value + extra));
        expect(solve(raised).cost).toBe(solve(cost).cost + extra * (cost.length - 1));
      }),
    );
  });

  test('the sequence backwards costs the same on the table turned over', () => {
    fc.assert(
      fc.property(tables(1, 10), (cost) => {
        const turned = cost.map((row, i) => row.map((_, j) => cost[j]![i]!));
        expect(solve(turned).cost).toBe(solve(cost).cost);
      }),
    );
  });
});

describe('edges and wrong input', () => {
  test('none, one and two set-ups', () => {
    expect(solve([])).toEqual({ kind: 'order', order: [], cost: 0, lowerBound: 0, proven: true });
    expect(solve([], { closed: true })).toMatchObject({ order: [], cost: 0, proven: true });
    expect(solve([[0]])).toMatchObject({ order: [0], cost: 0, proven: true });
    expect(solve([[0]], { closed: true })).toMatchObject({ order: [0], cost: 0, proven: true });
    expect(solve([[0]], { start: [7] })).toMatchObject({ order: [0], cost: 7, proven: true });
    const two = [
      [0, 5],
      [3, 0],
    ];
    expect(solve(two)).toMatchObject({ order: [1, 0], cost: 3 });
    expect(solve(two, { closed: true })).toMatchObject({ order: [0, 1], cost: 8 });
    expect(solve(two, { before: [[0, 1]] })).toMatchObject({ order: [0, 1], cost: 5 });
  });

  test('equal costs keep the order of the table', () => {
    const n = 14;
    const cost = Array.from({ length: n }, () => new Array<number>(n).fill(4));
    expect(solve(cost).order).toEqual(cost.map((_, index) => index));
  });

  test('the diagonal is not looked at', () => {
    expect(
      solve([
        [NaN, 1],
        [2, -5],
      ]).cost,
    ).toBe(1);
  });

  test.each<[string, number[][], OrderOptions, string]>([
    ['a ragged table', [[0, 1], [1]], {}, 'not-square'],
    ['a negative cost', [[0, -1], [1, 0]], {}, 'not-a-cost'], // prettier-ignore
    ['a fraction', [[0, 0.5], [1, 0]], {}, 'not-a-cost'], // prettier-ignore
    ['not a number', [[0, NaN], [1, 0]], {}, 'not-a-cost'], // prettier-ignore
    ['an endless cost', [[0, Infinity], [1, 0]], {}, 'not-a-cost'], // prettier-ignore
    ['a cost too large', [[0, LARGEST_COST + 1], [1, 0]], {}, 'not-a-cost'], // prettier-ignore
    ['a short start row', [[0, 1], [1, 0]], { start: [1] }, 'start-row'], // prettier-ignore
    ['a negative start', [[0, 1], [1, 0]], { start: [1, -1] }, 'not-a-cost'], // prettier-ignore
    ['a start for a closed tour', [[0]], { start: [1], closed: true }, 'start-row'],
    ['an unknown set-up', [[0, 1], [1, 0]], { before: [[0, 2]] }, 'no-such-set-up'], // prettier-ignore
    ['a circle', [[0, 1], [1, 0]], { before: [[0, 1], [1, 0]] }, 'order-in-a-circle'], // prettier-ignore
    ['itself', [[0, 1], [1, 0]], { before: [[1, 1]] }, 'order-in-a-circle'], // prettier-ignore
    ['before the start of a tour', [[0, 1], [1, 0]], { before: [[1, 0]], closed: true }, 'order-in-a-circle'], // prettier-ignore
    ['itself at the start of a tour', [[0, 1], [1, 0]], { before: [[0, 0]], closed: true }, 'order-in-a-circle'], // prettier-ignore
  ])('%s is a problem with a reason', (_, cost, options, reason) => {
    const result = orderByChangeover(cost, options);
    expect(result).toMatchObject({ kind: 'problem', reason });
    expect((result as { message: string }).message.length).toBeGreaterThan(10);
  });

  test('the largest costs stay exact', () => {
    const cost = Array.from({ length: 20 }, (_, i) =>
      Array.from({ length: 20 }, (_unused, j) => (j === (i + 1) % 20 ? LARGEST_COST - 1 : LARGEST_COST)),
    );
    expect(solve(cost)).toMatchObject({ cost: 19 * (LARGEST_COST - 1), proven: true });
  });
});
