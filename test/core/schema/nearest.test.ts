import fc from 'fast-check';
import { expect, test } from 'vitest';
import { distance, nearestName } from '../../../shared-core/schema/nearest.js';

test('distances from the literature', () => {
  // Levenshtein's kitten and sitting (Wagner and Fischer, The String-to-String Correction Problem, 1974, fix the recurrence).
  expect(distance('kitten', 'sitting')).toBe(3);
  // Where optimal string alignment and the unrestricted distance part: 3, not 2 (Boytsov, Indexing methods for approximate
  // dictionary searching, 2011).
  expect(distance('ca', 'abc')).toBe(3);
  expect(distance('widht', 'width')).toBe(1);
  expect(distance('', 'abc')).toBe(3);
});

test('agrees with the recurrence written out', () => {
  const slow = (a: string, b: string): number => {
    if (a === '' || b === '') return a.length + b.length;
    const options = [
      slow(a.slice(1), b) + 1,
      slow(a, b.slice(1)) + 1,
      slow(a.slice(1), b.slice(1)) + (a[0] === b[0] ? 0 : 1),
    ];
    if (a.length > 1 && b.length > 1 && a[0] === b[1] && a[1] === b[0]) options.push(slow(a.slice(2), b.slice(2)) + 1);
    return Math.min(...options);
  };
  const short = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 6 });
  fc.assert(fc.property(short, short, (a, b) => distance(a, b) === slow(a, b)));
});

test('finds what was meant, and nothing where nothing is near', () => {
  const keys = ['kind', 'width', 'height', 'depth', 'loose-shelves', 'fixed-shelves'];
  expect(nearestName('widht', keys)).toBe('width');
  expect(nearestName('Height', keys)).toBe('height');
  expect(nearestName('loose-shelfs', keys)).toBe('loose-shelves');
  expect(nearestName('colour', keys)).toBeNull();
  expect(nearestName('', keys)).toBeNull();
  expect(nearestName('x'.repeat(100_000), ['x'.repeat(99_999)])).toBeNull();
});

test('of several words the last ones are a name before another that is only letters away', () => {
  const keys = ['bands', 'boards', 'edge-banders', 'cup-borers', 'sheet-width'];
  expect(nearestName('edge bands', keys)).toBe('bands');
  expect(nearestName('Edge_Banders', keys)).toBe('edge-banders');
  expect(nearestName('edge-bander', keys)).toBe('edge-banders');
  expect(nearestName('white boards', keys)).toBe('boards');
  expect(nearestName('x sheet width', [...keys, 'width'])).toBe('sheet-width');
});

test('figures alone stand for the one name that has them', () => {
  const boards = ['board-16', 'board-18', 'board-19', 'back-3', 'white-18'];
  expect(['19', '19mm', '19 mm', '3'].map((word) => nearestName(word, boards))).toEqual([
    'board-19',
    'board-19',
    'board-19',
    'back-3',
  ]);
  expect(nearestName('8x30', ['dowel-8x30', 'dowel-8x35'])).toBe('dowel-8x30');
  // Two have it, or none.
  expect(['18', '9', '22'].map((word) => nearestName(word, boards))).toEqual([null, null, null]);
});
