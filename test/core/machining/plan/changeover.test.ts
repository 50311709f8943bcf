import { describe, expect, test } from 'vitest';
import {
  changeoverTime,
  changesBetween,
  left,
  settingsOf,
  type Changes,
  type RailStop,
  type Settings,
} from '../../../../shared-core/machining/plan/changeover.js';
import type { Changeover } from '../../../../shared-core/shop/model.js';
import type { SetStop } from '../../../../shared-core/machining/set-up.js';
import { emptyBatch } from '../../../../shared-core/machining/plan/batch.js';
import type { Operation, Way } from '../../../../shared-core/machining/plan/operation.js';
import { blank, LINE, mm, VERTICAL } from '../replay/set-ups.js';

/** Two stops on the left, the outer up to 400 without the extension; the inner one does not lower. */
const RAIL: readonly RailStop[] = [
  { name: 'near', side: 'left', lowers: false, furthest: mm(60) },
  { name: 'far', side: 'left', lowers: true, furthest: mm(400) },
];
const at = (name: string, position: number): SetStop => ({ name, side: 'left', position: mm(position) });

const PLAIN: Settings = {
  machine: 'borer',
  body: 'borer',
  bits: [[8, 0, 5].map(mm)],
  fence: [mm(53)],
  height: null,
  stops: [at('near', 8)],
  extension: false,
  depth: mm(12),
  thickness: mm(16),
  through: false,
  rail: RAIL,
  covered: { left: [], right: [] },
  headDistance: null,
  stands: null,
};
const other = (settings: Partial<Settings>): Settings => ({ ...PLAIN, ...settings });

const NOTHING: Changes = {
  machine: false,
  turnHead: false,
  stops: [],
  fences: [],
  height: false,
  bits: 0,
  depth: false,
  extension: false,
};

describe('from one set-up to the next', () => {
  test('nothing is changed that is alike', () => {
    expect(changesBetween(PLAIN, other({}))).toEqual(NOTHING);
  });
  test.each([
    ['a bit taken out', { bits: [8, 0, 0] }, 1],
    ['a bit put in', { bits: [8, 8, 5] }, 1],
    ['a bit exchanged: one out, one in', { bits: [10, 0, 5] }, 2],
    ['all taken out and one put in elsewhere', { bits: [0, 5, 0] }, 3],
  ])('%s', (_, { bits }, count) => {
    expect(changesBetween(PLAIN, other({ bits: [bits.map(mm)] }))).toEqual({ ...NOTHING, bits: count });
  });
  test('spindles of other heads than the one turned to are left alone', () => {
    const line = other({ machine: 'drill', bits: [[8, 0].map(mm), [5, 5].map(mm)] });
    expect(changesBetween(line, PLAIN).bits).toBe(1);
    expect(changesBetween(PLAIN, line).bits).toBe(2);
  });
  test.each([
    ['another depth', { depth: mm(13) }],
    ['through the board', { through: true }],
    ['a depth set for boards of another thickness', { thickness: mm(19) }],
  ])('%s is one setting of the depth stop', (_, settings) => {
    expect(changesBetween(PLAIN, other(settings))).toEqual({ ...NOTHING, depth: true });
  });
  test('the extension is put on, and taken off', () => {
    const on = other({ extension: true });
    expect(changesBetween(PLAIN, on)).toEqual({ ...NOTHING, extension: true });
    expect(changesBetween(on, PLAIN)).toEqual({ ...NOTHING, extension: true });
  });
  test('stops and heads are set that do not stand where they must, by name', () => {
    const after = other({ stops: [at('near', 8), at('far', 8.1)], fence: [mm(53), mm(200)] });
    expect(changesBetween(PLAIN, after)).toEqual({ ...NOTHING, stops: ['far'], fences: [1] });
    expect(changesBetween(other({ stops: [at('far', 8)] }), PLAIN)).toEqual({ ...NOTHING, stops: ['near'] });
  });
  test('the height is set of a level head, and of no other', () => {
    const level = other({ height: mm(8) });
    expect(changesBetween(level, other({ height: mm(9.5) }))).toEqual({ ...NOTHING, height: true });
    expect(changesBetween(level, other({}))).toEqual(NOTHING);
  });
  test('on a turned head all is set anew but the bits that stay in it', () => {
    expect(changesBetween(PLAIN, other({ machine: 'level', height: mm(8) }))).toEqual({
      ...NOTHING,
      turnHead: true,
      stops: ['near'],
      fences: [0],
      height: true,
      depth: true,
    });
  });
  test('on another machine, taken to be bare, the bits too; one that stands as it must needs nothing', () => {
    const elsewhere = other({ machine: 'other', body: 'other' });
    const set = { ...NOTHING, machine: true, stops: ['near'], fences: [0], bits: 2, depth: true };
    expect(changesBetween(PLAIN, elsewhere)).toEqual(set);
    expect(changesBetween(null, elsewhere)).toEqual(set);
    expect(changesBetween(PLAIN, { ...elsewhere, stands: elsewhere })).toEqual({ ...NOTHING, machine: true });
  });
});

