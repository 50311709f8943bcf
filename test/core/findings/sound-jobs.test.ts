import fc from 'fast-check';
import { expect, test } from 'vitest';
import { opened } from './jobs.js';

/** Carcasses that leave their figures to the shop: whatever is combined, the shop's habits must fit together. */
const soundCarcass = fc
  .tuple(
    fc.constantFrom('base', 'wall', 'tall', 'drawer', 'open').map((kind) => `kind: ${kind}`),
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
      expect(said.map(({ finding }) => `${finding.rule}: ${finding.message}`)).toEqual([]);
    }),
    { numRuns: 40 },
  );
});
