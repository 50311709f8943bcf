import fc from 'fast-check';
import { expect, test } from 'vitest';
import { orderWithState, type StatefulSequence } from '../../../../shared-core/machining/order/index.js';
import { orders } from './arbitrary.js';
import '../../../seed.js';

/** A machine with stops that stay where they were set: each set-up wants one of them at a place, and has a bit of its own. */
interface Wants {
  readonly setUps: readonly { readonly stop: number; readonly place: number; readonly bit: number }[];
  readonly before: readonly (readonly [number, number])[];
}

const STOP = 60;
const BIT = 25;

/** The seconds of an order, told stop by stop. */
function secondsOf({ setUps }: Wants, order: readonly number[]): number {
  const stands = new Map<number, number>();
  let bit: number | null = null;
  let sum = 0;
  for (const index of order) {
    const wanted = setUps[index]!;
    if (stands.get(wanted.stop) !== wanted.place) sum += STOP;
    if (bit !== wanted.bit) sum += BIT;
    stands.set(wanted.stop, wanted.place);
    bit = wanted.bit;
  }
  return sum;
}

interface Standing {
  readonly stops: readonly (number | null)[];
  readonly bit: number;
}

function sequenceOf({ setUps, before }: Wants): StatefulSequence<Standing> {
  const bits = (from: number | null, to: number): number =>
    from !== null && setUps[from]!.bit === setUps[to]!.bit ? 0 : BIT;
  const isSame = (from: number, to: number): boolean =>
    setUps[from]!.stop === setUps[to]!.stop && setUps[from]!.place === setUps[to]!.place;
  return {
    size: setUps.length,
    before,
    dues: [],
    stage: () => 'one',
    step: (state, to) => {
      const { stop, place, bit } = setUps[to]!;
      const stops = state?.stops ?? [null, null, null];
      const cost = (stops[stop] === place ? 0 : STOP) + (state?.bit === bit ? 0 : BIT);
      return { cost, state: { stops: stops.with(stop, place), bit } };
    },
    key: ({ stops }) => stops.join(),
    // One that wants the same stop elsewhere has moved it.
    least: (from, to) => {
      const isMoved = from === null || (setUps[from]!.stop === setUps[to]!.stop && !isSame(from, to));
      return { cost: bits(from, to) + (isMoved ? STOP : 0), dues: [] };
    },
    most: (from, to) => bits(from, to) + (isSame(from, to) ? 0 : STOP),
  };
}

const wants = (least: number, most: number): fc.Arbitrary<Wants> =>
  fc.integer({ min: least, max: most }).chain((size) =>
    fc.record({
      setUps: fc.array(fc.record({ stop: fc.nat({ max: 2 }), place: fc.nat({ max: 3 }), bit: fc.nat({ max: 2 }) }), {
        minLength: size,
        maxLength: size,
      }),
      before: orders(size),
    }),
  );

const obeys = ({ before }: Wants, order: readonly number[]): boolean =>
  before.every(([i, j]) => order.indexOf(i) < order.indexOf(j));

function* permutations(left: readonly number[]): Generator<readonly number[]> {
  if (left.length === 0) yield [];
  for (const first of left)
    for (const rest of permutations(left.filter((one) => one !== first))) yield [first, ...rest];
}

test('a few set-ups: the first of the cheapest of all orders', () => {
  fc.assert(
    fc.property(wants(1, 6), (all) => {
      const found = orderWithState(sequenceOf(all))!;
      let [least, first]: [number, readonly number[]] = [Infinity, []];
      for (const order of permutations(all.setUps.map((_, index) => index))) {
        if (obeys(all, order) && secondsOf(all, order) < least) [least, first] = [secondsOf(all, order), order];
      }
      expect(found).toEqual({ order: first, cost: least, lowerBound: least, bestInStages: true });
    }),
    { numRuns: 60 },
  );
});

test('many: an order that obeys, costs what is said and no less than the bound, and is bettered by moving no set-up', () => {
  fc.assert(
    fc.property(wants(22, 26), (all) => {
      const { order, cost, lowerBound } = orderWithState(sequenceOf(all))!;
      expect(order.toSorted((a, b) => a - b)).toEqual(all.setUps.map((_, index) => index));
      expect(obeys(all, order)).toBe(true);
      expect(secondsOf(all, order)).toBe(cost);
      expect(lowerBound).toBeLessThanOrEqual(cost);
      for (const [from, one] of order.entries()) {
        const others = order.toSpliced(from, 1);
        for (let to = 0; to < order.length; to += 1) {
          const moved = others.toSpliced(to, 0, one);
          if (obeys(all, moved)) expect(secondsOf(all, moved)).toBeGreaterThanOrEqual(cost);
        }
      }
    }),
    { numRuns: 8 },
  );
});
