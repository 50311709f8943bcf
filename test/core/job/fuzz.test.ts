import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { carcassEdits, headEdits } from '../../../shared-core/job/edits.js';
import { cutJob } from '../../../shared-core/document/cut.js';
import { readHeadTrees } from '../../../shared-core/document/parts.js';
import { readTree } from '../../../shared-core/document/read.js';
import { readAll } from './read-all.js';
import { inWords } from '../../in-words.js';
import { identityOf, type Words } from '../../../shared-core/words/message.js';

const SAMPLE = `# A job for damage.
title: Sample
unit: mm
shop: shed.shop.yaml
defaults: &d
  board: board-18 # all of it
  back: { how: rebated, groove: 9 }
carcasses:
  sink:
    kind: base
    width: 23 5/8 in
    loose-shelves: 2
  oven tower:   # the tall one
    kind: tall
    width: 600
    fixed-shelves:
      - 488
      - { at: 1128, bay: 1 }
    panels:
      left: { rows: front, dowels: [37, 133] }
    note: |
      Mind the cable.
  "plates": { kind: wall, width: 800, dividers: [400], loose-shelves: [300, 1' 2"] }
`;
const PLAIN = SAMPLE.replace(' &d', '');

const piece = fc.oneof(
  fc.constantFrom(
    '',
    '\t',
    '{',
    '}',
    '[',
    ']',
    '"',
    "'",
    '&a ',
    '*a',
    '*d',
    ': ',
    ':',
    '\n',
    '\r\n',
    '\r',
    '- ',
    '# ',
    '|\n',
    '? ',
    '---\n',
    '%x\n',
    '!t ',
    '<<: ',
    '  ',
    'carcasses:\n',
    'NaN',
    '-600',
    '1e999',
    '\uFEFF',
    '\u2028',
    '\0',
    '🪚',
    '__proto__: 1\n',
    'width: 5\n',
  ),
  fc.string({ unit: 'binary', maxLength: 5 }),
);
const damaged = fc
  .tuple(
    fc.constantFrom(SAMPLE, PLAIN, PLAIN.replaceAll('\n', '\r\n')),
    fc.array(fc.tuple(fc.nat(SAMPLE.length), fc.oneof(fc.nat(3), fc.nat(120)), piece), { minLength: 1, maxLength: 5 }),
  )
  .map(([text, cuts]) =>
    cuts.reduce((all, [at, length, instead]) => all.slice(0, at) + instead + all.slice(at + length), text),
  );

test('whatever happens to a job, it is read to the end, with findings that stand in the text', () => {
  fc.assert(
    fc.property(fc.oneof(damaged, fc.string({ unit: 'binary', maxLength: 60 })), (text) => {
      const { parts, head, carcasses } = readAll(text);
      const inBounds = (place: { start: number; end: number }, limit: number): boolean =>
        0 <= place.start && place.start <= place.end && place.end <= limit;
      for (const { place, message, repairs } of head.findings) {
        expect(inWords(message)).not.toBe('');
        expect(inBounds(place, place.part === 'tail' ? parts.tail.text.length : text.length)).toBe(true);
        expect(repairs.filter(({ preferred }) => preferred).length).toBeLessThanOrEqual(1);
      }
      let from = 0;
      parts.carcasses.forEach((part, i) => {
        expect(part.start).toBeGreaterThanOrEqual(from);
        expect(part.end).toBeGreaterThanOrEqual(part.start);
        from = part.end;
        expect(text.slice(part.origin, part.origin + part.text.length)).toBe(part.text);
        for (const { place } of carcasses[i]!.findings) expect(inBounds(place, part.text.length)).toBe(true);
        // Of a job without a unit only the unit is told.
        if (carcasses[i]!.spec === null && !head.head.unitUnknown) expect(carcasses[i]!.findings).not.toEqual([]);
      });
      if (parts.whole === null)
        expect(parts.head.text + parts.carcasses.map((part) => part.text).join('') + parts.tail.text).toBe(text);
    }),
    { numRuns: 1200 },
  );
});

test('the same text gives the same reading, byte for byte', () => {
  fc.assert(
    fc.property(damaged, (text) => {
      const [first, second] = [readAll(text), readAll(text)];
      expect(JSON.stringify(second)).toBe(JSON.stringify(first));
    }),
    { numRuns: 200 },
  );
});

