import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutJob, type JobParts } from '../../../shared-core/document/cut.js';
import { readCarcassTree, readHeadTrees } from '../../../shared-core/document/parts.js';
import { readTree } from '../../../shared-core/document/read.js';
import { job, writeJob } from '../job/job-texts.js';
import { readAll, values } from '../job/read-all.js';
import { plain } from './yaml-texts.js';
import { inWords } from '../../in-words.js';

const TWO = `# top
unit: mm
carcasses: # all of them
  # the first
  sink:
    kind: base

    width: 600
  # the second
  "oven tower": { kind: tall, width: 600 } # slim
# end
title: after
`;

test('head, carcasses and tail are the text', () => {
  const { head, carcasses, tail, whole } = cutJob(TWO);
  expect(whole).toBeNull();
  expect(head.text + carcasses.map(({ text }) => text).join('') + tail.text).toBe(TWO);
  expect(head.text.endsWith('# the first\n')).toBe(true);
  expect(carcasses.map(({ text }) => text.split('\n')[0])).toEqual([
    '  sink:',
    '  "oven tower": { kind: tall, width: 600 } # slim',
  ]);
  expect(tail.text).toBe('title: after\n');
});

describe('layouts that are cut', () => {
  test.each([
    ['line ends of two characters', TWO.replaceAll('\n', '\r\n'), 2],
    ['a byte order mark', `\uFEFFcarcasses:\n  a:\n    kind: base\n`, 1],
    ['no newline at the end', 'carcasses:\n  a:\n    kind: base', 1],
    ['four spaces', 'carcasses:\n    a:\n        kind: base\n    b:\n        kind: wall\n', 2],
    [
      'braces and quotes on a line',
      `carcasses:\n  a: { note: "#}", l: [1' 2", 3], p: { q: 'it''s {' } } # x\n  b: {}\n`,
      2,
    ],
    ['letters of all kinds', 'carcasses:\n  Spüle – links:\n    kind: base\n  棚:\n    kind: wall\n', 2],
    ['a tab inside one of them', 'carcasses:\n  a:\n\tkind: base\n  b:\n    kind: wall\n', 2],
    ['one whose colon is to come', 'carcasses:\n  a:\n    kind: base\n  b\n', 2],
    ['a fault of indentation inside one', 'carcasses:\n  a:\n    kind: base\n   width: 3\n  b:\n    kind: wall\n', 2],
    ['a block text', 'carcasses:\n  a:\n    note: |\n      # no comment\n      kind: x\n  b:\n    kind: wall\n', 2],
    ['none yet', 'unit: mm\ncarcasses:\n', 0],
    ['none yet, and a tail', 'carcasses:\n# soon\nunit: mm\n', 0],
  ])('%s', (_, text, many) => {
    const { head, carcasses, tail, whole } = cutJob(text);
    expect(whole).toBeNull();
    expect(carcasses).toHaveLength(many);
    expect(head.text + carcasses.map((part) => part.text).join('') + tail.text).toBe(text);
  });
});

describe('layouts that are left whole', () => {
  test.each([
    ['an anchor', 'carcasses:\n  a: &a\n    kind: base\n  b: *a\n', 2],
    ['an anchor in the head', 'unit: &u mm\ncarcasses:\n  a:\n    kind: base\n', 1],
    ['braces around all', 'carcasses: { a: { kind: base }, b: { kind: wall } }\n', 2],
    ['a quote that is not closed', 'carcasses:\n  a: { note: "}\n  b: {}\n', 1],
    ['braces over lines', 'carcasses:\n  a: { kind: base,\n    width: 3 }\n  b: {}\n', 2],
    ['braces around the job', '{ carcasses: { a: { kind: base } } }', 1],
    ['a key in quotes', '"carcasses":\n  a:\n    kind: base\n', 1],
    ['a second document', 'carcasses:\n  a:\n    kind: base\n---\nx: 1\n', 1],
    ['a tab before the first', 'carcasses:\n\ta:\n\t\tkind: base\n', 0],
    ['a long key', 'carcasses:\n  ? a\n  : kind: base\n', 1],
    ['nothing', '', 0],
    ['another file', 'Dear customer,\nthank you.', 0],
  ])('%s', (_, text, many) => {
    const { head, carcasses, whole } = cutJob(text);
    expect(whole).not.toBeNull();
    expect(head.text).toBe(text);
    expect(carcasses).toHaveLength(many);
    for (const part of carcasses) expect([part.origin, part.text]).toEqual([0, text]);
  });
});

