import { describe, expect, test } from 'vitest';
import { type Client, covered, type Folder, wordsOf } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let count = 0;
session((one) => {
  ({ client, folder } = one);
});

const body = '    kind: base\n    width: 600\n';
const job = (lines: string): string => `unit: mm\ncarcasses:\n${lines}`;

interface BadInput {
  readonly name: string;
  readonly text: string;
  readonly rule: string;
  /** The words that the finding stands on. */
  readonly on?: string | RegExp;
}

const bad: readonly BadInput[] = [
  { name: 'an empty file', text: '', rule: 'nothing-yet' },
  { name: 'only a comment', text: '# nothing\n', rule: 'nothing-yet' },
  { name: 'no carcasses yet', text: 'carcasses:\n', rule: 'nothing-yet', on: 'carcasses' },
  { name: 'a list in the place of a job', text: '- a\n- b\n', rule: 'value-wrong' },
  { name: 'a word in the place of a job', text: 'hello\n', rule: 'value-wrong' },
  { name: 'tabs', text: job('  sink:\n\tkind: base\n\twidth: 600\n'), rule: 'yaml-syntax', on: /^\t/ },
  {
    name: 'an anchor that leads into itself',
    text: job('  sink: &a\n    kind: base\n    width: 600\n    back: *a\n'),
    rule: 'yaml-syntax',
    on: '*a',
  },
  { name: 'an alias of nothing', text: job('  sink: *gone\n'), rule: 'yaml-syntax', on: '*gone' },
  { name: 'a key written twice', text: job(`  sink:\n${body}    width: 700\n`), rule: 'name-duplicate', on: 'width' },
  {
    name: 'a carcass written twice',
    text: job(`  sink:\n${body}  sink:\n${body}`),
    rule: 'name-duplicate',
    on: 'sink',
  },
  {
    name: 'not a number',
    text: job('  sink:\n    kind: base\n    width: .nan\n'),
    rule: 'length-impossible',
    on: '.nan',
  },
  { name: 'NaN', text: job('  sink:\n    kind: base\n    width: NaN\n'), rule: 'length-impossible', on: 'NaN' },
  {
    name: 'without end',
    text: job('  sink:\n    kind: base\n    width: .inf\n'),
    rule: 'length-impossible',
    on: '.inf',
  },
  {
    name: 'a negative length',
    text: job('  sink:\n    kind: base\n    width: -600\n'),
    rule: 'length-impossible',
    on: '-600',
  },
  { name: 'nothing for a length', text: job('  sink:\n    kind: base\n    width:\n'), rule: 'value-wrong' },
  {
    name: 'an absurd length',
    text: job('  sink:\n    kind: base\n    width: 1e308\n'),
    rule: 'length-impossible',
    on: '1e308',
  },
  {
    name: 'a length of 400 digits',
    text: job(`  sink:\n    kind: base\n    width: ${'9'.repeat(400)}\n`),
    rule: 'length-impossible',
    on: /^9+$/,
  },
  {
    name: 'a division by nought',
    text: job('  sink:\n    kind: base\n    width: 23 5/0 in\n'),
    rule: 'length-impossible',
    on: '23 5/0 in',
  },
  {
    name: 'a missing shop file',
    text: `shop: gone.shop.yaml\n${job(`  sink:\n${body}`)}`,
    rule: 'shop-missing',
    on: 'gone.shop.yaml',
  },
  { name: 'an unclosed bracket', text: job('  sink: { kind: base, width: 600\n'), rule: 'yaml-syntax' },
  { name: 'a second document', text: `${job(`  sink:\n${body}`)}---\na: 1\n`, rule: 'yaml-syntax' },
  {
    name: 'too many shelves',
    text: job(`  sink:\n${body}    loose-shelves: 99999999999\n`),
    rule: 'value-wrong',
    on: '99999999999',
  },
  {
    name: 'control characters',
    text: job(`  sink:\n${body}    note: "a\u0000b\u0007"\n    depth: \u0001\n`),
    rule: 'length-impossible',
  },
  { name: 'a thousand levels', text: job(`  sink: ${'['.repeat(1000)}${']'.repeat(1000)}\n`), rule: 'yaml-syntax' },
];

