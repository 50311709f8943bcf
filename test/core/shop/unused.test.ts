import { expect, test } from 'vitest';
import { readShop } from '../../../shared-core/shop/read.js';
import { inWords } from '../../in-words.js';

const told = (text: string): (readonly [string, string, string])[] =>
  readShop(text)
    .findings.filter(({ rule }) => rule === 'value-unused')
    .map(({ severity, message, place }) => [severity, text.slice(place.start, place.end), inWords(message)]);

test('what nothing is worked out from is told at its key', () => {
  const text = `cup-borers:
  cup-press: { distance: 20 to 25, depth: 2 to 20 }
vertical-heads:
  head: { spindles: 21, pitch: 32, fence: far, from: above, fence-offset: 20 to 80, depth: 0 to 60, depth-stops: 4, stops: {} }
`;
  expect(told(text)).toEqual([
    ['info', 'cup-borers', '`cup-borers` does nothing yet: no job can ask for hinge cups yet.'],
    ['info', 'depth-stops', '`depth-stops` does nothing yet: each set-up has one depth, whatever the turret holds.'],
  ]);
  expect(told('habits: { board: board-18 }\n')).toEqual([]);
});
