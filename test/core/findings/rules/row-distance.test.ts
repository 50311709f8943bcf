import { describe, expect, test } from 'vitest';
import { inWords } from '../../../in-words.js';
import { demoText } from '../jobs.js';
import { jobOf, rule } from './rule-tests.js';

/** Heads in a chain: with the first at 20 to 80 and one left empty between, rows 192 to 480 apart can be bored in one stroke. */
const HEADS = (heads: number): string => `line-drills:
  chain: { spindles: 23, pitch: 32, heads: ${heads}, fence: far, from: above, setback: 20 to 80, head-distance: 96 to 240, throat: 700, depth: 0 to 60, index-pins: row,
    stops: { G: { side: left, range: 0 to 300 }, H: { side: right, range: 0 to 300 } } }`;

const ONE_HEAD = `line-drills:
  single: { spindles: 23, pitch: 32, heads: 1, fence: far, from: above, setback: 20 to 80, throat: 700, depth: 0 to 60, stops: {}, index-pins: row }`;

rule('row-distance', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: «101»',
      says: 'The rear row of left and right stands 101 mm from the front edge, 64 mm behind the front row; the heads of ‘row-drill’ stand between 96 mm and 640 mm apart (`head-distance`). Move the row within that range (`rear-row`).',
      severity: 'error',
      panel: 'left',
    },
    {
      // the first head can be set to it, in a second set-up
      carcass: 'kind: base\nwidth: 600\nrear-row: «78»',
      says: 'The rear row of left and right stands 78 mm from the front edge, 41 mm behind the front row; the heads of ‘row-drill’ stand between 96 mm and 640 mm apart (`head-distance`). The row can be bored only in a set-up of its own.',
      severity: 'warning',
      panel: 'left',
    },
    {
      // 37 + 448 = 485: two heads reach 80 + 240
      carcass: 'kind: base\nwidth: 600',
      shop: HEADS(2),
      says: 'The rear row of left and right stands 485 mm from the front edge, 448 mm behind the front row; the heads of ‘chain’ stand between 96 mm and 240 mm apart (`head-distance`). Move the row within that range (`rear-row`).',
      severity: 'error',
      panel: 'left',
    },
    {
      // 300 - 37 is too far apart, but with the first head at 60 and empty the second stands at 300
      carcass: 'kind: base\nwidth: 600\nrear-row: «300»',
      shop: HEADS(2),
      says: 'The rear row of left and right stands 300 mm from the front edge, 263 mm behind the front row; the heads of ‘chain’ stand between 96 mm and 240 mm apart (`head-distance`). The row can be bored only in a set-up of its own.',
      severity: 'warning',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrow-setback: «90»',
      says: 'The front row of left and right stands 90 mm from the front edge; the first head of ‘row-drill’ stands between 20 mm and 80 mm from the fence (`setback`). Change `row-setback` of the carcass.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600',
      shop: ONE_HEAD,
      says: 'The rear row of left and right stands 485 mm from the front edge; ‘single’ has one head (`heads`), which stands between 20 mm and 80 mm from the fence (`setback`). Leave the rear row out (`rows: front`), or choose a drill with two heads (`machines: rows`).',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrow-setback: «90»\nrows: front',
      says: 'The front row of left and right stands 90 mm from the front edge; the first head of ‘row-drill’ stands between 20 mm and 80 mm from the fence (`setback`). Change `row-setback` of the carcass.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: «25»',
      says: 'The rear row of left and right stands 25 mm from the front edge, 12 mm in front of the front row; the heads of ‘row-drill’ stand between 96 mm and 640 mm apart (`head-distance`). Move the row within that range (`rear-row`).',
      severity: 'error',
      panel: 'left',
    },
  ],
  sound: [
    // 640 is the greatest distance of the heads, 96 the least
    { carcass: 'kind: wall\nwidth: 600\ndepth: 700\nback: none\nrear-row: 677', besides: ['joint-off-load'] },
    // Front and rear with a head left empty between.
    { carcass: 'kind: base\nwidth: 600', shop: HEADS(3), besides: ['cannot-be-bored', 'cannot-be-bored'] },
    // A front row alone, past the first head.
    {
      carcass: 'kind: base\nwidth: 600\nrows: front\nrow-setback: 165',
      shop: HEADS(2),
      besides: ['cannot-be-bored', 'cannot-be-bored'],
    },
  ],
  repairs: [
    [
      'Set the front row 80 mm from the front edge',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rows: front\n    row-setback: 90 # far\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rows: front\n    row-setback: 80 # far\n',
    ],
    [
      'Set the front row 37 mm from the front edge, the usual row setback',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    row-setback: 90\n    rows: front\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rows: front\n',
    ],
    [
      'Move the rear row to 293 mm from the front edge, 8 pitches behind the front row',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rear-row: 101 # near\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rear-row: 293 # near\n',
    ],
    [
      'Leave the rear row out',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rear-row: 101\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rows: front\n',
    ],
  ],
});

test.each([
  ['front and rear with a head left empty between', 'kind: base\nwidth: 600', 3],
  ['a front row alone, past the first head', 'kind: base\nwidth: 600\nrows: front\nrow-setback: 165', 2],
])('the rows that later heads of a drill reach are bored: %s', (_what, carcass, heads) => {
  const missed = jobOf({ carcass, shop: HEADS(heads) }).carcasses[0]!.operations!.unreachable;
  expect(missed.flatMap(({ bores }) => bores).filter(({ purpose }) => purpose === 'row')).toEqual([]);
});

test('a row beyond the back edge is not said to be one that can be bored', () => {
  const rules = jobOf({ carcass: 'kind: wall\nwidth: 600\nrear-row: 690' })
    .findings()
    .map(({ finding }) => finding.rule);
  expect(rules).toContain('near-edge');
  expect(rules).not.toContain('row-distance');
});

describe('on a drill with one head', () => {
  const shop = demoText('shed.shop.yaml')
    .replace('spindles: 23', 'spindles: 13')
    .replace('heads: 2', 'heads: 1')
    .replace(/ +head-distance: .*\n/, '')
    .replace(/index-pins: .*\n +index-range: .*\n/, 'index-pins: none\n');
  const offers = (more: string): readonly string[] =>
    jobOf({ carcass: `kind: base\nwidth: 600${more}`, shop })
      .findings()
      .filter(({ finding }) => finding.rule === 'row-distance')
      .flatMap(({ finding }) => finding.repairs.map(({ title }) => inWords(title)));

  test('the rear row is never brought to the front half of the depth', () => {
    expect(offers('')).toEqual(['Leave the rear row out']);
  });

  test('nothing is offered where a loose shelf needs both rows', () => {
    expect(offers('\nloose-shelves: 1')).toEqual([]);
  });
});
