import fc from 'fast-check';
import { expect, test } from 'vitest';
import { heldIn } from '../../../../shared-core/machining/plan/holding.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { layOut } from '../../../../shared-core/machining/replay/layout.js';
import { strokesOf } from '../../../../shared-core/machining/replay/replay.js';
import { jobArbitrary } from '../../arbitraries.js';
import { mm } from '../../specs.js';
import { bored } from './jobs.js';
import { machinesArbitrary, withMachines } from './machines.js';
import { inWords } from '../../../in-words.js';

const nowhere = { part: 'shop', start: 0, end: 0 } as const;
const someClamps = fc.array(
  fc.record({
    name: fc.constant('clamp'),
    place: fc.constant(nowhere),
    along: fc.integer({ min: mm(-300), max: mm(900) }),
    across: fc.integer({ min: 0, max: mm(500) }),
    pad: fc.constantFrom(0, mm(40), mm(80)),
  }),
  { minLength: 1, maxLength: 3 },
);

test('a panel is held where the replay lays it under a whole pad in every stroke', () => {
  const seen = { held: 0, 'in-part': 0, not: 0 };
  const job = jobArbitrary.chain((made) =>
    fc.record({ made: fc.constant(made), machines: machinesArbitrary(made.shop.habits.pitch), clamps: someClamps }),
  );
  fc.assert(
    fc.property(job, ({ made, machines: [faces, ends, rows], clamps }) => {
      const shop = withMachines(made.shop, [
        { ...faces, clamps },
        { ...ends, clamps },
        { ...rows, clamps },
      ]);
      const { operations } = bored(made.spec, shop).operations;
      for (const operation of operations.filter(({ ways, pinsIn }) => ways.length === 1 && pinsIn === null)) {
        const setUps = setUpsOf([{ operations: [operation], unreachable: [], count: 1 }]).map(({ setUp }) => setUp);
        const read = strokesOf(setUps, operation.carcass, operation.panel, operation.blank);
        if (!read.ok) throw new Error(inWords(read.problems[0]!.message));
        const isHeld = read.strokes.every((stroke) => layOut(stroke).clamps.some(({ holds }) => holds));
        const held = heldIn(operation);
        expect(held === 'held').toBe(isHeld);
        seen[held] += 1;
      }
    }),
    { numRuns: 150 },
  );
  // None may be empty, or the test would prove nothing.
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(20);
});