test('a cut job reads as the same job left whole', () => {
  fc.assert(
    fc.property(job, fc.boolean(), (some, flow) => {
      const text = writeJob(some, 'mm', flow);
      const tied = text.replace('unit: mm', 'unit: &unit mm');
      const [cut, whole] = [readAll(text), readAll(tied)];
      expect([cut.parts.whole, whole.parts.whole === null]).toEqual([null, false]);
      expect(values(cut.carcasses.map(({ spec }) => spec))).toEqual(values(whole.carcasses.map(({ spec }) => spec)));
      const shift = tied.length - text.length;
      const places = (read: typeof cut) =>
        read.carcasses.map(({ spec }, i) => spec && spec.width.place.start + read.parts.carcasses[i]!.origin);
      expect(places(whole)).toEqual(places(cut).map((at) => at && at + shift));
    }),
    { numRuns: 150 },
  );
});

test('the parts of a cut job, read apart, are the tree of the whole', () => {
  fc.assert(
    fc.property(job, fc.boolean(), (some, flow) => {
      const text = writeJob(some, 'mm', flow);
      const parts = cutJob(text);
      const apart = parts.carcasses.map((part) => readCarcassTree(part).entry!);
      const whole = readTree(text, 'head').root;
      const entries = whole?.kind === 'map' ? whole.entries.find(({ key }) => key === 'carcasses')!.value : null;
      expect(plain(entries)).toEqual({ entries: apart.map((entry) => [entry.key, plain(entry.value)]) });
    }),
    { numRuns: 150 },
  );
});

test('a fault in one carcass stays in it', () => {
  const line = fc.constantFrom(
    '\tkind: base',
    '    width: [',
    '      x: 1',
    '    "',
    '    kind: base: wall',
    '   y',
    '    ]',
    '    - 1',
    '    @',
  );
  fc.assert(
    fc.property(line, fc.nat(2), (fault, where) => {
      const blocks = ['a', 'b', 'c'].map(
        (name, i) => `  ${name}:\n    kind: base\n${i === where ? `${fault}\n` : ''}    width: 600\n`,
      );
      const { carcasses, head } = readAll(`unit: mm\ncarcasses:\n${blocks.join('')}`);
      expect(head.findings).toEqual([]);
      expect(carcasses.map(({ spec }) => spec !== null)).toEqual([0, 1, 2].map((i) => i !== where));
      expect(carcasses[where]!.findings.length).toBeGreaterThan(0);
    }),
  );
});

test('a fault of an uncut job is told once, with what it stands in', () => {
  const text = 'unit: &u mm\nshop: [\ncarcasses:\n  a:\n    kind: base\n    width: 600\n';
  const { findings } = readAll(text);
  expect(findings.map(({ rule }) => rule)).toContain('yaml-syntax');
  const inCarcass = readAll('unit: &u mm\ncarcasses:\n  a:\n    kind: base\n    width: "6\n');
  expect(inCarcass.head.findings).toEqual([]);
  expect(inCarcass.carcasses.map(({ spec, findings }) => [spec, findings.map(({ rule }) => rule)])).toEqual([
    [null, ['yaml-syntax']],
  ]);
});

test('a carcass that is an alias reads as what it names', () => {
  const { carcasses, findings } = readAll('carcasses:\n  a: &a { kind: base, width: 600 }\n  b: *a\n');
  expect(findings).toEqual([]);
  expect(carcasses.map(({ name, spec }) => [name?.value, spec?.width.value])).toEqual([
    ['a', 600_000],
    ['b', 600_000],
  ]);
});

test('too many carcasses, or too long a file, are told and read as far as they go', () => {
  const jobOf = (count: number, line: (index: number) => string): JobParts =>
    cutJob(`carcasses:\n${Array.from({ length: count }, (_, i) => `  c${i}:\n    ${line(i)}\n`).join('')}`);
  const toldOf = (parts: JobParts): string => inWords(readHeadTrees(parts).head.problems[0]!.message);
  // 100,000 lines.
  expect(jobOf(50_000, () => 'kind: base').problems).toEqual([]);
  const many = jobOf(50_002, () => 'kind: base');
  expect(many.carcasses).toHaveLength(50_000);
  expect(toldOf(many)).toContain('50002 carcasses; the maximum is 50000');
  expect(jobOf(6000, (i) => `width: ${i % 5000}`).problems).toEqual([]);
  const unlike = jobOf(6000, (i) => `width: ${i % 5001}`);
  expect(unlike.carcasses.at(-1)?.text).toContain('width: 4999');
  expect(toldOf(unlike)).toContain('5001 carcasses that are not alike; the maximum is 5000');
  const long = readAll(`carcasses:\n${'  a:\n    kind: base\n'.repeat(300_000)}`);
  expect(long.carcasses).toEqual([]);
  expect(long.findings.map(({ rule, place }) => [rule, place.end > place.start])).toEqual([['yaml-syntax', true]]);
});
