import { expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { editsFor } from '../../../shared-core/document/edit/edits-for.js';
import type { Finding } from '../../../shared-core/document/finding.js';
import { readTree } from '../../../shared-core/document/read.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { inWords } from '../../in-words.js';

const told = (text: string): (readonly [string, string, string])[] =>
  readShop(text)
    .findings.filter(({ rule }) => rule === 'value-unused')
    .map(({ severity, message, place }) => [severity, text.slice(place.start, place.end), inWords(message)]);

test('what nothing is worked out from is told at its key', () => {
  const text = `vertical-heads:
  head: { spindles: 21, pitch: 32, fence: far, from: above, fence-offset: 20 to 80, depth: 0 to 60, depth-stops: 4, stops: {} }
`;
  expect(told(text)).toEqual([
    ['info', 'depth-stops', '`depth-stops` does nothing yet: each set-up has one depth, whatever the turret holds.'],
  ]);
  expect(told('habits: { board: board-18 }\n')).toEqual([]);
});

test.each([
  ['shared-load', '[1, 4, 8]'],
  ['spare-holes', 'yes'],
])('%s does nothing where no places are shared', (key, value) => {
  const text = `habits: { share-places: no, ${key}: ${value} }\n`;
  expect(told(text)).toEqual([
    [
      'info',
      key,
      `\`${key}\` does nothing here: it counts only with \`share-places: yes\`. Write that too, or remove \`${key}\`.`,
    ],
  ]);
  const [{ repairs }] = readShop(text).findings.filter(({ rule }) => rule === 'value-unused') as [Finding];
  for (const { changes } of repairs)
    expect(told(applyEdits(text, editsFor(text, readTree(text, 'shop').root, changes)))).toEqual([]);
  expect(told(`habits: { ${key}: ${value} }\n`)).toEqual([]);
});

test('a shop without shared places that writes no spare holes is told nothing', () => {
  expect(told('habits: { spare-holes: no, share-places: no }\n')).toEqual([]);
});