describe('a stop or head that a set-up does not name', () => {
  const stopsLeft = (before: Partial<Settings>, after: Partial<Settings>): readonly string[] =>
    left(other(before), other(after)).stops.map(({ name, position }) => `${name} ${position / 1000}`);

  test('keeps its place', () => {
    expect(stopsLeft({ stops: [at('near', 8), at('far', 300)] }, {})).toEqual(['near 8', 'far 300']);
    // But where it is named, as it is named.
    expect(stopsLeft({ stops: [at('near', 20)] }, {})).toEqual(['near 8']);
  });
  test('leaves it where another of its hand has to pass', () => {
    const far = { stops: [at('far', 100)] };
    expect(stopsLeft(far, { stops: [at('near', 99.999)] })).toEqual(['near 99.999', 'far 100']);
    expect(stopsLeft({ stops: [at('near', 50)] }, { stops: [at('far', 50.001)] })).toEqual(['far 50.001', 'near 50']);
    // Nor do two stand in one place.
    expect(stopsLeft(far, { stops: [at('near', 100)] })).toEqual(['near 100']);
    expect(stopsLeft({ stops: [at('near', 50)] }, { stops: [at('far', 50)] })).toEqual(['far 50']);
    // One of the other hand slides on a fence of its own.
    expect(stopsLeft(far, { stops: [{ ...at('near', 101), side: 'right' }] })).toEqual(['near 101', 'far 100']);
  });
  test('leaves it with the extension on which it stands, not with one that it does without', () => {
    const on = (position: number) => ({ extension: true, stops: [at('far', position)] });
    expect(stopsLeft(on(400), {})).toEqual(['near 8', 'far 400']);
    expect(stopsLeft(on(400.001), {})).toEqual(['near 8']);
    expect(stopsLeft(on(400.001), { extension: true })).toEqual(['near 8', 'far 400.001']);
  });
  test('leaves it where it cannot lower and stands in the way of a panel, if only just', () => {
    const covered = { left: [[mm(20), mm(50)]], right: [] } as const;
    const after = { stops: [at('far', 200)], covered };
    const stands = [20, 20.001, 49.999, 50].map((position) => stopsLeft({ stops: [at('near', position)] }, after));
    expect(stands).toEqual([['far 200', 'near 20'], ['far 200'], ['far 200'], ['far 200', 'near 50']]);
    // One that lowers is no hindrance.
    expect(stopsLeft({ stops: [at('far', 30)] }, { covered, stops: [at('near', 8)] })).toEqual(['near 8', 'far 30']);
  });
  test('leaves it when the head is turned, or another machine is run', () => {
    const both = other({ stops: [at('near', 8), at('far', 300)] });
    const turned = other({ machine: 'level', stops: [] });
    expect(left(both, turned)).toEqual(turned);
    const elsewhere = other({ machine: 'other', body: 'other', stops: [] });
    expect(left(both, elsewhere)).toEqual(elsewhere);
  });
  test('stays, of the heads behind those that are set, as long as the distances allow', () => {
    const fenceLeft = (rear: readonly number[], headDistance: Settings['headDistance']): readonly number[] =>
      left(other({ fence: [37, ...rear].map(mm) }), other({ fence: [mm(40)], headDistance })).fence.map(
        (place) => place / 1000,
      );
    const between = { min: mm(100), max: mm(200) };
    expect(fenceLeft([140, 240], between)).toEqual([40, 140, 240]);
    expect(fenceLeft([139.999, 240], between)).toEqual([40]);
    expect(fenceLeft([240, 440], between)).toEqual([40, 240, 440]);
    expect(fenceLeft([240.001], between)).toEqual([40]);
    expect(fenceLeft([240, 441], between)).toEqual([40, 240]);
    // One head on the fence, and what stood behind it is no head's.
    expect(fenceLeft([240], null)).toEqual([40]);
  });
});

