import { expect, test } from 'vitest';
import { Engine } from '../../../shared-core/engine.js';
import { asMessage, inWords } from '../../in-words.js';
import { repairEdits } from '../../../shared-core/engine/repairs.js';
import { applied } from '../findings/after-repair.js';
import { analyse } from '../findings/jobs.js';

test('a word tried for the carcasses of a job leads to them, and says nothing else', () => {
  const job = analyse('cabinets:\n  a: { kind: base, width: 600 }\n');
  const told = job.findings().filter(({ finding }) => finding.rule !== 'shop-neutral');
  expect(told.map(({ finding }) => inWords(finding.message))).toEqual([
    '‘cabinets’ is not a key of a job. Did you mean `carcasses`?',
  ]);
  expect(told[0]!.finding.repairs).toMatchObject([{ changes: [{ text: 'carcasses' }], preferred: true }]);
});

test.each([
  ['edge bands', 'bands'],
  ['Edge_Bands', 'bands'],
  ['hinge-borers', 'cup-borers'],
  ['hinge borers', 'cup-borers'],
])('in a shop file %s leads to %s', (word, key) => {
  const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('none') }) });
  const { findings } = engine.analyseShop('file:///x.shop.yaml', `${word}: {}\n`);
  expect(findings.map(({ message }) => inWords(message))).toContain(
    `‘${word}’ is not a key of a shop. Did you mean \`${key}\`?`,
  );
});

test('a board has the sizes of its sheets', () => {
  const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('none') }) });
  const text = 'boards:\n  b: { thickness: 18, length: 2800, width: 2070 }\n';
  const { findings } = engine.analyseShop('file:///x.shop.yaml', text);
  const unknown = findings.filter(({ rule }) => rule === 'key-unknown').map(({ message }) => inWords(message));
  expect(unknown).toEqual([
    '‘length’ is not a key of a board. Did you mean `sheet-length`?',
    '‘width’ is not a key of a board. Did you mean `sheet-width`?',
  ]);
});

test('how many drawers there are is said by the fronts', () => {
  const before = 'carcasses:\n  a:\n    kind: for-drawers\n    width: 600\n    drawers: 3\n';
  const job = analyse(before);
  const [told] = job.findings().filter(({ finding }) => finding.rule === 'value-wrong');
  expect(inWords(told!.finding.message)).toBe(
    '`drawers` says how they are made, not that there are 3. Write `fronts: [drawer, drawer, drawer]`.',
  );
  const repaired = { carcass: told!.carcass, repair: told!.finding.repairs[0]! };
  expect(applied(before, repairEdits(job, repaired)!)).toBe(
    before.replace('drawers: 3', 'fronts: [drawer, drawer, drawer]'),
  );
  const repairsOf = (line: string): number[] =>
    analyse(before.replace('drawers: 3', line))
      .findings()
      .filter(({ finding }) => finding.rule === 'value-wrong')
      .map(({ finding }) => finding.repairs.length);
  // Nothing is offered beside what closes the carcass already, nor for a number that is none of drawers.
  expect(repairsOf('drawers: 3\n    fronts: [drawer]')).toEqual([0]);
  expect(repairsOf('drawers: 3\n    doors: pair')).toEqual([0]);
  expect(repairsOf('drawers: 0')).toEqual([0]);
});
