import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  LONGEST_ROW,
  MOST_HOLES,
  MOST_SPINDLES,
  planStrokes,
  type StrokePlan,
  type StrokeRequest,
} from '../../../../shared-core/machining/strokes/index.js';

function plan(request: StrokeRequest): StrokePlan {
  const result = planStrokes(request);
  if (result.kind === 'problem') throw new Error(result.message);
  return result;
}

function row(n: number): number[] {
  return Array.from({ length: n }, (_, index) => index);
}

function starts(of: StrokePlan): number[] {
  return of.strokes.map(({ start }) => start);
}

/** Loaded spindles as a picture: 1 loaded, 0 empty. */
function pictures(of: StrokePlan): string[] {
  return of.strokes.map(({ loaded }) => loaded.map((is) => (is ? '1' : '0')).join(''));
}

describe('worked by hand (the examples in the description of planStrokes)', () => {
  test('46 holes, 23 spindles: two full strokes', () => {
    const result = plan({ holes: row(46), spindles: 23 });
    expect(starts(result)).toEqual([0, 23]);
    expect(pictures(result)).toEqual(['1'.repeat(23), '1'.repeat(23)]);
    expect(result).toMatchObject({
      toolChanges: 0,
      loading: 23,
      indexMoves: 1,
      travel: 23,
      metTwice: [],
      centred: false,
    });
    expect(result.strokes[1]).toMatchObject({ move: 23, load: [], empty: [] });
  });

  test('40 holes, 23 spindles: the same 20 spindles twice', () => {
    const result = plan({ holes: row(40), spindles: 23 });
    expect(result).toMatchObject({ toolChanges: 0, loading: 20, indexMoves: 1, travel: 20, metTwice: [] });
    expect(pictures(result)[0]).toBe(pictures(result)[1]);
    expect(plan({ holes: row(40), spindles: 23, starts: { from: 0, to: 39 } })).toMatchObject({ toolChanges: 0 });
    // All 23 first leaves 17: six must be emptied.
    expect(plan({ holes: row(40), spindles: 23, starts: [0, 23] })).toMatchObject({ toolChanges: 6 });
  });

  test('41 holes, 23 spindles: one change, or a hole met twice', () => {
    expect(plan({ holes: row(41), spindles: 23 })).toMatchObject({ toolChanges: 1, indexMoves: 1, metTwice: [] });
    const block = [...row(21)].map(() => 1).join('');
    const twice = plan({ holes: row(41), spindles: 23, meetsHolesTwice: true, starts: [0, 20] });
    expect(twice).toMatchObject({ toolChanges: 0, metTwice: [20] });
    expect(pictures(twice)).toEqual([`${block}00`, `${block}00`]);
    // Free to stand anywhere, the least travel is 18 pitches, with all spindles loaded and five holes met twice.
    const free = plan({ holes: row(41), spindles: 23, meetsHolesTwice: true });
    expect(free).toMatchObject({ toolChanges: 0, travel: 18, metTwice: [18, 19, 20, 21, 22], centred: true });
  });

  test('63 holes, 23 spindles: three strokes about the middle', () => {
    const result = plan({ holes: row(63), spindles: 23 });
    expect(starts(result)).toEqual([-1, 20, 41]);
    expect(pictures(result)).toEqual(new Array(3).fill(`0${'1'.repeat(21)}0`));
    expect(result).toMatchObject({ toolChanges: 0, travel: 42, indexMoves: 2, centred: true, proven: true });
    expect(result.strokes[1]!.start + 11).toBe(31);
  });

  test('24 holes, 23 spindles: every second spindle, one pitch on', () => {
    const result = plan({ holes: row(24), spindles: 23 });
    expect(starts(result)).toEqual([0, 1]);
    expect(pictures(result)[0]).toBe('10101010101010101010101');
    expect(result).toMatchObject({ toolChanges: 0, travel: 1 });
  });

  test('a gap, and two places to stand', () => {
    const result = plan({ holes: row(10).filter((hole) => hole !== 4), spindles: 5, starts: [0, 5] });
    expect(pictures(result)).toEqual(['11110', '11111']);
    expect(result).toMatchObject({ toolChanges: 1 });
    expect(result.strokes[1]).toMatchObject({ load: [4], empty: [], move: 5, bores: [5, 6, 7, 8, 9] });
  });

  test('a hole out of reach', () => {
    expect(planStrokes({ holes: row(10), spindles: 5, starts: { from: 0, to: 4 } })).toEqual({
      kind: 'problem',
      reason: 'hole-out-of-reach',
      holes: [9],
      message: 'no place of the head reaches hole 9; it reaches from 0 to 8',
    });
  });
});