test('the seconds of a changeover are those of its parts, to the nearest whole one', () => {
  // Powers of two, so that each part shows in the sum.
  const times: Changeover = { stop: 1, fence: 8, bit: 64, depth: 512, turnHead: 1024, extension: 2048, machine: 4096 };
  const all = { machine: true, turnHead: true, height: true, depth: true, extension: true };
  const some: Changes = { ...all, stops: ['near', 'far'], fences: [0, 1], bits: 3 };
  expect(changeoverTime(some, times)).toBe(2 * 1 + (2 + 1) * 8 + 3 * 64 + 512 + 1024 + 2048 + 4096);
  expect(changeoverTime(NOTHING, times)).toBe(0);
  expect(changeoverTime({ ...NOTHING, bits: 3 }, { ...times, bit: 0.5 })).toBe(2);
});

describe('what a set-up sets', () => {
  const way = (position: number, extent: number): Way => ({
    down: 'outside',
    edge: 'front',
    end: 'reference-end',
    side: 'left',
    position: mm(position),
    strokes: [{ moved: 0, wanted: [] }],
    extent: mm(extent),
    load: { wanted: [], limit: [] },
  });
  const set = (machine: Operation['machine'], ...ways: readonly Way[]): Settings => {
    const operation: Operation = {
      carcass: 'box',
      panel: 'left',
      blank: blank(720, 560, 16, 'left'),
      machine,
      fence: [mm(53)],
      height: null,
      depth: mm(12),
      through: false,
      pinsIn: null,
      ways,
    };
    return settingsOf({ ...emptyBatch(operation), chosen: ways.map((one) => ({ operation, way: one })) });
  };

  test('leaves room for a stop between panels that lie on both sides of it', () => {
    const stops = VERTICAL.stops.map((stop) => ({ ...stop, lowers: false }));
    // A panel at a stop p covers up to its stop, and 2 beyond its other end: 8 - 722 = -714, 110 - 102 = 8.
    const { covered } = set({ ...VERTICAL, stops }, way(110, 100), way(8, 720));
    expect(covered.left).toEqual([[mm(-714), mm(8)], [mm(8), mm(110)]]); // prettier-ignore
    expect(set({ ...VERTICAL, stops }, way(109.999, 100), way(8, 720)).covered.left).toEqual([[mm(-714), mm(109.999)]]);
    // One within another covers no less than that.
    expect(set({ ...VERTICAL, stops }, way(8, 100), way(8, 720)).covered.left).toEqual([[mm(-714), mm(8)]]);
    // Where all stops of a hand lower none is in the way.
    expect(set(VERTICAL, way(8, 720)).covered).toEqual({ left: [], right: [] });
  });
  test('keeps heads apart of which nothing else is said', () => {
    const free = { ...LINE, headDistance: null };
    const fence = (rear: number): readonly number[] =>
      left({ ...set(free, way(8, 720)), fence: [mm(37), mm(rear)] }, set(free, way(8, 720))).fence;
    expect([fence(53), fence(53.001)]).toEqual([[mm(53)], [mm(53), mm(53.001)]]);
  });
});
