import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestArborescence } from '../../../../shared-core/machining/order/arborescence.js';
import { ascend, fractions, wholeBound } from '../../../../shared-core/machining/order/ascent.js';
import { assign } from '../../../../shared-core/machining/order/assignment.js';
import { branchAndBound } from '../../../../shared-core/machining/order/branch-and-bound.js';
import { nearestNext } from '../../../../shared-core/machining/order/construct.js';
import { Improver, nearTo } from '../../../../shared-core/machining/order/improve.js';
import { readRequest } from '../../../../shared-core/machining/order/request.js';
import { routeCost } from '../../../../shared-core/machining/order/round-trip.js';
import { orders, tables } from './arbitrary.js';
import { cheapest, permutations } from './brute-force.js';

function flat(cost: readonly (readonly number[])[]): Float64Array {
  return Float64Array.from(cost.flat());
}

/** Least cost over all ways to give each row its own column. */
function cheapestAssignment(cost: readonly (readonly number[])[]): number {
  let least = Infinity;
  for (const columns of permutations(cost.length)) {
    least = Math.min(
      least,
      columns.reduce((sum, column, row) => sum + cost[row]![column]!, 0),
    );
  }
  return least;
}

/** Least cost over all ways to reach every node from node 0: every choice of one arc into each other node. */
function cheapestReach(cost: readonly (readonly number[])[]): number {
  const n = cost.length;
  let least = Infinity;
  const from = new Array<number>(n).fill(0);
  for (;;) {
    let sum = 0;
    let reaches = true;
    for (let node = 1; node < n && reaches; node += 1) {
      let at = node;
      for (let steps = 0; at !== 0 && steps <= n; steps += 1) at = from[at]!;
      reaches = at === 0;
      sum += cost[from[node]!]![node]!;
    }
    if (reaches) least = Math.min(least, sum);
    let node = 1;
    while (node < n && from[node] === n - 1) {
      from[node] = 0;
      node += 1;
    }
    if (node >= n) return least;
    from[node]! += 1;
  }
}

describe('assignment', () => {
  test('is the cheapest, and its prices prove it', () => {
    fc.assert(
      fc.property(tables(1, 7), (cost) => {
        const n = cost.length;
        const result = assign(n, flat(cost))!;
        expect(result.cost).toBe(cheapestAssignment(cost));
        expect(new Set(result.columnOf).size).toBe(n);
        let prices = 0;
        for (let i = 0; i < n; i += 1) {
          prices += result.rowPrice[i]! + result.columnPrice[i]!;
          for (let j = 0; j < n; j += 1) {
            expect(result.rowPrice[i]! + result.columnPrice[j]!).toBeLessThanOrEqual(cost[i]![j]!);
          }
        }
        expect(prices).toBe(result.cost);
      }),
      { numRuns: 100 },
    );
  });

  test('says where there is none', () => {
    expect(assign(2, Float64Array.of(1, Infinity, 1, Infinity))).toBeNull();
  });
});

describe('arborescence', () => {
  test('is the cheapest, reaches every node, and its reduced costs are never negative', () => {
    fc.assert(
      fc.property(tables(1, 6), fc.integer({ min: 0, max: 40 }), (table, shift) => {
        const cost = table.map((row) => row.map((value) => value - shift));
        const n = cost.length;
        const result = cheapestArborescence(n, flat(cost))!;
        expect(result.cost).toBe(cheapestReach(cost));
        let sum = 0;
        for (let node = 1; node < n; node += 1) {
          sum += cost[result.from[node]!]![node]!;
          let at = node;
          for (let steps = 0; at !== 0 && steps < n; steps += 1) at = result.from[at]!;
          expect(at).toBe(0);
        }
        expect(sum).toBe(result.cost);
        const reduced = result.reducedCosts();
        for (let j = 1; j < n; j += 1) {
          expect(reduced[result.from[j]! * n + j]).toBe(0);
          for (let i = 0; i < n; i += 1) if (i !== j) expect(reduced[i * n + j]).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('an arc costs at least its reduced cost more', () => {
    fc.assert(
      fc.property(tables(3, 5), (cost) => {
        const n = cost.length;
        const result = cheapestArborescence(n, flat(cost))!;
        const reduced = result.reducedCosts();
        for (let i = 0; i < n; i += 1) {
          for (let j = 1; j < n; j += 1) {
            if (i === j) continue;
            const forced = cost.map((row, a) => row.map((value, b) => (b === j && a !== i ? 1e9 : value)));
            const least = cheapestReach(forced);
            if (least < 1e9) expect(least).toBeGreaterThanOrEqual(result.cost + reduced[i * n + j]!);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('says where a node cannot be reached', () => {
    expect(cheapestArborescence(2, Float64Array.of(0, Infinity, 1, 0))).toBeNull();
  });
});

describe('ascent and branch and bound', () => {
  const requests = tables(3, 7).chain((cost) => fc.tuple(fc.constant(cost), orders(cost.length)));

  test('the bound never passes the optimum and is at least the assignment bound', () => {
    fc.assert(
      fc.property(requests, ([cost, before]) => {
        const request = readRequest(cost, { before });
        if (request.kind === 'problem') throw new Error(request.message);
        const { size, cost: table } = request.trip;
        const optimum = cheapest(cost, { before })!.cost;
        const scale = fractions(size, table);
        const assignment = assign(size, table)!;
        const prices = assignment.rowPrice.map((price) => -price * scale);
        const bound = ascend(size, table, scale, prices, optimum + 5, 60)!;
        expect(wholeBound(bound.scaled, scale)).toBeLessThanOrEqual(optimum);
        expect(bound.scaled).toBeGreaterThanOrEqual(assignment.cost * scale);
      }),
      { numRuns: 200 },
    );
  });

  test('branching finds the optimum from a poor start, whatever the order asked for', () => {
    fc.assert(
      fc.property(requests, ([cost, before]) => {
        const request = readRequest(cost, { before });
        if (request.kind === 'problem') throw new Error(request.message);
        const { trip } = request;
        const scale = fractions(trip.size, trip.cost);
        const route = nearestNext(trip, 0)!;
        const known = { route, cost: routeCost(trip, route) };
        const root = ascend(trip.size, trip.cost, scale, new Float64Array(trip.size), known.cost + 1, 0)!;
        const optimum = cheapest(cost, { before })!.cost;
        const result = branchAndBound(trip, scale, root, known, 100_000);
        expect(result.cost).toBe(optimum);
        expect(result.lowerBound).toBe(optimum);
        const cut = branchAndBound(trip, scale, root, known, 30);
        expect(cut.lowerBound).toBeLessThanOrEqual(optimum);
        expect(cut.cost).toBeGreaterThanOrEqual(optimum);
      }),
      { numRuns: 200 },
    );
  });
});

test('the local search keeps its own account of the cost and never makes a route dearer', () => {
  const requests = tables(3, 30).chain((cost) => fc.tuple(fc.constant(cost), orders(cost.length)));
  fc.assert(
    fc.property(requests, ([cost, before]) => {
      const request = readRequest(cost, { before });
      if (request.kind === 'problem') throw new Error(request.message);
      const { trip } = request;
      const route = nearestNext(trip, 0)!;
      const improver = new Improver(trip, nearTo(trip), route);
      improver.settle();
      expect(improver.cost).toBe(routeCost(trip, improver.route));
      expect(improver.cost).toBeLessThanOrEqual(routeCost(trip, route));
      expect(improver.cost).not.toBe(Infinity);
      expect(new Set(improver.route).size).toBe(trip.size);
      expect(improver.route[0]).toBe(0);
    }),
    { numRuns: 60 },
  );
});
