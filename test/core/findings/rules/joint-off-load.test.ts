import { expect, test } from 'vitest';
import { repairEdits } from '../../../../shared-core/engine/repairs.js';
import type { FileFinding } from '../../../../shared-core/engine.js';
import { setUpsOf, type BatchedSetUp } from '../../../../shared-core/machining/plan/set-ups.js';
import { inWords } from '../../../in-words.js';
import { applied } from '../after-repair.js';
import { secondsOf } from '../../machining/plan/jobs.js';
import { analyse } from '../jobs.js';
import { rule } from './rule-tests.js';

const OWN = 'habits: { share-places: no }';
const LOAD =
  'The load of bits that usual joints share (spindles 1, 3, 7, 9, 14, 16, 20 and 22, counted from the front edge)';

rule('joint-off-load', {
  tells: [
    {
      // 440 - 16 - 3 = 421 clear: 53 + 11 x 32 = 405 is the last place, spindle 12; the load ends at spindle 10, and its 13
      // at 437 stands over the side’s wood, which ends at 440.
      carcass: 'kind: base\nwidth: 600\ndepth: «440»',
      says: `${LOAD} does not hold bottom, so their joints take places and a load of their own: 2 set-ups, 9 min.`,
      severity: 'info',
      panel: 'bottom',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600' },
    { carcass: 'kind: base\nwidth: 600\ndepth: 433' },
    // Where the shop shares no load there is none to miss.
    { carcass: 'kind: base\nwidth: 600\ndepth: 440', shop: OWN },
    // Listed places are the owner’s own.
    { carcass: 'kind: base\nwidth: 600\ndepth: 440\ndowels: [53, 85, 213, 341, 373]', besides: [] },
  ],
});

test('offers the nearest depths that the load holds', () => {
  const before = 'shop: bench.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    depth: 440\n';
  const job = analyse(before, { 'bench.shop.yaml': 'title: Bench\n' });
  const [found] = job.findings().filter(({ finding }) => finding.rule === 'joint-off-load');
  const titles = found!.finding.repairs.map(({ title }) => inWords(title));
  expect(titles).toEqual([
    'Make the carcass 433 mm deep instead of 440 mm',
    'Make the carcass 468 mm deep instead of 440 mm',
  ]);
  const edits = repairEdits(job, { carcass: found!.carcass, repair: found!.finding.repairs[0]! })!;
  expect(applied(before, edits)).toBe(before.replace('440', '433'));
});

test('offers the nearest setbacks of a shelf that stands back by its own', () => {
  const before =
    'shop: bench.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    fixed-shelves:\n      - { at: 300, setback: 100 }\n';
  const job = analyse(before, { 'bench.shop.yaml': 'title: Bench\n' });
  const [found] = job.findings().filter(({ finding }) => finding.rule === 'joint-off-load');
  const { file, start, end } = job.locate(found!.finding.place, found!.carcass);
  expect([file, before.slice(start, end)]).toEqual(['job', '100']);
  // 128 mm is four whole pitches, so the shelf has the load's bores counted from its own front edge.
  expect(found!.finding.repairs.map(({ title }) => inWords(title))).toEqual([
    'Set shelf-1 128 mm back instead of 100 mm',
    'Set shelf-1 71 mm back instead of 100 mm',
  ]);
  const edits = repairEdits(job, { carcass: found!.carcass, repair: found!.finding.repairs[0]! })!;
  expect(applied(before, edits)).toBe(before.replace('setback: 100', 'setback: 128'));
});

test('of many set-ups all count in the order in which they come', () => {
  const job = analyse(
    'shop: bench.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    depth: 440\n    fronts: [drawer, drawer, left]\n    fixed-shelves: [{ at: 712, board: board-19 }]\n',
    { 'bench.shop.yaml': 'title: Bench\n' },
  );
  const [{ finding }] = job.findings().filter((one) => one.finding.rule === 'joint-off-load') as [FileFinding];
  expect(inWords(finding.message)).toContain('2 set-ups, 8 min.');
  const { operations } = job.carcasses[0]!.operations!;
  const off = new Set(finding.bores);
  const rest = operations.filter(({ ways: [way] }) =>
    way!.strokes.some(({ wanted }) => wanted.some(({ bore }) => !off.has(bore.id))),
  );
  const [all, others] = [operations, rest].map((some) =>
    setUpsOf([{ operations: some, unreachable: [], count: 1 }]),
  ) as [BatchedSetUp[], BatchedSetUp[]];
  expect([all.length, others.length]).toEqual([24, 22]);
  expect(secondsOf(all, job.shop) - secondsOf(others, job.shop)).toBe(8 * 60);
});