test('every repair of a reading makes its finding go away and brings no other of its kind', () => {
  const wrong = fc.constantFrom(
    'widht: 600',
    'kind: bse',
    'widht: 600\n    kind: bse',
    'kind: base\n    dephth: 500',
    'width: 500\n    panels: { lefft: { rows: both } }',
    'kind: tall\n    toop: over # x',
    'kind: base\n    width: 5\n    rws: front',
  );
  fc.assert(
    fc.property(wrong, fc.constantFrom('titel: x\n', 'unit: imn\n', ''), (body, head) => {
      const text = `${head}carcasses:\n  a:\n    ${body}\n    note: n\n`;
      const { parts, head: read, carcasses } = readAll(text);
      const part = parts.carcasses[0]!;
      const counted = (job: ReturnType<typeof readAll>, message: Words): number =>
        job.findings.filter((one) => identityOf(one.message) === identityOf(message)).length;
      for (const { message, repairs } of carcasses[0]!.findings) {
        for (const { changes } of repairs) {
          const edits = carcassEdits(part.text, carcasses[0]!.entry!, changes);
          expect(edits.length).toBeGreaterThan(0);
          const after = readAll(text.slice(0, part.start) + applyEdits(part.text, edits));
          expect(counted(after, message)).toBe(0);
        }
      }
      for (const { message, repairs } of read.findings) {
        for (const { changes } of repairs) {
          const edits = headEdits(parts.head.text, readHeadTrees(parts).head.root, changes);
          expect(counted(readAll(applyEdits(parts.head.text, edits) + text.slice(parts.head.end)), message)).toBe(0);
        }
      }
    }),
    { numRuns: 100 },
  );
});

test.each([
  ['', ['nothing-yet']],
  ['# nothing yet\n', ['nothing-yet']],
  ['carcasses:\n', ['nothing-yet']],
  ['carcasses: []\n', ['value-wrong']],
  ['carcases:\n  a: { kind: base, width: 600 }\n', ['key-unknown']],
  ['unit: cm\ncarcasses:\n  a: { kind: base, width: 600 }\n', ['value-wrong']],
  ['carcasses:\n  a: { kind: base, width: 600 }\nunit: mm\nunit: in\n', ['name-duplicate']],
  ['unit: mm\ncarcasses:\n  a: { kind: base, width: 600 }\nunit: mm\n', ['name-duplicate']],
  ['carcasses:\n  a: { kind: base, width: 600 }\ncarcasses:\n  b: { kind: base, width: 600 }\n', ['name-duplicate']],
  ['carcasses:\n  a: 5\n', ['value-wrong']],
  ['carcasses:\n  a:\n', ['key-missing', 'key-missing']],
  ['carcasses:\n  a\n', ['yaml-syntax']],
  // White signs that YAML does not take for blank.
  ['carcasses:\n  a: { kind: base, width: 600 }\n\v', ['value-wrong']],
  ['carcasses:\n  a: { kind: base, width: 600 }\n\u00a0\n', ['value-wrong']],
  ['carcasses: { : { kind: base, width: 600 } }\n', ['yaml-syntax']],
])('%j', (text, rules) => {
  expect(readAll(text).findings.map(({ rule }) => rule)).toEqual(rules);
});

test('changes of a carcass in an uncut job, and of the tail of a cut one', () => {
  const set = (part: 'self' | 'tail', path: readonly string[], text: string) =>
    [{ kind: 'set', part, path, text }] as const;
  const tied = 'unit: &u mm\ncarcasses: { a: { kind: base, width: 600 }, b: { kind: wall, width: 600 } } # both\n';
  const { parts, carcasses } = readAll(tied);
  const edits = carcassEdits(parts.carcasses[1]!.text, carcasses[1]!.entry!, set('self', ['depth'], '300'));
  expect(applyEdits(tied, edits)).toBe(tied.replace('wall, width: 600', 'wall, width: 600, depth: 300'));

  const aliased = 'carcasses:\n  a: &a { kind: base, width: 600 }\n  b: *a\n';
  const two = readAll(aliased);
  expect(carcassEdits(aliased, two.carcasses[1]!.entry!, set('self', ['depth'], '300'))).toEqual([]);

  const tail = cutJob('carcasses:\n  a: { kind: base, width: 600 }\ntitle: x # t\n').tail.text;
  expect(applyEdits(tail, headEdits(tail, readTree(tail, 'tail').root, set('tail', ['title'], 'y')))).toBe(
    'title: y # t\n',
  );
});
