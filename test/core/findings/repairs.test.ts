import { describe, expect, test } from 'vitest';
import { repairEdits } from '../../../shared-core/engine/repairs.js';
import { applied } from './after-repair.js';
import { analyse, demoText } from './jobs.js';
import { inWords } from '../../in-words.js';

/** A job text, the title of one repair of one rule, and the text that must come of it, to the byte. */
const cases: readonly (readonly [rule: string, title: string, before: string, after: string])[] = [
  [
    'shelf-off-grid',
    'Move loose-1 up to 360 mm (hole 12)',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: [ 350 ] # as drawn\n',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: [ 360 ] # as drawn\n',
  ],
  [
    'row-unbalanced',
    'Make the carcass 720 mm high, 20 mm higher',
    'carcasses:\n  a: { kind: base, width: 600, height: "700" } # flow\n',
    'carcasses:\n  a: { kind: base, width: 600, height: "720" } # flow\n',
  ],
  [
    'row-unbalanced', // what is not written yet is added, and the shelf stays on the grid
    'Start the rows 14 mm from the ends instead of 8 mm; loose-1 moves with them',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    height: 700 # given\n    loose-shelves:\n      - at: 328 # the toaster\n',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    height: 700 # given\n    loose-shelves:\n      - at: 334 # the toaster\n    row-offset: 14\n',
  ],
  [
    'row-past-reach',
    'Bring the rear row to 677 mm from the front edge, 20 pitches behind the front row',
    'unit: mm\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    depth: 800\n    rear-row: 741 # deep\n  b:\n    kind: base\n    width: 400\n',
    'unit: mm\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    depth: 800\n    rear-row: 677 # deep\n  b:\n    kind: base\n    width: 400\n',
  ],
  [
    'loose-shelf-without-row',
    'Bore both rows on right',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { rows: front }\n',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { rows: both }\n',
  ],
  [
    'dowels-unmatched',
    'Bore left at 53 mm, 181 mm and 277 mm, like bottom and top',
    'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 245]\n',
    'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 181, 277]\n',
  ],
  [
    'dowels-unmatched',
    'Take out its own list of dowels of left, so that it is bored like bottom and top',
    'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        dowels: [53, 245]\n        rows: both\n',
    'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      left:\n        rows: both\n',
  ],
  [
    'dowel-depths',
    'Bore bottom 19 mm deep, which makes 31 mm with left and right',
    'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      bottom: { end-depth: 25 mm }\n',
    'carcasses:\n  a:\n    kind: wall\n    width: 600\n    panels:\n      bottom: { end-depth: 19 }\n',
  ],
  [
    'band-missing', // in the defaults of the file, where it is written
    'Band the front with band-1 (1 mm)',
    'defaults:\n  band: none # to do\ncarcasses:\n  a:\n    kind: open\n    width: 600\n',
    'defaults:\n  band: band-1 # to do\ncarcasses:\n  a:\n    kind: open\n    width: 600\n',
  ],
  [
    'board-unknown',
    'Use board-18',
    "defaults: { board: 'bord-18' }\ncarcasses:\n  a:\n    kind: open\n    width: 600\n",
    "defaults: { board: 'board-18' }\ncarcasses:\n  a:\n    kind: open\n    width: 600\n",
  ],
  [
    'panel-unknown',
    'Rename to bottom',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      botom: # under the sink\n        rows: none\n',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      bottom: # under the sink\n        rows: none\n',
  ],
  [
    'shelf-off-grid', // the two sides differ: the odd one comes back to the carcass's grid
    'Start the rows of right where those of the carcass start',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { row-offset: 24, bands: { back: band-1 } }\n',
    'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 1\n    panels:\n      right: { bands: { back: band-1 } }\n',
  ],
];

test.each(cases)('%s: %s', (rule, title, before, after) => {
  const job = analyse(before);
  const found = job.findings().filter(({ finding }) => finding.rule === rule);
  const titles = found.flatMap(({ finding }) => finding.repairs.map((repair) => inWords(repair.title)));
  expect(titles).toContain(title);
  const { carcass, finding } = found.find((one) =>
    one.finding.repairs.some((repair) => inWords(repair.title) === title),
  )!;
  const repair = finding.repairs.find((one) => inWords(one.title) === title)!;
  expect(applied(before, repairEdits(job, { carcass, repair })!.job)).toBe(after);
});

describe('on a drill with one head', () => {
  const shop = demoText('shed.shop.yaml')
    .replace('spindles: 23', 'spindles: 13')
    .replace('heads: 2', 'heads: 1')
    .replace(/ +head-distance: .*\n/, '')
    .replace(/index-pins: .*\n +index-range: .*\n/, 'index-pins: none\n');
  const offers = (lines: string): readonly string[] =>
    analyse(`shop: bench.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n${lines}`, {
      'bench.shop.yaml': shop,
    })
      .findings()
      .filter(({ finding }) => finding.rule === 'row-distance')
      .flatMap(({ finding }) => finding.repairs.map(({ title }) => inWords(title)));

  test('the rear row is never brought to the front half of the depth', () => {
    expect(offers('')).toEqual(['Leave the rear row out']);
  });

  test('nothing is offered where a loose shelf needs both rows', () => {
    expect(offers('    loose-shelves: 1\n')).toEqual([]);
  });
});
