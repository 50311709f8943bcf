import fc from 'fast-check';
import type { Micrometres } from '../../../../shared-core/length/units.js';
import type { SetUp } from '../../../../shared-core/machining/set-up.js';
import type {
  CupBorer,
  HorizontalHead,
  LineDrill,
  Shop,
  Stop,
  VerticalHead,
} from '../../../../shared-core/shop/model.js';
import { mm } from '../../specs.js';

const nowhere = { part: 'shop', start: 0, end: 0 } as const;
const anything = { length: null, width: null, thickness: null };

const span = (low: number, high: number): fc.Arbitrary<{ min: Micrometres; max: Micrometres }> =>
  fc
    .tuple(fc.integer({ min: mm(low), max: mm(high) }), fc.integer({ min: mm(low), max: mm(high) }))
    .map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));

/** Stops on both hands, or now and then on one only; some cannot be lowered. */
const stopsArbitrary = (low: number, high: number): fc.Arbitrary<Stop[]> =>
  fc
    .array(
      fc.record({
        name: fc.constant(''),
        place: fc.constant(nowhere),
        side: fc.constantFrom('left' as const, 'right' as const),
        range: fc.oneof(fc.constant({ min: mm(low), max: mm(high) }), span(low, high)),
        lowers: fc.oneof({ weight: 4, arbitrary: fc.constant(true) }, { weight: 1, arbitrary: fc.constant(false) }),
        stands: fc.constant(null),
      }),
      { minLength: 1, maxLength: 5 },
    )
    .map((stops) => stops.map((stop, index) => ({ ...stop, name: `stop-${index}` })));

const depths = { min: 0, max: mm(90) };

/** Machines that a workshop might have, on one pitch: fence far or near, bits from above or below, few or many stops. */
export const machinesArbitrary = (pitch: Micrometres): fc.Arbitrary<[VerticalHead, HorizontalHead, LineDrill]> =>
  fc.tuple(
    fc.record({
      kind: fc.constant('vertical' as const),
      name: fc.constant('faces'),
      place: fc.constant(nowhere),
      body: fc.constantFrom('one', 'faces'),
      spindles: fc.integer({ min: 5, max: 30 }),
      pitch: fc.constant(pitch),
      depth: fc.constant(depths),
      depthStops: fc.constant(null),
      panel: fc.constant(anything),
      clamps: fc.constant([]),
      stands: fc.constant(null),
      stops: stopsArbitrary(0, 1200),
      fence: fc.constantFrom('far' as const, 'near' as const),
      from: fc.constantFrom('above' as const, 'below' as const),
      fenceOffset: fc.oneof(fc.constant({ min: mm(15), max: mm(80) }), span(15, 80)),
      extension: fc.constantFrom(0, mm(1000)),
    }),
    fc.record({
      kind: fc.constant('horizontal' as const),
      name: fc.constant('ends'),
      place: fc.constant(nowhere),
      body: fc.constantFrom('one', 'ends'),
      spindles: fc.integer({ min: 5, max: 30 }),
      pitch: fc.constant(pitch),
      depth: fc.constant(depths),
      depthStops: fc.constant(null),
      panel: fc.constant(anything),
      clamps: fc.constant([]),
      stands: fc.constant(null),
      stops: stopsArbitrary(5, 120),
      height: fc.constant({ min: mm(2), max: mm(40) }),
    }),
    fc.record({
      kind: fc.constant('line' as const),
      name: fc.constant('rows'),
      place: fc.constant(nowhere),
      body: fc.constant('rows'),
      spindles: fc.integer({ min: 3, max: 30 }),
      pitch: fc.constant(pitch),
      depth: fc.constant(depths),
      depthStops: fc.constant(null),
      panel: fc.constant(anything),
      clamps: fc.constant([]),
      stands: fc.constant(null),
      stops: stopsArbitrary(0, 600),
      fence: fc.constantFrom('far' as const, 'near' as const),
      from: fc.constantFrom('above' as const, 'below' as const),
      heads: fc.integer({ min: 1, max: 4 }),
      setback: fc.oneof(fc.constant({ min: mm(20), max: mm(80) }), span(20, 80)),
      headDistance: fc.oneof(fc.constant({ min: mm(64), max: mm(640) }), fc.constant(null), span(60, 640)),
      throat: fc.integer({ min: mm(300), max: mm(900) }),
      indexPins: fc.constantFrom('row' as const, 'fence' as const, 'none' as const),
      indexRange: fc.oneof(fc.constant(null), fc.integer({ min: mm(200), max: mm(3000) })),
      meetsHolesTwice: fc.boolean(),
    }),
  );

/** A shop with these machines as its usual ones. */
export function withMachines(
  shop: Shop,
  [faces, ends, rows]: readonly [VerticalHead, HorizontalHead, LineDrill],
): Shop {
  return {
    ...shop,
    machines: new Map([faces, ends, rows].map((machine) => [machine.name, machine])),
    habits: {
      ...shop.habits,
      machines: { faces: 'faces', ends: 'ends', rows: 'rows', cups: null, clamp: null, saw: null },
    },
    changeover: { stop: 60, fence: 90, bit: 45, depth: 30, turnHead: 180, extension: 240, machine: 120 },
  };
}

/** Cup borers that take most doors. */
export const cupBorerArbitrary: fc.Arbitrary<CupBorer> = fc.record({
  kind: fc.constant('cup' as const),
  name: fc.constant('cups'),
  place: fc.constant(nowhere),
  body: fc.constantFrom('one', 'cups'),
  depth: fc.constant(depths),
  panel: fc.constant(anything),
  stands: fc.constant(null),
  stops: stopsArbitrary(0, 1200),
  distance: fc.oneof(fc.constant({ min: mm(15), max: mm(60) }), span(15, 60)),
});

/** A shop with this one as its usual cup borer. */
export const withCups = (shop: Shop, cups: CupBorer): Shop => ({
  ...shop,
  machines: new Map(shop.machines).set(cups.name, cups),
  habits: { ...shop.habits, machines: { ...shop.habits.machines, cups: cups.name } },
});

/** The shop with each machine standing as one of these set-ups, or less of it, leaves it. */
export function standingAs(setUps: readonly SetUp[], picked: number, shop: Shop): Shop {
  const machines = [...shop.machines].map(([name, machine], index) => {
    const own = setUps.filter((one) => one.machine.name === name);
    const setUp = own[picked % Math.max(1, own.length)];
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
