import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatEdits } from '../../../shared-core/document/format.js';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { readTree } from '../../../shared-core/document/read.js';
import { Engine } from '../../../shared-core/engine.js';
import { demoText } from '../findings/jobs.js';
import { chooser, job, plain, render } from './yaml-texts.js';

const formatted = (text: string): string => applyEdits(text, formatEdits(text));

test('a text that is laid out unevenly', () => {
  const uneven = `title:   Kitchen  
carcasses:
   sink:
      kind :  base   # under the window
      # two of them
      loose-shelves:
      -   {at: 361.5,bay:   1}
      -   at:  328
          board:   birch-19

      fixed-shelves: [ 296,360 ]\t
   hob: { kind: wall , width: 500, back: {how: grooved} }
# the end
`;
  expect(formatted(uneven)).toBe(`title: Kitchen
carcasses:
  sink:
    kind: base   # under the window
    # two of them
    loose-shelves:
      - { at: 361.5, bay: 1 }
      - at: 328
        board: birch-19

    fixed-shelves: [296, 360]
  hob: { kind: wall, width: 500, back: { how: grooved } }
# the end
`);
});

test('remarks of several lines go with the line below that starts in their column', () => {
  const uneven = `a:
    b:
        c: 1
    # of d,
    # in two lines
    d: 2
`;
  expect(formatted(uneven)).toBe(`a:
  b:
    c: 1
  # of d,
  # in two lines
  d: 2
`);
});

test.each([
  ['a text of several lines', 'a:\n    b: |\n        one  \n          two\n\n        # three\n    c: 1\n'],
  ['its mark with a number', 'a:\n    b: |2-\n         one\n    c: 1\n'],
  ['brackets over several lines', 'a:\n     b: [ 1,\n       2 ]\n     c: { d: 1,\n e: 2 }\n'],
  ['lists in lists', 'a:\n-   - 1\n    -   2\n-\n    b: 1\n'],
  ['marks and aliases', 'a: &x   1\nb:\n    &y\n    c: *x\nd:   *y\n'],
  ['a byte order mark and its line ends', '\uFEFFa:\r\n     b:  1  \r\n\r\n     c: 2\r\n'],
])('%s keeps what it says', (_, text) => {
  const after = formatted(text);
  expect(plain(readTree(after, 'self').root)).toEqual(plain(readTree(text, 'self').root));
  expect(after.replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
  expect(formatted(after)).toBe(after);
  expect(after.includes('\r\n')).toBe(text.includes('\r\n'));
});

test.each(['a: [1\n', 'a:\n\tb: 1\n', 'a: 1\n  b: 2\n', '', '# only a remark   \n'])('%j is left alone', (text) => {
  expect(formatEdits(text)).toEqual([]);
});

test('of any text the values and every sign but blanks stay, and once is enough', () => {
  let changed = 0;
  fc.assert(
    fc.property(job, fc.nat(), (value, seed) => {
      const text = render(value, seed);
      const after = formatted(text);
      if (after !== text) changed += 1;
      const [before, now] = [readTree(text, 'self'), readTree(after, 'self')];
      expect(plain(now.root)).toEqual(plain(before.root));
      expect(now.problems).toHaveLength(before.problems.length);
      expect(after.replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
      expect(formatted(after)).toBe(after);
    }),
    { numRuns: 500 },
  );
  expect(changed).toBeGreaterThan(100);
});

test('a job is bored alike before and after, however it was laid out', () => {
  const engine = (): Engine =>
    new Engine({ readShop: () => ({ ok: true, uri: 'x', text: demoText('shed.shop.yaml') }) });
  const bores = (text: string): string =>
    JSON.stringify(
      engine()
        .analyse('file:///a.carcass.yaml', text)
        .carcasses.map(({ name, boring }) => [name, boring?.bores.map(({ id, u, v, depth }) => [id, u, v, depth])]),
    );
  const text = demoText('kitchen.carcass.yaml');
  const before = bores(text);
  for (let seed = 1; seed <= 5; seed += 1) {
    const choose = chooser(seed);
    const step = 1 + choose(5);
    const uneven = text
      .replace(/^( +)/gm, (blanks) => ' '.repeat((blanks.length / 2) * step))
      .replace(/: (?=\w)/g, ':   ');
    expect(bores(uneven)).toBe(before);
    expect(bores(formatted(uneven))).toBe(before);
  }
  expect(bores(formatted(text))).toBe(before);
});