describe('single facts', () => {
  test('one short stroke stands centred where it can', () => {
    expect(plan({ holes: row(21), spindles: 23 })).toMatchObject({
      centred: true,
      indexMoves: 0,
      travel: 0,
      toolChanges: 0,
    });
    expect(starts(plan({ holes: row(21), spindles: 23 }))).toEqual([-1]);
    // An even number of holes has no middle hole, and an even head no centre spindle.
    expect(plan({ holes: row(20), spindles: 23 }).centred).toBe(false);
    expect(plan({ holes: row(21), spindles: 22 }).centred).toBe(false);
    expect(starts(plan({ holes: row(21), spindles: 23, starts: { from: 0, to: 20 } }))).toEqual([0]);
  });

  test('what is loaded already weighs more than standing centred', () => {
    const loaded = row(23).map((spindle) => spindle < 21);
    const result = plan({ holes: row(21), spindles: 23, loaded });
    expect(result).toMatchObject({ loading: 0, centred: false });
    expect(starts(result)).toEqual([0]);
    expect(result.strokes[0]).toMatchObject({ load: [], empty: [] });
  });

  test('loading counts spindles put in and taken out before the row', () => {
    const result = plan({ holes: [0, 1], spindles: 3, starts: [0], loaded: [false, true, true] });
    expect(result).toMatchObject({ loading: 2 });
    expect(result.strokes[0]).toMatchObject({ load: [0], empty: [2] });
  });

  test('no hole needs no stroke', () => {
    expect(plan({ holes: [], spindles: 5 })).toEqual({
      kind: 'plan',
      strokes: [],
      toolChanges: 0,
      loading: 0,
      indexMoves: 0,
      travel: 0,
      metTwice: [],
      centred: false,
      proven: true,
    });
  });

  test('holes named twice and in any order are one row', () => {
    expect(plan({ holes: [5, 3, 4, 3, 5], spindles: 2 })).toEqual(plan({ holes: [3, 4, 5], spindles: 2 }));
  });

  test('one spindle bores one hole a stroke and is never changed', () => {
    expect(plan({ holes: [2, 3, 9], spindles: 1 })).toMatchObject({ toolChanges: 0, travel: 7, indexMoves: 2 });
  });
});

describe('wrong requests', () => {
  test.each<[string, StrokeRequest, string]>([
    ['no spindle', { holes: [0], spindles: 0 }, 'no-spindles'],
    ['half a spindle', { holes: [0], spindles: 1.5 }, 'no-spindles'],
    ['too many spindles', { holes: [0], spindles: MOST_SPINDLES + 1 }, 'no-spindles'],
    ['a hole between places', { holes: [0.5], spindles: 3 }, 'not-a-place'],
    ['a hole nowhere', { holes: [NaN], spindles: 3 }, 'not-a-place'],
    ['a start nowhere', { holes: [0], spindles: 3, starts: [Infinity] }, 'not-a-place'],
    ['an endless range', { holes: [0], spindles: 3, starts: { from: -Infinity, to: 3 } }, 'not-a-place'],
    ['too few spindles said to be loaded', { holes: [0], spindles: 3, loaded: [true] }, 'loaded-spindles'],
    ['too long a row', { holes: [0, LONGEST_ROW], spindles: 3 }, 'row-too-long'],
    ['too many holes', { holes: row(MOST_HOLES + 1), spindles: 3 }, 'row-too-long'],
    ['nowhere to stand', { holes: [0], spindles: 3, starts: [] }, 'hole-out-of-reach'],
    ['an empty range', { holes: [0], spindles: 3, starts: { from: 1, to: 0 } }, 'hole-out-of-reach'],
  ])('%s is a problem with a reason', (_, request, reason) => {
    expect(planStrokes(request)).toMatchObject({ kind: 'problem', reason });
  });

  test('all holes out of reach are named', () => {
    expect(planStrokes({ holes: [0, 4, 9], spindles: 3, starts: [3] })).toMatchObject({ holes: [0, 9] });
  });
});

const requests: fc.Arbitrary<StrokeRequest> = fc
  .record({ n: fc.integer({ min: 1, max: 90 }), spindles: fc.integer({ min: 1, max: 30 }) })
  .chain(({ n, spindles }) =>
    fc.record(
      {
        holes: fc.oneof(
          fc.constant(row(n)),
          fc.array(fc.integer({ min: 0, max: n }), { maxLength: 3 }).map((out) => {
            const left = row(n).filter((hole) => !out.includes(hole));
            return left.length > 0 ? left : [0];
          }),
        ),
        spindles: fc.constant(spindles),
        meetsHolesTwice: fc.boolean(),
        loaded: fc.array(fc.boolean(), { minLength: spindles, maxLength: spindles }),
      },
      { requiredKeys: ['holes', 'spindles'] },
    ),
  );

