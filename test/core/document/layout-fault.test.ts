import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { Engine } from '../../../shared-core/engine.js';
import { preferredRepairs, repairEdits } from '../../../shared-core/engine/repairs.js';
import { asMessage, inWords } from '../../in-words.js';
import { wholeShop } from '../shop/whole-shop.js';

const SOUND =
  'unit: mm\ncarcasses:\n  sink:\n    kind: base\n    width: 600\n    depth: 560\n  bar:\n    kind: wall\n    width: 800\n';
const engine = () => new Engine({ readShop: () => ({ ok: false, message: asMessage('There is no such file.') }) });

/** The errors of a text with the words that they stand on, and the text after the preferred repairs. */
function look(text: string): { readonly told: readonly string[]; readonly repaired: string } {
  const analysis = engine().analyse('file:///x.carcass.yaml', text);
  const told = analysis
    .findings()
    .filter(({ finding }) => finding.severity === 'error')
    .map(({ finding, carcass }) => {
      const { start, end } = analysis.locate(finding.place, carcass);
      return `${JSON.stringify(text.slice(start, end))} ${inWords(finding.message)}`;
    });
  const edits = preferredRepairs(analysis).flatMap((one) => repairEdits(analysis, one) ?? []);
  return { told, repaired: applyEdits(text, edits) };
}

describe('one fault of layout is told once, where it is, and repaired', () => {
  const cases: readonly (readonly [string, string, string])[] = [
    [
      'a line too far in',
      SOUND.replace('    width: 600', '      width: 600'),
      '"width: 600" This line is indented further than the line above it, which already has a value. Start it 2 columns further left, under `kind`.',
    ],
    [
      'several lines too far in',
      SOUND.replace('    width: 600\n    depth: 560', '     width: 600 # wide\n\n     depth: 560'),
      '"width: 600" This line is indented further than the line above it, which already has a value. Start it 1 column further left, under `kind`.',
    ],
    [
      'a line not far enough in',
      SOUND.replace('    width: 600', '   width: 600'),
      '"width: 600" This line starts 1 column left of `kind` but right of `sink`, so it belongs to neither. Start it under `kind`, or under `sink` if it is on its own.',
    ],
    [
      'a forgotten colon',
      SOUND.replace('width: 600', 'width 600'),
      '"width 600" A colon is missing after `width`. Write `width: 600`.',
    ],
    [
      'a forgotten colon at the end',
      SOUND.replace('depth: 560', 'depth 560'),
      '"depth 560" A colon is missing after `depth`. Write `depth: 560`.',
    ],
    [
      'a forgotten colon at the start',
      SOUND.replace('kind: base', 'kind base'),
      '"kind base" A colon is missing after `kind`. Write `kind: base`.',
    ],
    [
      'a forgotten space',
      SOUND.replace('kind: base', 'kind:base'),
      '"kind:base" A space is missing after the colon. Write `kind: base`.',
    ],
    [
      'a forgotten space at the end',
      SOUND.replace('depth: 560', 'depth:560'),
      '"depth:560" A space is missing after the colon. Write `depth: 560`.',
    ],
    [
      'keys in the column of the name',
      SOUND.replace('    kind: base\n    width: 600\n    depth: 560', '  kind: base\n  width: 600\n  depth: 560'),
      '"kind: base" The 3 lines from `kind` on belong to `sink` but start in the same column. Indent them by 2 more columns.',
    ],
    [
      'one key in the column of the name',
      SOUND.replace('    depth: 560', '  depth: 560'),
      '"depth: 560" The line of `depth` belongs to `sink` but starts in the same column. Indent it by 2 more columns.',
    ],
  ];
  test.each(cases)('%s', (_, text, wanted) => {
    const { told, repaired } = look(text);
    expect(told).toEqual([wanted]);
    expect(look(repaired).told).toEqual([]);
    expect(repaired.replace(' # wide\n', '')).toBe(SOUND);
  });

  test('CRLF lines are repaired alike', () => {
    const text = SOUND.replace('    width: 600', '      width: 600').replaceAll('\n', '\r\n');
    expect(look(text).repaired).toBe(SOUND.replaceAll('\n', '\r\n'));
  });

  test('a list under a key in the wrong column goes with it', () => {
    const text =
      'carcasses:\n  sink:\n  kind: base\n  width: 600\n  loose-shelves:\n    - 328\n  back: { how: none }\n  bar: { kind: wall, width: 800 }\n';
    const { told, repaired } = look(text);
    expect(told).toHaveLength(1);
    expect(repaired).toBe(
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n    loose-shelves:\n      - 328\n    back: { how: none }\n  bar: { kind: wall, width: 800 }\n',
    );
    expect(look(repaired).told).toEqual([]);
  });

  test('a name alone and one word with a colon inside', () => {
    const text = 'carcasses:\n  sink:\n    kind:base\n';
    const { told, repaired } = look(text);
    expect(told).toEqual(['"kind:base" A space is missing after the colon. Write `kind: base`.']);
    expect(repaired).toBe('carcasses:\n  sink:\n    kind: base\n');
  });
});

