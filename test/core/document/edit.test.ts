import { describe, expect, test } from 'vitest';
import { editsFor } from '../../../shared-core/document/edit/edits-for.js';
import type { Change } from '../../../shared-core/document/finding.js';
import type { Path } from '../../../shared-core/document/place.js';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { readTree } from '../../../shared-core/document/read.js';

const set = (path: Path, text: string): Change => ({ kind: 'set', part: 'self', path, text });
const remove = (path: Path): Change => ({ kind: 'remove', part: 'self', path });
const rename = (path: Path, text: string): Change => ({ kind: 'rename-key', part: 'self', path, text });
const shorthand = (path: Path): string | null =>
  path.at(-1) === 'back'
    ? 'how'
    : typeof path.at(-1) === 'number' && String(path.at(-2)).endsWith('shelves')
      ? 'at'
      : null;

/** The text after the changes; null where they are refused. */
function after(text: string, ...changes: Change[]): string | null {
  const { root } = readTree(text, 'self');
  const edits = editsFor(text, root, changes, { shorthand });
  return edits.length === 0 ? null : applyEdits(text, edits);
}

describe('setting a value', () => {
  test.each([
    ['in place, its comment kept', 'a: 1\nb: 300  # hole 9\n', set(['b'], '328'), 'a: 1\nb: 328  # hole 9\n'],
    ['with the quotes that it had', `a: '300 mm' # x`, set(['a'], `1' 11 5/8"`), `a: '1'' 11 5/8"' # x`],
    ['quoted where it must be', 'a: 300', set(['a'], 'x: y'), 'a: "x: y"'],
    ['a list item', 'l:\n  - 300 # one\n  - 400\n', set(['l', 0], '328'), 'l:\n  - 328 # one\n  - 400\n'],
    ['an item in brackets', 'l: [ 300, 400 ]\n', set(['l', 1], '328'), 'l: [ 300, 328 ]\n'],
    ['nothing yet', 'a:  # soon\nb: 1\n', set(['a'], '5'), 'a: 5  # soon\nb: 1\n'],
    [
      'a new key at the end',
      'a: 1\nb:\n  c: 2 # c\n\n# end\n',
      set(['d'], '3'),
      'a: 1\nb:\n  c: 2 # c\nd: 3\n\n# end\n',
    ],
    ['a new key without last newline', 'a: 1', set(['b'], '2'), 'a: 1\nb: 2'],
    ['a new key with CRLF', 'a: 1 # x\r\n', set(['b'], '2'), 'a: 1 # x\r\nb: 2\r\n'],
    ['a new key before an unfinished one', 'x: 1\ncarcasses:\n', set(['unit'], 'in'), 'x: 1\nunit: in\ncarcasses:\n'],
    ['a new key in braces', 'm: { a: 1 } # m\n', set(['m', 'b'], '2'), 'm: { a: 1, b: 2 } # m\n'],
    ['a new key in empty braces', 'm: {}\n', set(['m', 'b'], '2'), 'm: { b: 2 }\n'],
    [
      'nested keys',
      'kind: base\n',
      set(['panels', 'left', 'rows'], 'front'),
      'kind: base\npanels:\n  left:\n    rows: front\n',
    ],
    [
      'nested keys under nothing',
      'panels: # none\nk: 1',
      set(['panels', 'left', 'rows'], 'both'),
      'panels: # none\n  left:\n    rows: both\nk: 1',
    ],
    ['nested keys by the indentation in use', 'a:\n    b: 1\n', set(['p', 'q'], '2'), 'a:\n    b: 1\np:\n    q: 2\n'],
    [
      'the shorthand itself',
      'loose-shelves:\n  - 300 # x\n',
      set(['loose-shelves', 0, 'at'], '328'),
      'loose-shelves:\n  - 328 # x\n',
    ],
    [
      'beside a shorthand',
      'loose-shelves:\n  - 300 # x\n',
      set(['loose-shelves', 0, 'bay'], '2'),
      'loose-shelves:\n  - { at: 300, bay: 2 } # x\n',
    ],
    [
      'beside a word',
      'back: rebated # x\n',
      set(['back', 'board'], 'back-8'),
      'back: { how: rebated, board: back-8 } # x\n',
    ],
    [
      'a key of a block item',
      'l:\n  - at: 3 # x\n  - 4\n',
      set(['l', 0, 'bay'], '2'),
      'l:\n  - at: 3 # x\n    bay: 2\n  - 4\n',
    ],
    ['one item more', 'l:\n  - 3 # x\n', set(['l', 1], '4'), 'l:\n  - 3 # x\n  - 4\n'],
    ['one item more at the margin', 'l:\n- 3\nk: 1\n', set(['l', 1], '4'), 'l:\n- 3\n- 4\nk: 1\n'],
    ['one item more in brackets', 'l: [3]\n', set(['l', 1], '4'), 'l: [3, 4]\n'],
    ['a list that was a count', 'loose-shelves: 1\n', set(['loose-shelves', 0], '328'), 'loose-shelves: [328]\n'],
    [
      'a word over a map',
      'back: # b\n  how: grooved\n  inset: 10\nk: 1\n',
      set(['back'], 'none'),
      'back: none # b\nk: 1\n',
    ],
    ['behind a byte order mark', '\uFEFFa: 1\n', set(['b'], '2'), '\uFEFFa: 1\nb: 2\n'],
    ['in an empty text', '', set(['habits', 'pitch'], '32'), 'habits:\n  pitch: 32\n'],
    ['under a comment', '# mine', set(['unit'], 'mm'), '# mine\nunit: mm\n'],
    ['over an alias', 'a: &x 3\nb: *x\n', set(['b'], '4'), 'a: &x 3\nb: 4\n'],
    ['after a block text', 'note: |\n  one\n  two\n\nk: 1\n', set(['k'], '2'), 'note: |\n  one\n  two\n\nk: 2\n'],
    ['beside letters of all kinds', 'Spüle: 1 # 🪚\n', set(['Spüle'], '2'), 'Spüle: 2 # 🪚\n'],
  ])('%s', (_, text, change, wanted) => {
    expect(after(text, change)).toBe(wanted);
  });

  test('a list item by item, with the comments of its lines', () => {
    const text = 'dowels:\n  - 37 # front\n  - 100\n  - 200 # back\n';
    expect(after(text, set(['dowels'], '[37, 133]'))).toBe('dowels:\n  - 37 # front\n  - 133\n');
    expect(after('k: 1\n', set(['dowels'], '[37, 133]'))).toBe('k: 1\ndowels: [37, 133]\n');
    expect(after('dowels: [1, 2]\n', set(['dowels'], '[37, 2, 3]'))).toBe('dowels: [37, 2, 3]\n');
  });

  test('several at once share the keys that they make', () => {
    const changes = [
      set(['panels', 'left', 'rows'], 'front'),
      set(['panels', 'left', 'row-offset'], '40'),
      set(['dowels', 0], '53'),
      set(['dowels', 1], '85'),
    ];
    expect(after('kind: base\n', ...changes)).toBe(
      'kind: base\npanels:\n  left:\n    rows: front\n    row-offset: 40\ndowels: [53, 85]\n',
    );
  });

  test.each([
    ['beyond the end of a list', 'l: [1]\n', set(['l', 3], '4')],
    ['under a value that stands for no map', 'a: 1\n', set(['a', 'b'], '2')],
    ['through an alias', 'a: &x { c: 1 }\nb: *x\n', set(['b', 'c'], '2')],
  ])('is refused %s', (_, text, change) => {
    expect(after(text, change)).toBeNull();
  });
});