/** The leading figures that plans are compared by, recounted from the strokes. */
function figures(of: StrokePlan): number[] {
  let changes = 0;
  for (let i = 1; i < of.strokes.length; i += 1) {
    const a = of.strokes[i - 1]!.loaded;
    changes += of.strokes[i]!.loaded.filter((is, spindle) => is !== a[spindle]).length;
  }
  expect(of.toolChanges).toBe(changes);
  const travel = of.strokes.length === 0 ? 0 : of.strokes.at(-1)!.start - of.strokes[0]!.start;
  expect(of.travel).toBe(travel);
  return [of.strokes.length, changes];
}

function atMost(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return true;
}

describe('of any row', () => {
  test('the wanted holes are bored, and nothing else, each once unless it may be met twice', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const result = plan(request);
        const times = new Map<number, number>();
        for (const { start, loaded, bores } of result.strokes) {
          expect(loaded).toHaveLength(request.spindles);
          expect(bores).toEqual(loaded.flatMap((is, spindle) => (is ? [start + spindle] : [])));
          for (const place of bores) times.set(place, (times.get(place) ?? 0) + 1);
        }
        expect([...times.keys()].sort((a, b) => a - b)).toEqual(request.holes);
        const twice = [...times].filter(([, count]) => count > 1).map(([place]) => place);
        expect(result.metTwice).toEqual(twice.sort((a, b) => a - b));
        if (request.meetsHolesTwice !== true) expect(twice).toEqual([]);
        figures(result);
      }),
      { numRuns: 60 },
    );
  });

  test('a contiguous row takes as many strokes as the holes fill heads, with at most one tool change', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 1, max: 30 }), (n, spindles) => {
        const result = plan({ holes: row(n), spindles });
        const strokes = Math.ceil(n / spindles);
        expect(result.strokes).toHaveLength(strokes);
        // A change is needed just where the holes cannot be shared out evenly.
        expect(result.toolChanges).toBe(n % strokes === 0 ? 0 : 1);
        expect(plan({ holes: row(n), spindles, meetsHolesTwice: true }).toolChanges).toBe(0);
      }),
      { numRuns: 60 },
    );
  });

  test('leave to meet holes twice, and more places to stand, never make a plan worse', () => {
    fc.assert(
      fc.property(requests, fc.integer({ min: 0, max: 8 }), (request, cut) => {
        const once = plan({ ...request, meetsHolesTwice: false });
        const twice = plan({ ...request, meetsHolesTwice: true });
        if (once.proven && twice.proven) expect(atMost(figures(twice), figures(once))).toBe(true);
        const few = planStrokes({ ...request, starts: { from: -cut, to: 200 } });
        const free = plan(request);
        if (few.kind === 'plan' && free.proven) expect(atMost(figures(free), figures(few))).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  test('moving the row along its grid moves the plan, and the row turned round takes as much', () => {
    fc.assert(
      fc.property(requests, fc.integer({ min: -500, max: 500 }), (request, by) => {
        const result = plan(request);
        const moved = plan({ ...request, holes: request.holes.map((hole) => hole + by) });
        expect(starts(moved)).toEqual(starts(result).map((start) => start + by));
        expect(pictures(moved)).toEqual(pictures(result));
        const { loaded: _, ...unloaded } = request;
        const forth = plan(unloaded);
        const back = plan({ ...unloaded, holes: request.holes.map((hole) => -hole) });
        if (!forth.proven || !back.proven) return;
        expect(figures(back)).toEqual(figures(forth));
        expect([back.travel, back.metTwice.length, back.centred]).toEqual([
          forth.travel,
          forth.metTwice.length,
          forth.centred,
        ]);
      }),
      { numRuns: 25 },
    );
  });
});

test('rows of everyday size and long ones are all proven', () => {
  const everyday = [row(23), row(34), row(46), row(60), row(69), row(75)].flatMap((holes) =>
    [13, 21, 23, 26].flatMap((spindles) =>
      [true, false].map((meetsHolesTwice) => ({ holes, spindles, meetsHolesTwice })),
    ),
  );
  const began = performance.now();
  for (const request of everyday) expect(plan(request).proven).toBe(true);
  console.log(
    `${everyday.length} everyday rows: ${((performance.now() - began) / everyday.length).toFixed(1)} ms each`,
  );
  for (const [n, spindles] of [
    [200, 60],
    [199, 60],
    [185, 23],
    [200, 13],
    [197, 13],
    [200, 1],
    [200, 2],
  ] as const) {
    expect(plan({ holes: row(n), spindles }).proven).toBe(true);
  }
});

test('a row of two thousand holes at random comes back with a whole plan', () => {
  let state = 1;
  const holes = row(4000).filter(() => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state < 2 ** 31;
  });
  const result = plan({ holes: holes.slice(0, MOST_HOLES), spindles: 23 });
  expect(result.strokes.flatMap(({ bores }) => bores).sort((a, b) => a - b)).toEqual(holes.slice(0, MOST_HOLES));
});