describe('a title with a colon', () => {
  const text = `title: Bath: upstairs\nshop: bench.shop.yaml # ours\n${SOUND}`;

  test('does not hide the shop that the head names', () => {
    const asked: string[] = [];
    const host = {
      readShop: (_: string, ref: string) => {
        asked.push(ref);
        return { ok: true as const, uri: 'file:///bench.shop.yaml', text: wholeShop('title: Bench\n') };
      },
    };
    const analysis = new Engine(host).analyse('file:///x.carcass.yaml', text);
    expect(asked).toEqual(['bench.shop.yaml']);
    expect(analysis.shop.title).toBe('Bench');
    expect(
      analysis
        .findings()
        .filter(({ carcass }) => carcass === null)
        .map(({ finding }) => finding.rule),
    ).toEqual(['yaml-syntax']);
  });

  test('is put in quotes', () => {
    expect(look(text.replace(/^shop.*\n/m, '')).repaired).toContain("title: 'Bath: upstairs'\n");
  });

  test('a broken head is not said to name no shop', () => {
    const analysis = engine().analyse('file:///x.carcass.yaml', text.replace(/^shop.*\n/m, ''));
    expect(analysis.findings().map(({ finding }) => finding.rule)).toEqual(['yaml-syntax']);
  });
});

describe('decimal commas', () => {
  const job = (line: string): string => `carcasses:\n  sink:\n    kind: base\n    width: 600\n    ${line}\n`;

  test.each([
    ['dowels: [53,5, 213, 405]', 'dowels: [53.5, 213, 405]', '53,5'],
    ['loose-shelves: [296,5]', 'loose-shelves: [296.5]', '296,5'],
    ['loose-shelves: [{ at: 360,5 }]', 'loose-shelves: [{ at: 360.5 }]', '360,5'],
    ['height: 720,5', 'height: 720.5', '720,5'],
  ])('%s', (line, wanted, on) => {
    const { told, repaired } = look(job(line));
    expect(told).toHaveLength(1);
    expect(told[0]).toContain(`"${on}"`);
    expect(told[0]).toMatch(/reads as two values|decimal comma/);
    expect(repaired).toBe(job(wanted));
  });

  test.each(['dowels: [53,213,405]', 'dowels: [53, 213, 405]', 'dowels: [53, 213,405]'])('%s is a list', (line) => {
    expect(look(job(line)).told.filter((words) => words.includes('comma'))).toEqual([]);
  });

  test.each([
    ['60cm', 'mm', '600'],
    ['60 cm', 'mm', '600'],
    ['60,25 cm', 'mm', '602.5'],
    ['0.6 m', 'mm', '600'],
    ['60 cm', 'in', '600 mm'],
  ])('%s in a file of %s is offered as %s', (written, unit, wanted) => {
    const text = `unit: ${unit}\ncarcasses:\n  sink:\n    kind: base\n    width: `;
    expect(look(`${text}${written}\n`).repaired).toBe(`${text}${wanted}\n`);
  });
});

test.each([
  ['  bar:\n    kind: wall\n', '  - kind: wall\n', '- kind: wall', 'sink'],
  ['    depth: 560', '    - 500', '- 500', 'width'],
])('a dash among keys is told once: %j, %j', (from, to, on, beside) => {
  const { told } = look(SOUND.replace(from, to));
  expect(told).toEqual([
    `"${on}" This line starts with a dash, like a list item, but stands beside the key \`${beside}\`. Start it with a name or a key and a colon, such as \`name:\`.`,
  ]);
});

test('a name between two columns is left to its owner: both are offered', () => {
  const text = SOUND.replace('  bar:\n    kind: wall\n    width: 800', '   bar:\n     kind: wall\n     width: 800');
  const analysis = engine().analyse('file:///x.carcass.yaml', text);
  const found = analysis.findings().filter(({ finding }) => finding.severity === 'error');
  expect(found.map(({ finding }) => finding.repairs.map(({ title }) => inWords(title)))).toEqual([
    ['Indent it like `kind`', 'Indent it like `sink`'],
  ]);
  const [one] = found;
  const edits = repairEdits(analysis, { carcass: one!.carcass, repair: one!.finding.repairs[1]! })!;
  expect(applyEdits(text, edits)).toBe(SOUND);
});
