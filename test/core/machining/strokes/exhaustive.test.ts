import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planStrokes, type StrokeRequest } from '../../../../shared-core/machining/strokes/index.js';
import { bestScore, score, type Score } from './exhaustive.js';

type Request = StrokeRequest & { starts: readonly number[] };

/** What the planner gives, scored from its strokes alone, or null for a problem. */
function planned(request: StrokeRequest): Score | null {
  const plan = planStrokes(request);
  if (plan.kind === 'problem') return null;
  expect(plan.proven).toBe(true);
  const holes = [...new Set(request.holes)].sort((a, b) => a - b);
  const bored = new Set<number>();
  for (const { start, loaded, bores } of plan.strokes) {
    const places = loaded.flatMap((is, spindle) => (is ? [start + spindle] : []));
    expect(places).toEqual(bores);
    for (const place of places) {
      expect(holes).toContain(place);
      if (request.meetsHolesTwice !== true) expect(bored.has(place)).toBe(false);
      bored.add(place);
    }
  }
  expect(bored.size).toBe(holes.length);
  return score(
    holes,
    request,
    plan.strokes.map(({ start }) => start),
    plan.strokes.map(({ loaded }) => loaded.reduce((bits, is, spindle) => bits + (is ? 2 ** spindle : 0), 0)),
  );
}

function check(request: Request): void {
  const best = bestScore(request);
  const own = planned(request);
  if (JSON.stringify(own) !== JSON.stringify(best)) {
    throw new Error(`${JSON.stringify(request)}: planned ${JSON.stringify(own)}, best ${JSON.stringify(best)}`);
  }
}

function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
}

test('every set of holes among seven, one to four spindles, with and without holes met twice', () => {
  for (let set = 1; set < 128; set += 1) {
    const holes = range(0, 6).filter((place) => (set & (1 << place)) !== 0);
    for (let spindles = 1; spindles <= 4; spindles += 1) {
      for (const meetsHolesTwice of [false, true]) {
        check({ holes, spindles, meetsHolesTwice, starts: range(1 - spindles, 6) });
      }
    }
  }
});

test('every contiguous row of up to ten holes, one to five spindles', () => {
  for (let n = 1; n <= 10; n += 1) {
    for (let spindles = 2; spindles <= 5; spindles += 1) {
      for (const meetsHolesTwice of [false, true]) {
        check({ holes: range(0, n - 1), spindles, meetsHolesTwice, starts: range(1 - spindles, n - 1) });
      }
    }
  }
});

test('some of ten places, some starts only, some spindles loaded before', () => {
  const requests = fc.integer({ min: 1, max: 5 }).chain((spindles) =>
    fc.record(
      {
        holes: fc.subarray(range(0, 9), { minLength: 1 }),
        spindles: fc.constant(spindles),
        starts: fc.subarray(range(1 - spindles, 9), { minLength: 1 }),
        meetsHolesTwice: fc.boolean(),
        loaded: fc.array(fc.boolean(), { minLength: spindles, maxLength: spindles }),
      },
      { requiredKeys: ['holes', 'spindles', 'starts'] },
    ),
  );
  fc.assert(fc.property(requests, check), { numRuns: 400 });
});

test('long heads over short rows with gaps', () => {
  const requests = fc.record({
    holes: fc.subarray(range(0, 11), { minLength: 6 }),
    spindles: fc.integer({ min: 5, max: 7 }),
    starts: fc.subarray(range(-3, 9), { minLength: 6 }),
    meetsHolesTwice: fc.boolean(),
  });
  fc.assert(fc.property(requests, check), { numRuns: 60 });
});
