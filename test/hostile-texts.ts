/** A text that means harm, at a size. */
export interface Hostile {
  readonly name: string;
  /** `size` is about how many lines or signs it has. */
  readonly text: (size: number) => string;
}

const carcass = '  a:\n    kind: base\n    width: 600\n';
const lines = (size: number, line: string): string => `${line}\n`.repeat(size);

/** Texts for files of either kind: what an editor may hold while somebody types, pastes a file of another kind, or means harm. */
export const HOSTILE: readonly Hostile[] = [
  { name: 'line feeds, an open bracket, a key further left', text: (n) => `${'\n'.repeat(n)}  a: [1\nb: 2\n` },
  { name: 'one line feed and an open bracket', text: () => '\n  a: [1\nb: 2\n' },
  { name: 'returns before an open brace', text: (n) => `${'\r'.repeat(n)}  a: { b\r\nc: 2\r` },
  { name: 'line feeds alone', text: (n) => '\n'.repeat(n) },
  { name: 'a flood of line feeds before a job', text: (n) => `${'\n'.repeat(100 * n)}carcasses:\n${carcass}` },
  { name: 'a flood of blanks within a name', text: (n) => `carcasses:\n  a${' '.repeat(100 * n)}b` },
  { name: 'open brackets', text: (n) => `carcasses: ${'['.repeat(n)}` },
  { name: 'open braces', text: (n) => `carcasses: ${'{a: '.repeat(n)}` },
  { name: 'closing brackets', text: (n) => `carcasses: ${']'.repeat(n)}` },
  { name: 'a bracket left open in every line', text: (n) => `carcasses:\n${lines(n, '  a: [1')}` },
  {
    name: 'a ladder of keys',
    text: (n) => Array.from({ length: n }, (_, i) => `${' '.repeat(i % 90)}a${i}:\n`).join(''),
  },
  { name: 'tabs before keys', text: (n) => lines(n, '\t\t\tx: y') },
  { name: 'tabs below a carcass', text: (n) => `carcasses:\n${carcass}${lines(n, '\t\tx: y')}` },
  { name: 'tabs alone', text: (n) => '\t'.repeat(n) },
  { name: 'quotes', text: (n) => '"'.repeat(n) },
  { name: 'single quotes', text: (n) => `a: ${"'".repeat(n + 1)}` },
  { name: 'a quote left open in every line', text: (n) => `carcasses:\n${lines(n, '  a: "x')}` },
  { name: 'back-strokes in a quote', text: (n) => `title: "${'\\'.repeat(n)}` },
  {
    name: 'marks that turn the direction of writing',
    text: (n) => `title: ${'\u202E\u2066\u200F'.repeat(n)}x\ncarcasses:\n  \u202Ea:\n`,
  },
  {
    name: 'names that read from right to left',
    text: (n) => `carcasses:\n${lines(n, '  \u05D0\u202B\u05D1: { kind: base }')}`,
  },
  { name: 'half of a pair of code units', text: (n) => `carcasses:\n  ${'\uD83E'.repeat(n)}: ${'\uDE9A'.repeat(n)}\n` },
  { name: 'one very long line', text: (n) => `carcasses: { ${'a: { kind: base, width: 600 }, '.repeat(n / 20)}` },
  { name: 'one very long key', text: (n) => `carcasses:\n  ${'k'.repeat(n)}: 1\n` },
  { name: 'one very long number', text: (n) => `carcasses:\n  a: { kind: base, width: ${'9'.repeat(n)} }\n` },
  {
    name: 'a number with very many parts',
    text: (n) => `carcasses:\n  a: { kind: base, width: ${'1/'.repeat(n)}2 in }\n`,
  },
  { name: 'an exponent past all numbers', text: () => 'carcasses:\n  a: { kind: base, width: 1e999999999 }\n' },
  {
    name: 'a count past all numbers',
    text: () => `carcasses:\n  a: { kind: base, width: 600, count: ${'9'.repeat(40)} }\n`,
  },
  {
    name: 'shelves past all numbers',
    text: () => `carcasses:\n${carcass}    loose-shelves: 1e15\n    dividers: 1e15\n`,
  },
  { name: 'an alias of nothing in every line', text: (n) => `carcasses:\n${lines(n, '  a: *b')}` },
  {
    name: 'an anchor in every line',
    text: (n) => `carcasses:\n${Array.from({ length: n }, (_, i) => `  a${i}: &a${i} *a${i - 1}\n`).join('')}`,
  },
  {
    name: 'anchors that each hold the one before ten times',
    text: () =>
      `l0: &l0 [a]\n${Array.from({ length: 30 }, (_, i) => `l${i + 1}: &l${i + 1} [${`*l${i}, `.repeat(10)}]\n`).join('')}`,
  },
  { name: 'an alias of what it stands in', text: () => 'carcasses: &a\n  a: *a\n' },
  { name: 'a merge of itself', text: () => 'carcasses:\n  a: &a\n    <<: *a\n' },
  { name: 'markers of documents', text: (n) => lines(n, '---') },
  { name: 'dashes', text: (n) => `carcasses:\n  ${'- '.repeat(n)}` },
  { name: 'question marks', text: (n) => '? '.repeat(n) },
  { name: 'colons', text: (n) => ':\n'.repeat(n) },
  { name: 'comments alone', text: (n) => lines(n, '# #') },
  { name: 'block texts', text: (n) => lines(n, 'title: |9') },
  { name: 'tags', text: (n) => `carcasses: ${'!a '.repeat(n)}` },
  { name: 'directives', text: (n) => lines(n, '%YAML 9.9') },
  { name: 'a key written over and over', text: (n) => `carcasses:\n${carcass}${lines(n, '    width: 600')}` },
  { name: 'a carcass written over and over', text: (n) => `carcasses:\n${carcass.repeat(n / 4)}` },
  {
    name: 'a key that is unknown in every line',
    text: (n) => `carcasses:\n${carcass}${Array.from({ length: n / 4 }, (_, i) => `    widht-${i}: 600\n`).join('')}`,
  },
  {
    name: 'names of what every object has',
    text: () =>
      'constructor: 1\n__proto__: { a: 1 }\ncarcasses:\n  __proto__: { kind: base, width: 600, toString: 1 }\nmachines: { constructor: 1 }\n',
  },
  { name: 'a kind that is not indented', text: () => 'carcasses:\nsink: base\n    kind: base\n    width: 600\n' },
  { name: 'a kind in the place of a carcass', text: () => 'carcasses:\n  sink: base\n    width: 600\n' },
];