describe('taking out', () => {
  test.each([
    ['an entry with its line', 'a: 1 # a\nb: 2 # b\nc: 3\n', remove(['b']), 'a: 1 # a\nc: 3\n'],
    ['the last entry without last newline', 'a: 1\nb: 2', remove(['b']), 'a: 1'],
    ['an entry of several lines', 'a: 1\nb:\n  c: 1\n  d: 2\ne: 3\n', remove(['b']), 'a: 1\ne: 3\n'],
    ['what it leaves empty', 'a: 1\npanels:\n  left:\n    rows: none\n', remove(['panels', 'left', 'rows']), 'a: 1\n'],
    ['an item with its line', 'l:\n  - 1\n  - 2 # two\n  - 3\n', remove(['l', 1]), 'l:\n  - 1\n  - 3\n'],
    ['the first key of an item', 'l:\n  - bay: 1\n    at: 2\n', remove(['l', 0, 'bay']), 'l:\n  - at: 2\n'],
    ['first in brackets', 'l: [1, 2, 3]\n', remove(['l', 0]), 'l: [2, 3]\n'],
    ['last in brackets', 'm: { a: 1, b: 2 }\n', remove(['m', 'b']), 'm: { a: 1 }\n'],
    ['last in brackets, a remark before it', 'l: [\n  1, # a\n  2, # b\n]\n', remove(['l', 1]), 'l: [\n  1, # a\n]\n'],
    ['last, the bracket behind it', 'l: [ 1, # a\n  2 ]\n', remove(['l', 1]), 'l: [ 1, # a\n   ]\n'],
    ['last, commas leading', 'l: [\n  1 # a\n  , 2 # b\n]\n', remove(['l', 1]), 'l: [\n  1 # a\n   # b\n]\n'],
    [
      'first, a remark over the next',
      'm: {\n  a: 1, # a\n  # b\n  b: 2\n}\n',
      remove(['m', 'a']),
      'm: {\n  # b\n  b: 2\n}\n',
    ],
    ['first beside its bracket', 'l: [1, # a\n  # b\n  2]\n', remove(['l', 0]), 'l: [\n  # b\n  2]\n'],
    ['first, its remark with it', 'l: [\r\n  1, # a\r\n  2\r\n]\r\n', remove(['l', 0]), 'l: [\r\n  2\r\n]\r\n'],
  ])('%s', (_, text, change, wanted) => {
    expect(after(text, change)).toBe(wanted);
  });

  test('several by the indexes of the text before', () => {
    expect(after('l: [0, 1, 2, 3]\n', remove(['l', 0]), remove(['l', 2]), set(['l', 3], '9'))).toBe('l: [1, 9]\n');
  });
});

describe('renaming a key', () => {
  test.each([
    ['in place', 'widht: 600 # w\n', rename(['widht'], 'width'), 'width: 600 # w\n'],
    ['with its quotes', '"widht": 600\n', rename(['widht'], 'width'), '"width": 600\n'],
    ['deep in brackets', 'm: { a: { b: 1 } }\n', rename(['m', 'a', 'b'], 'c'), 'm: { a: { c: 1 } }\n'],
  ])('%s', (_, text, change, wanted) => {
    expect(after(text, change)).toBe(wanted);
  });

  test('together with values under it', () => {
    expect(after('a:\n  b: 1\n', rename(['a'], 'x'), set(['a', 'b'], '2'))).toBe('x:\n  b: 2\n');
  });
});

test('paths start from the value of a carcass, also where nothing is written yet', () => {
  const text = '  sink: # new\n';
  const { root } = readTree(text, 'self');
  const under = root!.kind === 'map' ? root!.entries[0]! : undefined;
  expect(
    applyEdits(text, editsFor(text, null, [set(['kind'], 'base'), set(['width'], '600')], { under: under! })),
  ).toBe('  sink: # new\n    kind: base\n    width: 600\n');
});
