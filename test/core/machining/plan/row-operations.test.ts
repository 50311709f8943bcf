import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Derived } from '../../../../shared-core/derived/derived.js';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import type { Found } from '../../../../shared-core/machining/plan/lines.js';
import { rowOperations } from '../../../../shared-core/machining/plan/row-operations.js';
import { rowCase, upTo, type Case } from './row-case.js';

function planned(one: Case): Found {
  const { panel, row, bores, drill } = rowCase(one);
  return rowOperations('unit', panel, blankOf(panel), bores, [row], drill, row.u, 0, new Derived());
}

/** Which holes each operation bores, with the end that lies at its stop. */
const bored = ({ operations }: Found): readonly string[] =>
  operations.map(({ ways: [way] }) => {
    const holes = way!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => Number(bore.id)));
    return `${way!.end} ${holes.sort((a, b) => a - b).join()}`;
  });

const none = { nearest: 16, drill: { indexPins: 'none' }, stops: [[16, 16]] } as const;

test('a row that is too long for one stroke is bored from both ends, half from each', () => {
  const eight = planned({ ...none, holes: upTo(8), onRight: [[16, 16]] });
  expect(bored(eight)).toEqual(['reference-end 0,1,2,3', 'far-end 4,5,6,7']);
});

test('where the stop for one end stands too near for half, the other end takes more', () => {
  // From the far end the head begins two pitches beside the panel: three spindles are left for it.
  const eight = { ...none, nearest: 80, behind: 80, holes: upTo(8), stops: [[80, 80]], onRight: [[16, 16]] } as const;
  expect(bored(planned(eight))).toEqual(['reference-end 0,1,2,3,4', 'far-end 5,6,7']);
  expect(planned({ ...eight, holes: upTo(9) }).unreachable).toHaveLength(1);
});

test('a row is refused only where no share from each end goes', () => {
  let [refused, uneven] = [0, 0];
  const rows = fc.record({
    count: fc.integer({ min: 2, max: 14 }),
    spindles: fc.integer({ min: 1, max: 6 }),
    // Pitches by which the first spindle stands before the first hole from there.
    left: fc.array(fc.integer({ min: -2, max: 5 }), { minLength: 1, maxLength: 2 }),
    right: fc.array(fc.integer({ min: -2, max: 5 }), { minLength: 1, maxLength: 2 }),
  });
  fc.assert(
    fc.property(rows, ({ count, spindles, left, right }) => {
      const nearest = 16 + 32 * 5;
      const at = (before: number) => [nearest - 32 * before, nearest - 32 * before] as const;
      const drill = { spindles, indexPins: 'none' } as const;
      const found = planned({ nearest, holes: upTo(count), stops: left.map(at), onRight: right.map(at), drill });
      const reaches = (stops: readonly number[], hole: number): boolean =>
        stops.some((before) => hole + before >= 0 && hole + before < spindles);
      const goes = (near: number): boolean =>
        upTo(count).every((hole) => (hole < near ? reaches(left, hole) : reaches(right, count - 1 - hole)));
      const shares = [...upTo(count + 1)].filter(goes);
      if (found.unreachable.length > 0) {
        refused += 1;
        expect(shares).toEqual([]);
        return;
      }
      expect(shares).not.toEqual([]);
      const holes = found.operations.flatMap(({ ways: [way] }) =>
        way!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => Number(bore.id))),
      );
      expect(holes.sort((a, b) => a - b)).toEqual(upTo(count));
      if (![0, count, Math.ceil(count / 2)].some((near) => shares.includes(near))) uneven += 1;
    }),
    { numRuns: 1000 },
  );
  expect(refused).toBeGreaterThan(50);
  expect(uneven).toBeGreaterThan(10);
});
