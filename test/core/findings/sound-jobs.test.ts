import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoText, opened } from './jobs.js';
import { inWords } from '../../in-words.js';

/** Carcasses that leave their figures to the shop: whatever is combined, the shop's habits must fit together. */
const soundCarcass = fc
  .tuple(
    fc.constantFrom('base', 'wall', 'tall', 'for-drawers', 'open').map((kind) => `kind: ${kind}`),
    fc.integer({ min: 460, max: 1200 }).map((width) => `width: ${width}`),
    fc.constantFrom('', 'board: board-18', 'board: board-19'),
    fc.constantFrom('', 'joint: dowel-8x35', 'joint: cam-15', 'joint: screw-7x50'),
    fc.constantFrom('', 'top: between', 'top: over', 'top: rails'),
    fc.constantFrom('', 'bottom: under'),
    fc.constantFrom('', 'back: none', 'back: rebated', 'back: applied', 'back: { how: applied, board: back-8 }'),
    fc.constantFrom('', 'plinth: 120'),
    fc.constantFrom('', 'band: band-04', 'band: band-2'),
    fc.constantFrom('', '', 'dividers: 1'),
    fc.constantFrom('', 'fixed-shelves: 1', 'fixed-shelves: 2'),
    fc.constantFrom('', 'loose-shelves: 1', 'loose-shelves: 3'),
  )
  // Screws of shelves back to back on a divider hide each other, and a rule says so.
  .filter((lines) => !['joint: screw-7x50', 'dividers: 1'].every((line) => lines.includes(line)) || lines[10] === '')
  .map((lines) => lines.filter((line) => line !== '').join('\n    '));

test('a carcass that leaves its figures to the shop has no faults', () => {
  const read = opened();
  fc.assert(
    fc.property(soundCarcass, (lines) => {
      const job = read(`carcasses:\n  sink:\n    ${lines}\n`);
      const said = job.findings().filter(({ finding }) => finding.rule !== 'shop-neutral');
      expect(said.map(({ finding }) => `${finding.rule}: ${inWords(finding.message)}`)).toEqual([]);
    }),
    { numRuns: 40 },
  );
});

const SHED = demoText('shed.shop.yaml').replace('  birch-19:', '  plain-18: { thickness: 18 }\n  birch-19:');
const shops = [
  {
    head: '',
    boards: ['board-16', 'board-18', 'board-19'],
    joints: ['dowel-8x30', 'dowel-8x35', 'dowel-10x40', 'cam-15', 'screw-7x50'],
  },
  {
    head: 'shop: thick.shop.yaml\n',
    boards: ['white-16', 'plain-18', 'birch-19'],
    joints: ['dowel-8x30', 'cam-15', 'screw-7x50'],
  },
];
const plainUnits = shops.flatMap(({ head, boards, joints }) =>
  boards.flatMap((board) => joints.map((joint) => [head.trim() || 'built-in shop', board, joint, head] as const)),
);

test.each(plainUnits)('%s: a plain unit of each kind in %s with %s has no faults', (_shop, board, joint, head) => {
  const read = opened({ 'thick.shop.yaml': SHED });
  const units = ['base', 'wall', 'tall', 'for-drawers', 'open'].map(
    (kind) => `  ${kind}: { kind: ${kind}, width: 600, board: ${board}, joint: ${joint} }\n`,
  );
  const job = read(`${head}carcasses:\n${units.join('')}`);
  const said = job.findings().filter(({ finding }) => finding.rule !== 'shop-neutral');
  expect(job.carcasses.map(({ boring }) => boring!.bores.length > 0)).toEqual(units.map(() => true));
  expect(said.map(({ finding }) => `${finding.rule}: ${inWords(finding.message)}`)).toEqual([]);
});
