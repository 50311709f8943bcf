import { describe, expect, test } from 'vitest';
import { readTree } from '../../../shared-core/document/read.js';
import type { ListNode, TreeNode } from '../../../shared-core/document/tree.js';
import { plain } from './yaml-texts.js';
import { inWords } from '../../in-words.js';

const told = (text: string): readonly string[] =>
  readTree(text, 'self').problems.map(
    ({ message, place }) => `${JSON.stringify(text.slice(place.start, place.end))} ${inWords(message)}`,
  );

describe('places', () => {
  const text =
    '\uFEFFa: 1 # x\r\nb:\r\n  - 300 # c\r\n  - at: "3"\r\n    k:\r\nc: |\r\n  one\r\n  two\r\nd: { e: 1, f }\r\n';
  const { root, problems } = readTree(text, 'self');
  const slice = (node: TreeNode | null): string => (node === null ? '' : text.slice(node.place.start, node.place.end));
  const entry = (key: string) => (root?.kind === 'map' ? root.entries.find((one) => one.key === key)! : undefined)!;

  test('cover just what is written', () => {
    expect(problems).toEqual([]);
    expect(slice(entry('a').value)).toBe('1');
    expect(slice(entry('b').value)).toBe('- 300 # c\r\n  - at: "3"\r\n    k:');
    expect(slice(entry('c').value)).toBe('|\r\n  one\r\n  two');
    expect(slice(entry('d').value)).toBe('{ e: 1, f }');
    expect(text.slice(entry('b').keyPlace.start, entry('b').keyPlace.end)).toBe('b');
    const item = (entry('b').value as ListNode).items[1]!;
    expect(slice(item)).toBe('at: "3"\r\n    k:');
    expect(plain(root)).toEqual({
      entries: [
        ['a', '1'],
        [
          'b',
          [
            '300',
            {
              entries: [
                ['at', '3'],
                ['k', null],
              ],
            },
          ],
        ],
        ['c', 'one\ntwo\n'],
        [
          'd',
          {
            entries: [
              ['e', '1'],
              ['f', null],
            ],
          },
        ],
      ],
    });
  });

  test('an alias keeps its own place beside that of what it names', () => {
    const { root } = readTree('a: &x 600\nb: *x\n', 'self');
    const b = root?.kind === 'map' ? root.entries[1]! : undefined;
    expect(b?.value).toEqual({
      kind: 'scalar',
      text: '600',
      plain: true,
      place: { part: 'self', start: 6, end: 9 },
      alias: { part: 'self', start: 13, end: 15 },
    });
    expect(b?.place).toEqual({ part: 'self', start: 10, end: 15 });
  });
});

test('values stay as they are written', () => {
  const text =
    "a: 600\nb: yes\nc: \"yes\"\nd: ~\ne: 0x10\nf: 2024-01-01\ng: 1' 11 5/8\"\nh: 'it''s'\n? i\n: j\n<<: k\nl: !tag m\n";
  expect(plain(readTree(text, 'self').root)).toEqual({
    entries: [
      ['a', '600'],
      ['b', 'yes'],
      ['c', 'yes'],
      ['d', '~'],
      ['e', '0x10'],
      ['f', '2024-01-01'],
      ['g', `1' 11 5/8"`],
      ['h', "it's"],
      ['i', 'j'],
      ['<<', 'k'],
      ['l', 'm'],
    ],
  });
});

test('nothing is no tree and no fault', () => {
  for (const text of ['', '\n', '# only a comment\n', '\uFEFF', '  \r\n', '---\n'])
    expect(readTree(text, 'self')).toEqual({ root: null, problems: [] });
});

describe('faults of the text', () => {
  test.each([
    ['a:\n\tb: 1\n', ['"\\t" This line is indented with a tab. Use two spaces for each step.']],
    ['a:\n  b: 1\n\tc: 2\n\td: 3\n', ['"\\t" This line is indented with a tab. Use two spaces for each step.']],
    ['a: *b\n', ['"*b" *b names nothing. Write &b before the value it stands for, above this line.']],
    ['a: &b [*b]\n', ['"*b" *b stands inside the value it names and would never end. Write the value out.']],
    [
      'a: &b { c: { d: *b } }\n',
      ['"*b" *b stands inside the value it names and would never end. Write the value out.'],
    ],
    ['a: 1\n---\nb: 2\n', ['"b" A second document begins here, after ---. Keep one document in a file.']],
    [
      '[a]: 1\n',
      ['"[a]" A key is a word or a few words on one line. Write it like `width: 600`, without brackets, & or *.'],
    ],
    [
      'a: b: c\n',
      ['"b: c" This line has two colons. Put the value of `a` in quotes, or the inner `key: value` on its own line.'],
    ],
    ['width 600\nkind: base\n', ['"width 600" A colon is missing after `width`. Write `width: 600`.']],
    ['a: "x\n', ['"x" A closing quote is missing. Write it where the text ends.']],
    ['a: [1, 2\n', ['"2" A bracket opened before this is not closed. Write the missing ] or }.']],
    ['a: [1 2: 3, 4 {5}]\n', ['"{" A comma or a colon is missing here.']],
    ['a: [1,, 2]\n', ['"," There is one comma too many here.']],
    [
      'a: "x"#y\n',
      ['"#y" A # that starts a comment needs a space before it. Put the value in quotes if the # belongs to it.'],
    ],
    ['a: 1\nb\n', ['"b" A key needs a colon after it. Write it like `width: 600`.']],
    ['a: @x\n', ['"@" A value cannot start with this character. Put the value in quotes.']],
    [
      '  a: 1\n b: 2\n',
      ['"b" This cannot stand here. Check the indentation, and look for a missing colon, quote or bracket.'],
    ],
  ])('%j', (text, wanted) => {
    expect(told(text)).toEqual(wanted);
  });

  test('a tab that is no indentation is none', () => {
    expect(told('a:\t1\t# x\nb: [1,\t2]\n')).toEqual([]);
  });
});

describe('hostile texts are told, within the time that a test has', () => {
  let laughs = 'a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n';
  for (let i = 1; i < 30; i += 1)
    laughs += `a${i}: &a${i} [${Array<string>(10)
      .fill(`*a${i - 1}`)
      .join(', ')}]\n`;
  test.each([
    ['aliases of aliases of aliases', laughs, 'more than 200000 values'],
    ['brackets without end', '['.repeat(300_000), '64 deep'],
    ['maps in maps', 'a: '.repeat(100_000), '64 deep'],
    ['lists in lists', '- '.repeat(100_000), '64 deep'],
    ['questions', '? '.repeat(100_000), '64 deep'],
    ['anchors', '&a '.repeat(100_000), 'with &, * or !'],
    ['a long text', `a: ${'x'.repeat(5_000_000)}`, '5 million characters'],
    ['a long list of tabs', `a:\n${'\tb: 1\n'.repeat(20_000)}`, 'tab'],
  ])('%s', (_, text, words) => {
    const { problems } = readTree(text, 'self');
    expect(problems.map(({ message }) => inWords(message)).join('\n')).toContain(words);
    for (const { place } of problems) {
      expect(place.end).toBeGreaterThan(place.start);
      expect(place.end).toBeLessThanOrEqual(text.length);
    }
  });
});
