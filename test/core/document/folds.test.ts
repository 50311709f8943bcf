import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foldsOf } from '../../../shared-core/document/folds.js';
import { readTree } from '../../../shared-core/document/read.js';
import type { TreeNode } from '../../../shared-core/document/tree.js';

test('blocks, items, brackets and remarks, each up to its last written line', () => {
  const text = [
    '# one',
    '# two',
    'carcasses:',
    '  sink:',
    '    width: 600',
    '    fixed-shelves:',
    '    - at: 300',
    '      bay: 1',
    '    - 500',
    '    dowels: [',
    '      40,',
    '    ]',
    '',
    '  # of the next',
    '  oven:',
    '    width: 600',
    '',
  ].join('\n');
  expect(foldsOf(text).map(({ from, to, kind }) => [from, to, kind])).toEqual([
    [0, 1, 'remark'],
    [2, 15, 'block'],
    [3, 11, 'block'],
    [5, 8, 'block'],
    [6, 7, 'block'],
    [9, 11, 'block'],
    [14, 15, 'block'],
  ]);
});

test('nothing to fold in a text of single lines', () => {
  expect(foldsOf('')).toEqual([]);
  expect(foldsOf('unit: mm\r\ntitle: x\r\n# remark')).toEqual([]);
});

/** Lines of the first and last character of every block entry that the YAML reader finds, where they differ. */
function blocksOf(text: string): string[] {
  const lineOf = (offset: number): number => text.slice(0, offset).split('\n').length - 1;
  const found: string[] = [];
  const into = (node: TreeNode | null): void => {
    if (node?.kind === 'list') node.items.forEach(into);
    if (node?.kind !== 'map' || node.flow) return;
    for (const { place, value } of node.entries) {
      const [from, to] = [
        lineOf(place.start),
        lineOf(place.start + text.slice(place.start, place.end).trimEnd().length),
      ];
      if (to > from) found.push(`${from} ${to}`);
      into(value);
    }
  };
  into(readTree(text, 'self').root);
  return found;
}

test('the blocks of any nested text are those that the YAML reader finds', () => {
  const { text } = fc.letrec<{ text: string; map: readonly (readonly [string, unknown])[] }>((tie) => ({
    map: fc.array(
      fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.oneof({ depthSize: 'small' }, fc.constant(1), tie('map'))),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
    text: tie('map').map((map) => written(map as Map_, '')),
  }));
  fc.assert(
    fc.property(text, (it) => {
      const folds = foldsOf(it).map(({ from, to }) => `${from} ${to}`);
      expect(folds.toSorted()).toEqual(blocksOf(it).toSorted());
    }),
  );
});

type Map_ = readonly (readonly [string, Map_ | number])[];
function written(map: Map_, indent: string): string {
  return map
    .map(([key, value], i) =>
      typeof value === 'number' ? `${indent}${key}${i}: 1\n` : `${indent}${key}${i}:\n${written(value, `${indent}  `)}`,
    )
    .join('');
}
