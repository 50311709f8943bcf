import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findTurn, push, toTable } from '../../../../shared-core/machining/replay/lie.js';
import type { End, Solid } from '../../../../shared-core/machining/replay/solid.js';
import { NOTHING } from '../../../../shared-core/machining/replay/stray.js';
import { contacts, settingNames, type Contact } from '../../../../shared-core/machining/replay/table.js';
import { dot, type Vector } from '../../../../shared-core/machining/replay/vector.js';
import { HORIZONTAL, mm, setUp, step, VERTICAL } from './set-ups.js';

/** A panel up to 3 in the metre out of square at either end, as it may come from a saw. */
const panels: fc.Arbitrary<Solid> = fc
  .record({
    hand: fc.constantFrom('left', 'right'),
    length: fc.integer({ min: mm(200), max: mm(2000) }),
    width: fc.integer({ min: mm(100), max: mm(800) }),
    thickness: fc.integer({ min: mm(10), max: mm(40) }),
    slopes: fc.tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -3, max: 3 })),
  })
  .map(({ slopes: [near, far], ...panel }) => ({
    ...panel,
    slope: { 'reference-end': near / 1000, 'far-end': far / 1000 },
  }));

/** The corners of one end: the front edge runs along v, and each end straight from there. */
const cornersOf = ({ length, width, thickness, slope }: Solid, end: End): readonly Vector[] =>
  [0, width].flatMap((u) =>
    [0, thickness].map((t): Vector => [u, (end === 'far-end' ? length : 0) + slope[end] * u, t]),
  );

test('a panel is pushed home: nothing of it beyond what it lies against, and each contact touched where it is stopped', () => {
  let seen = 0;
  fc.assert(
    fc.property(
      panels,
      fc.constantFrom(HORIZONTAL, VERTICAL),
      fc.constantFrom('left', 'right'),
      fc.constantFrom('inside', 'outside'),
      fc.constantFrom('front', 'back'),
      fc.constantFrom('reference-end', 'far-end'),
      (solid, machine, side, down, edge, end) => {
        const stop = machine.stops.find((one) => one.side === side)!;
        const stops = { [stop.name]: 40 };
        const set = setUp(
          machine,
          { stops, depth: 12, ...(machine === HORIZONTAL ? { height: 8 } : { fence: [53] }) },
          {},
        );
        const lies = step({ down, edge, end, stop: stop.name }, [0], 8);
        const made = contacts(set, lies, set.stops[0]!, settingNames(set, set.stops[0]!), NOTHING);
        const rotation = findTurn(solid.hand, made);
        if (rotation === null) return;
        seen += 1;
        const lie = push(solid, rotation, made, edge, 0);
        const reach = ({ push: way }: Contact, corner: Vector): number => dot(toTable(solid.hand, lie, corner), way);
        const [onTable, onFence, third] = made;
        const all = [...cornersOf(solid, 'reference-end'), ...cornersOf(solid, 'far-end')];
        for (const flat of [onTable, onFence]) {
          expect(Math.max(...all.map((corner) => reach(flat, corner)))).toBeCloseTo(flat.at, 6);
        }
        const ofEnd = cornersOf(solid, end);
        if (machine === HORIZONTAL) {
          // Pressed against the plate with its whole width: the corner that stands out touches.
          expect(Math.max(...ofEnd.map((corner) => reach(third, corner)))).toBeCloseTo(third.at, 6);
        } else {
          // Stopped where the end meets the edge on the fence.
          const met = ofEnd.filter(([u]) => (edge === 'front' ? u === 0 : u === solid.width));
          for (const corner of met) expect(reach(third, corner)).toBeCloseTo(third.at, 6);
        }
      },
    ),
    { numRuns: 300 },
  );
  expect(seen).toBeGreaterThan(100);
});
