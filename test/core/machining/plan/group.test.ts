import { describe, expect, test } from 'vitest';
import { Derived } from '../../../../shared-core/derived/derived.js';
import { inOneGo } from '../../../../shared-core/derived/steps.js';
import { groupOperations } from '../../../../shared-core/machining/plan/group.js';
import { emptyLoad } from '../../../../shared-core/machining/plan/load.js';
import type { Operation, WantedSpindle, Way } from '../../../../shared-core/machining/plan/operation.js';
import type { Bore } from '../../../../shared-core/boring/model.js';
import { blank, mm, VERTICAL } from '../replay/set-ups.js';

/*
 * On a head with a near stop (0 to 60) and a far one (60 to 800) on the left and a near one on the right; an extension carries
 * those that reach furthest up to 1200 further.
 */
interface Lies {
  readonly side?: Way['side'];
  readonly at: number;
}

/** An operation that wants one bit in the first spindle or in none, with a way for each place that its stop may stand at. */
function operation(panel: string, bit: number | null, lies: readonly Lies[], bores = 1): Operation {
  const { wanted, limit } = emptyLoad(VERTICAL);
  const load = bit === null ? { wanted, limit } : { wanted: wanted.with(0, mm(bit)), limit };
  const each: WantedSpindle = { head: 0, spindle: 0, bore: {} as Bore };
  return {
    carcass: 'box',
    panel,
    blank: blank(720, 560, 16, 'left'),
    machine: VERTICAL,
    fence: [mm(53)],
    height: null,
    depth: mm(12),
    through: false,
    pinsIn: null,
    ways: lies.map(({ side = 'left', at }) => ({
      down: 'outside',
      edge: 'front',
      end: 'reference-end',
      side,
      position: mm(at),
      strokes: [{ moved: 0, wanted: new Array<WantedSpindle>(bores).fill(each) }],
      extent: mm(720),
      load,
    })),
  };
}

/** What each set-up holds, with where its operations lie. */
const grouped = (...operations: readonly Operation[]): readonly (readonly string[])[] =>
  inOneGo(groupOperations(operations, new Derived())).map(({ chosen, extension }) => [
    ...chosen.map(({ operation: { panel }, way }) => `${panel} ${way.side} ${way.position / 1000}`),
    ...(extension ? ['extension'] : []),
  ]);

// Two bits for one spindle never share a set-up, so there are two.
const eight = operation('eight', 8, [{ at: 30 }]);
const five = operation('five', 5, [{ at: 45 }]);

describe('an operation goes to the set-up', () => {
  test('that has the extension on, if it needs that', () => {
    const far = operation('far', 5, [{ at: 900 }]);
    const further = operation('further', null, [{ side: 'right', at: 500 }]);
    expect(grouped(eight, far, further)).toEqual([
      ['eight left 30'],
      ['far left 900', 'further right 500', 'extension'],
    ]);
  });
  test('where it can do without the extension, if that takes its second way', () => {
    const either = operation('either', null, [{ at: 900 }, { at: 500 }]);
    expect(grouped(eight, either)).toEqual([['eight left 30', 'either left 500']]);
  });
  test('that has its stop set', () => {
    expect(grouped(eight, five, operation('like-five', null, [{ at: 45 }]))).toEqual([
      ['eight left 30'],
      ['five left 45', 'like-five left 45'],
    ]);
  });
  test('that has its stop set for its second way, rather than set another for the first', () => {
    expect(grouped(eight, operation('either', null, [{ at: 500 }, { at: 30 }]))).toEqual([
      ['eight left 30', 'either left 30'],
    ]);
  });
  test('that takes it in its first way, where stops for both are set', () => {
    expect(grouped(eight, five, operation('either', null, [{ at: 45 }, { at: 30 }]))).toEqual([
      ['eight left 30'],
      ['five left 45', 'either left 45'],
    ]);
  });
  test('that comes first, where several serve it alike', () => {
    expect(grouped(eight, five, operation('far', null, [{ at: 500 }]))).toEqual([
      ['eight left 30', 'far left 500'],
      ['five left 45'],
    ]);
  });
});

test('a set-up begins with the operation of the most bores', () => {
  expect(grouped(eight, operation('more', 5, [{ at: 45 }], 2))).toEqual([['more left 45'], ['eight left 30']]);
});

test('operations of another depth share no set-up', () => {
  expect(grouped(eight, { ...operation('deep', null, [{ at: 30 }]), depth: mm(13) })).toHaveLength(2);
});

test('a set-up begins with the best way of its first operation, or with another where more go with that', () => {
  const either = operation('either', null, [{ at: 30 }, { at: 45 }]);
  expect(grouped(either)).toEqual([['either left 30']]);
  // The near stop alone reaches either place.
  expect(grouped(either, operation('at-45', null, [{ at: 45 }]))).toEqual([['either left 45', 'at-45 left 45']]);
});

test('boards of two thicknesses bored through share a set-up, its depth stop set for the thicker', () => {
  const thin = { ...operation('thin', 8, [{ at: 30 }]), through: true, depth: mm(18) };
  const thick = { ...thin, panel: 'thick', depth: mm(21) };
  const batches = inOneGo(groupOperations([thin, thick], new Derived()));
  expect(batches.map(({ depth, chosen }) => [depth, chosen.length])).toEqual([[mm(21), 2]]);
});

test('no two set-ups wait for each other’s holes, though a third is needed then', () => {
  // Bits put first with last and second with third; but the second stands in holes of the first, the last in those of the third.
  const first = operation('first', 8, [{ at: 30 }]);
  const second = { ...operation('second', 5, [{ at: 30 }]), pinsIn: first };
  const third = operation('third', 5, [{ at: 500 }]);
  const last = operation('last', 8, [{ at: 500 }]);
  expect(grouped(first, second, third, last)).toEqual([
    ['first left 30', 'last left 500'],
    ['second left 30', 'third left 500'],
  ]);
  expect(grouped(first, second, third, { ...last, pinsIn: third })).toEqual([
    ['first left 30'],
    ['second left 30', 'third left 500'],
    ['last left 500'],
  ]);
});
