import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assignStops, coveredBy, liesOver, type StopPlace } from '../../../../shared-core/machining/plan/stops.js';
import type { Way } from '../../../../shared-core/machining/plan/operation.js';
import type { CupBorer, LineDrill, Stop, VerticalHead } from '../../../../shared-core/shop/model.js';
import { mm } from '../../specs.js';
import { shed } from './jobs.js';

const borer = shed.machines.get('borer-up') as VerticalHead;

const stop = (name: string, side: Stop['side'], min: number, max: number, lowers = true): Stop => ({
  name,
  place: borer.place,
  side,
  range: { min: mm(min), max: mm(max) },
  lowers,
  stands: null,
});
const place = (position: number, lowers = false): StopPlace => ({ side: 'left', position: mm(position), lowers });
const withStops = (stops: readonly Stop[], extension: number): VerticalHead => ({
  ...borer,
  stops,
  extension: mm(extension),
});

describe('stops of one hand on one fence', () => {
  const two = [stop('near-left', 'left', 0, 60), stop('long-left', 'left', 60, 1000)];

  test('never cross with the extension on: the outer one takes the outer place', () => {
    const plan = assignStops(withStops(two, 1200), [place(1016), place(52.7)]);
    expect(plan).toEqual({
      stops: [
        { name: 'near-left', side: 'left', position: mm(52.7) },
        { name: 'long-left', side: 'left', position: mm(1016) },
      ],
      extension: true,
    });
  });
  test('never cross where only a crossing would serve both places', () => {
    const held = [stop('near-left', 'left', 0, 60, false), stop('long-left', 'left', 60, 1000)];
    expect(assignStops(withStops(held, 1200), [place(1016), place(52.7, true)])).toBeNull();
  });
  test('do not go on along it but for the one that reaches furthest', () => {
    expect(assignStops(withStops(two, 1200), [place(1016), place(152.7)])).toBeNull();
  });
  test('do without the extension where they can', () => {
    expect(assignStops(withStops(two, 1200), [place(30), place(900)])?.extension).toBe(false);
  });
});

/** Every way to give each place a stop of its own, tried one by one. */
function* pairings(
  stops: readonly Stop[],
  places: readonly StopPlace[],
): Generator<readonly (readonly [Stop, StopPlace])[]> {
  const [first, ...rest] = places;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const one of stops) {
    const others = stops.filter((other) => other !== one);
    for (const pairing of pairings(others, rest)) yield [[one, first], ...pairing];
  }
}

test('stops are found for places wherever some pairing of them has none past its range and none crossed', () => {
  const someStop = fc.record({
    side: fc.constantFrom('left' as const, 'right' as const),
    range: fc.tuple(fc.nat(8), fc.nat(8)).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) + 3 })),
    lowers: fc.boolean(),
    stands: fc.constant<number | null>(null),
  });
  const somePlace = fc.record({
    side: fc.constantFrom('left' as const, 'right' as const),
    position: fc.nat(12),
    lowers: fc.constantFrom(true, false, false),
  });
  const places = fc.uniqueArray(somePlace, {
    minLength: 1,
    maxLength: 3,
    selector: ({ side, position }) => `${side}${position}`,
  });
  let found = 0;
  fc.assert(
    fc.property(
      fc.array(someStop, { minLength: 2, maxLength: 5 }),
      places,
      fc.constantFrom(0, 4),
      (made, wanted, extension) => {
        const stops = made.map((one, index) => ({ ...one, name: `stop-${index}`, place: borer.place }));
        const furthest = (side: Stop['side']): Stop | undefined =>
          stops
            .filter((one) => one.side === side)
            .sort(
              (a, b) => a.range.max - b.range.max || a.range.min - b.range.min || stops.indexOf(a) - stops.indexOf(b),
            )
            .at(-1);
        const serve = (beyond: number): boolean =>
          [...pairings(stops, wanted)].some(
            (pairing) =>
              pairing.every(
                ([one, { side, position, lowers }]) =>
                  one.side === side &&
                  position >= one.range.min &&
                  position <= one.range.max + (one === furthest(side) ? beyond : 0) &&
                  (one.lowers || !lowers),
              ) &&
              pairing.every(([one, at]) =>
                pairing.every(([other, otherAt]) => {
                  if (one === other || one.side !== other.side) return true;
                  const inner =
                    one.range.min - other.range.min ||
                    one.range.max - other.range.max ||
                    stops.indexOf(one) - stops.indexOf(other);
                  return inner < 0 === at.position < otherAt.position;
                }),
              ),
          );
        const plan = assignStops({ ...borer, stops, extension }, wanted);
        const expected = serve(0) ? false : serve(extension) ? true : null;
        expect(plan?.extension ?? null).toBe(expected);
        if (plan) found += plan.stops.length;
      },
    ),
    { numRuns: 2000 },
  );
  expect(found).toBeGreaterThan(400);
});

describe('where a panel comes to lie over stops', () => {
  /*
   * A panel 720 long against a left stop 16 from the first of five spindles, 32 apart: it covers X from -16 to 704, and keeps 2
   * of room beyond. A left stop at p has its face at X = -p; a right one at X = 128 + p on the line drill, where the last spindle
   * stands at 128, and at X = p where all spindles stand at 0.
   */
  const drill: LineDrill = { ...(shed.machines.get('row-drill') as LineDrill), spindles: 5, pitch: mm(32) };
  const cups = shed.machines.get('cup-press') as CupBorer;
  const way = (side: Way['side'], position: number, ...moves: readonly number[]): Way => ({
    down: 'outside',
    edge: 'front',
    end: 'reference-end',
    side,
    position: mm(position),
    strokes: moves.map((moved) => ({ moved: mm(moved), wanted: [] })),
    extent: mm(720),
    load: { wanted: [], limit: [] },
  });

  test.each([
    ['stops of both hands', drill, [0], [-706, 16], [-144, 578]],
    ['its own stop too, moved along past it', drill, [0, -160], [-706, 176], [-304, 578]],
    ['more on the other hand, moved the other way', drill, [0, 160], [-866, 16], [-144, 738]],
    ['the same where it is moved so in all', drill, [160], [-866, 16], [-144, 738]],
    // It came against its stop before it was moved along.
    ['the same where only the second stroke is run', drill, [-160], [-706, 176], [-304, 578]],
    ['both hands from one line', borer, [0], [-706, 16], [-16, 706]],
    ['both hands from one cup', cups, [0], [-706, 16], [-16, 706]],
  ] as const)('%s', (_, machine, moves, own, other) => {
    expect(coveredBy(machine, way('left', 16, ...moves), 'left')).toEqual(own.map(mm));
    expect(coveredBy(machine, way('left', 16, ...moves), 'right')).toEqual(other.map(mm));
    // A panel at a right stop is the mirror image, its moves turned about.
    const mirrored = moves.map((moved) => 0 - moved);
    expect(coveredBy(machine, way('right', 16, ...mirrored), 'right')).toEqual(own.map(mm));
    expect(coveredBy(machine, way('right', 16, ...mirrored), 'left')).toEqual(other.map(mm));
  });
  test('a stop that just touches what is covered is not lain over', () => {
    const over = (side: Stop['side'], position: number, from = 16): boolean =>
      liesOver(borer, way('left', from, 0), { side, position: mm(position) });
    expect([over('right', 706), over('right', 705.999)]).toEqual([false, true]);
    expect([over('left', 16), over('left', 15.999)]).toEqual([false, true]);
    // From a stop 800 out the other end lies 80 from the spindles.
    expect([over('left', 78, 800), over('left', 78.001, 800)]).toEqual([false, true]);
  });
});
