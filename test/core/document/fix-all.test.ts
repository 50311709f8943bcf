import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { Engine } from '../../../shared-core/engine.js';
import { batchEdits, preferredRepairs, repairEdits } from '../../../shared-core/engine/repairs.js';
import { asMessage, inWords } from '../../in-words.js';

const analyse = (text: string) =>
  new Engine({ readShop: () => ({ ok: false, message: asMessage('There is no such file.') }) }).analyse(
    'file:///x',
    text,
  );

/** The text after every repair that needs no choice, as an editor takes them at each save. */
function saved(text: string): string {
  const analysis = analyse(text);
  return applyEdits(text, batchEdits(analysis, preferredRepairs(analysis)));
}

function errors(text: string): readonly string[] {
  const analysis = analyse(text);
  const found = analysis.findings().filter(({ finding }) => finding.severity === 'error');
  return found.map(({ finding: { message, place }, carcass }) => {
    const { start, end } = analysis.locate(place, carcass);
    return `${JSON.stringify(text.slice(start, end))} ${inWords(message)}`;
  });
}

/** What each repair of the only error makes of the text, by its title; preferred ones are starred. */
function offers(text: string): readonly (readonly [string, string])[] {
  const analysis = analyse(text);
  const [one, ...more] = analysis.findings().filter(({ finding }) => finding.severity === 'error');
  expect(more).toEqual([]);
  return one!.finding.repairs.map((repair) => {
    const edits = repairEdits(analysis, { carcass: one!.carcass, repair })!;
    return [`${repair.preferred ? '* ' : ''}${inWords(repair.title)}`, applyEdits(text, edits)];
  });
}

const written = fc.constantFrom(
  'sink:',
  'sink: base',
  'sink: 600',
  'kind: base',
  'kind: bse',
  'width: 600',
  'width 600',
  'width:600',
  'heigth: 720',
  'bar:',
  'bar: wall',
  'bar: { kind: wall }',
  'back: { how: none }',
  'loose-shelves:',
  '- 328',
  '- at: 328',
  '',
  '# remark',
  'panels:',
  'left: { rows: none }',
  'title: a: b',
  'unit: mm',
  'carcasses:',
  'rows: front',
);
const job = fc
  .tuple(
    fc.constantFrom('carcasses:\n', '\ncarcasses:\n', 'title: x\n', '\n'),
    fc.array(fc.tuple(fc.constantFrom(0, 0, 0, 2, 2, -2, -2, 1, -1, 3), written), { minLength: 1, maxLength: 7 }),
    fc.constantFrom('\n', '\r\n'),
  )
  .map(([head, lines, eol]) => {
    let indent = 2;
    const all = lines.map(([step, words]) => {
      indent = Math.max(0, indent + step);
      return `${' '.repeat(indent)}${words}\n`;
    });
    return `${head}${all.join('')}`.replaceAll('\n', eol);
  });

test('fix-all comes to rest, whatever the layout', () => {
  fc.assert(
    fc.property(job, (text) => {
      const met = [text];
      for (let now = text, next = saved(now); next !== now; now = next, next = saved(now)) {
        expect(met).not.toContain(next);
        met.push(next);
        expect(met.length).toBeLessThan(20);
      }
    }),
    { numRuns: 400 },
  );
});

describe('a name with a value on its line', () => {
  test('above keys that are indented: a choice of two', () => {
    const text = 'carcasses:\n  sink: base\n    width: 600\n';
    expect(errors(text)).toEqual([
      '"width: 600" `sink` already has the value ‘base’ on its line, so no key can stand below it. Write `kind: base` on a line below if `sink` is a carcass, or start this line 2 columns further left.',
    ]);
    expect(offers(text)).toEqual([
      ['Write kind: base below sink', 'carcasses:\n  sink:\n    kind: base\n    width: 600\n'],
      ['Indent it like the line above', 'carcasses:\n  sink: base\n  width: 600\n'],
    ]);
  });

  test('a kind is no name: only the line below it moves', () => {
    const text = 'carcasses:\n  kind: base\n    width: 600\n';
    expect(errors(text)).toEqual([
      '"width: 600" `kind` already has the value ‘base’ on its line, so no key can stand below it. Start this line 2 columns further left.',
    ]);
    expect(offers(text)).toEqual([['Indent it like the line above', 'carcasses:\n  kind: base\n  width: 600\n']]);
  });

  test('above keys in its own column', () => {
    const text = 'carcasses:\r\n  sink: base # left\r\n  width: 600\r\n  depth: 500\r\n';
    expect(errors(text)).toEqual([
      '"sink: base" `sink` has the value ‘base’ on its line and its keys in the same column. Write `kind: base` below the name, and indent it and the 2 lines below by two columns.',
    ]);
    expect(offers(text)).toEqual([
      [
        '* Write kind: base below sink',
        'carcasses:\r\n  sink:\r\n    kind: base # left\r\n    width: 600\r\n    depth: 500\r\n',
      ],
    ]);
    expect(errors(saved(text))).toEqual([]);
  });

  test('that is no kind', () => {
    const text = 'carcasses:\n  sink: 600\n  kind: base\n  width: 600\n';
    expect(errors(text)).toEqual([
      '"sink: 600" `sink` has the value ‘600’ on its line and its keys in the same column. Remove the value, and indent the 2 lines below by two columns.',
    ]);
    expect(offers(text)).toEqual([
      ['Remove 600 and indent the 2 lines below', 'carcasses:\n  sink:\n    kind: base\n    width: 600\n'],
    ]);
  });
});

describe('a forgotten name', () => {
  test('of the first carcass', () => {
    const text = 'carcasses:\n  kind: base\n  width: 600\n  bar:\n    kind: wall\n    width: 800\n';
    expect(errors(text)).toEqual([
      '"kind: base" `kind` stands where the name of a carcass belongs. Write a name and a colon, such as `carcass-1:`, on a line above it, and indent the keys of the carcass by two columns.',
    ]);
    expect(offers(text)).toEqual([
      [
        'Name it carcass-1',
        'carcasses:\n  carcass-1:\n    kind: base\n    width: 600\n  bar:\n    kind: wall\n    width: 800\n',
      ],
    ]);
    expect(analyse(text).carcasses.map(({ name, spec }) => [name, spec !== null])).toEqual([
      ['', false],
      ['bar', true],
    ]);
  });

  test('with another key first', () => {
    const [[title, text] = []] = offers('carcasses:\n  width: 600\n  kind: base\n');
    expect(title).toBe('Name it carcass-1');
    expect(text).toBe('carcasses:\n  carcass-1:\n    width: 600\n    kind: base\n');
  });

  test('of a later carcass, which is then none of the keys of the one above', () => {
    const text = 'carcasses:\n  carcass-1:\n    kind: base\n    width: 600\n  kind: wall\n  width: 800\n';
    expect(errors(text)).toHaveLength(1);
    expect(offers(text)).toEqual([
      [
        'Name it carcass-2',
        'carcasses:\n  carcass-1:\n    kind: base\n    width: 600\n  carcass-2:\n    kind: wall\n    width: 800\n',
      ],
    ]);
    expect(errors(offers(text)[0]![1])).toEqual([]);
  });
});

test('keys below a map in brackets are not indented under it', () => {
  const text = 'carcasses:\n  bar: { kind: wall, width: 800 }\n  depth: 300\n';
  expect(errors(text)).toEqual([
    '"depth: 300" `depth` starts in the same column as `bar`, where the names of carcasses stand. Write it inside `bar`.',
  ]);
  expect(offers(text)).toEqual([]);
});