describe('each has a finding at its place, and the server goes on', () => {
  for (const { name, text, rule, on } of bad) {
    test(name, async () => {
      count += 1;
      const uri = folder.uri(`bad-${count}.carcass.yaml`);
      const found = await client.open(uri, text);
      const one = found.find(({ code }) => code === rule);
      expect(one, JSON.stringify(found.map((one) => `${one.code}: ${wordsOf(one)}`))).toBeDefined();
      if (typeof on === 'string') expect(covered(text, one!.range)).toBe(on);
      else if (on !== undefined) expect(covered(text, one!.range)).toMatch(on);
      expect(found.map(({ code }) => code)).not.toContain('internal-fault');
      await everyFeatureAnswers(uri, text);
      await client.close(uri);
    });
  }

  test('a billion laughs', async () => {
    const levels = Array.from(
      { length: 30 },
      (_, level) => `l${level + 1}: &l${level + 1} [${Array<string>(10).fill(`*l${level}`).join(', ')}]`,
    );
    const text = `l0: &l0 [a, a]\n${levels.join('\n')}\n${job(`  sink:\n${body}`)}`;
    const found = await client.open(folder.uri('laughs.carcass.yaml'), text);
    expect(found.some(({ code, range }) => code === 'yaml-syntax' && range.start.line < 31)).toBe(true);
  });

  test('five megabytes', async () => {
    const block = `    kind: base\n    width: 600\n    note: ${'x'.repeat(200)}\n`;
    let text = job('');
    for (let index = 0; text.length < 5_000_000; index += 1) text += `  box-${index}:\n${block}`;
    const uri = folder.uri('large.carcass.yaml');
    const found = await client.open(uri, text);
    expect(found.length).toBeGreaterThan(0);
    expect(found.map(wordsOf).join(' ')).toMatch(/million|split/i);
    await everyFeatureAnswers(uri, text);
    await client.close(uri);
  });

  test('two megabytes on one line', async () => {
    const uri = folder.uri('long.carcass.yaml');
    const text = `carcasses: { ${'a: { kind: base, width: 600 }, '.repeat(60_000)} }\n`;
    expect((await client.open(uri, text)).length).toBeGreaterThan(0);
    await everyFeatureAnswers(uri, text);
    await client.close(uri);
  });

  test('a broken shop file', async () => {
    folder.write('broken.shop.yaml', 'boards: {{{\n\t- x\n');
    const text = `shop: broken.shop.yaml\n${job(`  sink:\n${body}`)}`;
    const found = await client.open(folder.uri('broken.carcass.yaml'), text);
    const one = found.find(({ code }) => code === 'shop-broken')!;
    expect(covered(text, one.range)).toBe('broken.shop.yaml');
  });

  for (const [name, text] of Object.entries({
    empty: '',
    tabs: 'boards:\n\ta: 1\n',
    list: '- 1\n',
    loop: 'a: &a [*a]\n',
    nan: 'boards:\n  a: { thickness: .nan }\n',
  })) {
    test(`a shop file of ${name}`, async () => {
      const uri = folder.uri(`${name}.shop.yaml`);
      const found = await client.open(uri, text, 'borewright-shop');
      if (text !== '') expect(found.length).toBeGreaterThan(0);
      await everyFeatureAnswers(uri, text);
    });
  }
});

describe('bad positions', () => {
  test('any position is answered', async () => {
    const uri = folder.uri('positions.carcass.yaml');
    await client.open(uri, job(`  sink:\n${body}`));
    for (const line of [-1, 0, 3, 1e9, 2 ** 40, 0.5]) {
      for (const character of [-1, 0, 1e9, 2 ** 40, 1.5]) {
        const position = { line, character };
        await client.ask('textDocument/hover', { textDocument: { uri }, position });
        await client.ask('textDocument/completion', { textDocument: { uri }, position });
        await client.codeActions(uri, { start: position, end: position });
        await client.drawing({ uri, position });
      }
    }
  });

  test('a document that is not open has no answers, and no fault', async () => {
    const uri = folder.uri('never.carcass.yaml');
    expect(await client.hover(uri, { line: 0, character: 0 })).toBeNull();
    expect(await client.symbols(uri)).toBeNull();
    expect(await client.ask('borewright/drawing', { uri: 7 })).toBeNull();
  });
});

/** The server answers on all channels, whatever the text. */
async function everyFeatureAnswers(uri: string, text: string): Promise<void> {
  const lines = text.split('\n');
  const last = { line: lines.length - 1, character: lines.at(-1)!.length };
  const middle = { line: Math.floor(lines.length / 2), character: 3 };
  for (const position of [{ line: 0, character: 0 }, middle, last]) {
    await client.hover(uri, position);
    await client.completion(uri, position);
    await client.drawing({ uri, position });
  }
  await client.symbols(uri);
  await client.codeActions(uri, { start: { line: 0, character: 0 }, end: last });
  await client.codeActions(uri, { start: { line: 0, character: 0 }, end: last }, ['source.fixAll']);
}
