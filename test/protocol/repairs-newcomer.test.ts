import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { CodeAction, TextDocumentEdit } from 'vscode-languageserver-protocol';
import { NEUTRAL_SHOP_TEXT } from '../../shared-core/shop/neutral-text.js';
import { CAPABILITIES, Client, type Folder } from './client.js';
import { session } from './session.js';

// What somebody writes who has never seen the language, and what the editor offers him.

const CREATES = {
  ...CAPABILITIES,
  workspace: {
    ...CAPABILITIES.workspace,
    workspaceEdit: { documentChanges: true, resourceOperations: ['create', 'rename', 'delete'] },
  },
};
let client: Client;
let folder: Folder;
let count = 0;
session(
  (one) => {
    ({ client, folder } = one);
  },
  () => Client.start(CREATES),
);
const whole = { start: { line: 0, character: 0 }, end: { line: 1e6, character: 0 } };

/** The offers of a text, and the text after each by its title. */
async function offers(text: string, name = 'carcass'): Promise<ReadonlyMap<string, string>> {
  count += 1;
  const uri = folder.uri(`job-${count}.${name}.yaml`);
  await client.open(uri, text, name === 'shop' ? 'borewright-shop' : 'borewright-job');
  const actions = await client.codeActions(uri, whole, ['quickfix']);
  return new Map(actions.map((action) => [action.title, client.applied(uri, action.edit!)]));
}

async function rulesOf(text: string): Promise<readonly unknown[]> {
  count += 1;
  const found = await client.open(folder.uri(`after-${count}.carcass.yaml`), text);
  return found.filter(({ severity }) => severity === 1).map(({ code }) => code);
}

describe('a key that is written twice', () => {
  const job = (lines: string): string => `carcasses:\n  sink:\n    kind: base\n${lines}    depth: 560\n`;

  test('is taken out, this one or the first', async () => {
    const text = job('    width: 600 # as drawn\n    width: 700 # as built\n');
    const offered = await offers(text);
    expect(offered.get('Remove this ‘width’')).toBe(job('    width: 600 # as drawn\n'));
    expect(offered.get('Keep this ‘width’ and remove the first')).toBe(job('    width: 700 # as built\n'));
  });

  test('is taken out with all that stands below it, deep in a carcass and in brackets', async () => {
    const deep = job('    width: 600\n    back: { how: none, how: groove }\n');
    expect((await offers(deep)).get('Remove this ‘how’')).toBe(deep.replace(', how: groove', ''));
    expect((await offers(deep)).get('Keep this ‘how’ and remove the first')).toBe(deep.replace('how: none, ', ''));
    const long = job('    width: 600\n    loose-shelves:\n      - 328\n      - 488\n    loose-shelves: 3\n');
    const after = (await offers(long)).get('Keep this ‘loose-shelves’ and remove the first');
    expect(after).toBe(job('    width: 600\n    loose-shelves: 3\n'));
  });

  test('of the third only the third, of a name its own name too', async () => {
    const shop = 'boards:\n  oak: { thickness: 19 }\n  oak: { thickness: 16 }\n  oak: { thickness: 18 }\n';
    const offered = await offers(shop, 'shop');
    expect(offered.get('Rename to oak-2')).toBeDefined();
    expect([...offered.values()]).toContain(shop.replace('  oak: { thickness: 18 }\n', ''));
    expect([...offered.values()]).toContain(shop.replace('oak: { thickness: 18', 'oak-2: { thickness: 18'));
  });

  test('two carcasses of one name', async () => {
    const text = job('    width: 600\n') + '  sink:\n    kind: wall\n    width: 600\n';
    const after = (await offers(text)).get('Name it sink-2')!;
    expect(after).toBe(text.replace('  sink:\n    kind: wall', '  sink-2:\n    kind: wall'));
    expect(await rulesOf(after)).toEqual([]);
  });

  test('in the tail of a job', async () => {
    const text = 'unit: mm\n' + job('    width: 600\n') + 'unit: in\n';
    expect((await offers(text)).get('Remove this ‘unit’')).toBe('unit: mm\n' + job('    width: 600\n'));
  });
});

describe('a list where a map belongs', () => {
  test.each([
    [
      'the keys of a carcass',
      'carcasses:\n  sink:\n    - kind: base # by the window\n    - width: 600\n',
      'carcasses:\n  sink:\n      kind: base # by the window\n      width: 600\n',
    ],
    [
      'carcasses with a name each',
      'carcasses:\n  - name: sink # left\n    kind: base\n    width: 600\n  - name: bar\n    kind: wall\n    width: 600\n',
      'carcasses:\n  sink: # left\n    kind: base\n    width: 600\n  bar:\n    kind: wall\n    width: 600\n',
    ],
    [
      'carcasses below their names',
      'carcasses:\n  - sink:\n      kind: base\n      width: 600\n',
      'carcasses:\n    sink:\n      kind: base\n      width: 600\n',
    ],
    [
      'the doors of a carcass, which may be a word',
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n    doors:\n      - hung: left\n      - gap: 3\n',
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n    doors:\n        hung: left\n        gap: 3\n',
    ],
    [
      'defaults',
      'defaults:\n  - depth: 560\n  - height: 720\ncarcasses:\n  sink: { kind: base, width: 600 }\n',
      'defaults:\n    depth: 560\n    height: 720\ncarcasses:\n  sink: { kind: base, width: 600 }\n',
    ],
  ])('%s', async (_, text, wanted) => {
    const after = [...(await offers(text)).values()];
    expect(after).toContain(wanted);
    expect(await rulesOf(wanted)).toEqual([]);
  });

  test('boards of a shop', async () => {
    const after = await offers('boards:\n  - name: oak\n    thickness: 19\n', 'shop');
    expect(after.get('Write the name in place of the dash')).toBe('boards:\n  oak:\n    thickness: 19\n');
  });

  test('nothing is offered where keys would meet', async () => {
    const offered = await offers('carcasses:\n  sink:\n    - kind: base\n    - kind: wall\n');
    expect([...offered.keys()].filter((title) => title.includes('dash'))).toEqual([]);
  });
});

test('tabs become spaces, in a carcass and in a whole job', async () => {
  const text = 'carcasses:\n\tsink:\n\t\tkind: base\n\t\twidth: 600\n';
  const after = (await offers(text)).get('Indent with spaces, two for each tab')!;
  expect(after).toBe(text.replaceAll('\t', '  '));
  expect(await rulesOf(after)).toEqual([]);
});

test.each([
  ['shelves: 2', 'Rename to loose-shelves', 'loose-shelves: 2'],
  ['shelf: 2', 'Rename to loose-shelves', 'loose-shelves: 2'],
  ['hight: 720', 'Rename to height', 'height: 720'],
  ['widht: 720', 'Rename to width', null],
  ['worktop: 2', 'Remove ‘worktop’', ''],
])('`%s` leads to the right key', async (line, title, wanted) => {
  const text = (own: string): string => `carcasses:\n  sink:\n    kind: base\n    width: 600\n${own}`;
  const offered = await offers(text(`    ${line}\n`));
  if (wanted === null) expect([...offered.keys()]).not.toContain(title);
  else expect(offered.get(title)).toBe(text(wanted === '' ? '' : `    ${wanted}\n`));
});

describe('carcasses in a list without names', () => {
  test.each([
    [
      'below their key',
      'carcasses:\n  - kind: base # left\n    width: 600\n\n  - kind: wall\n    width: 400\n',
      'carcasses:\n  carcass-1:\n    kind: base # left\n    width: 600\n\n  carcass-2:\n    kind: wall\n    width: 400\n',
    ],
    [
      'in the column of their key',
      'carcasses:\n- kind: base\n  width: 600\n  # and\n  loose-shelves:\n    - 328\n- { kind: base, width: 500 }\n',
      'carcasses:\n  carcass-1:\n    kind: base\n    width: 600\n    # and\n    loose-shelves:\n      - 328\n  carcass-2: { kind: base, width: 500 }\n',
    ],
    [
      'with other ends of lines',
      'carcasses:\r\n  - kind: base\r\n    width: 600\r\n  - kind: base\r\n    width: 500\r\n',
      'carcasses:\r\n  carcass-1:\r\n    kind: base\r\n    width: 600\r\n  carcass-2:\r\n    kind: base\r\n    width: 500\r\n',
    ],
  ])('get some where they stand %s', async (_, text, named) => {
    const offered = await offers(text);
    expect(offered.get('Name them carcass-1 and carcass-2')).toBe(named);
    expect(await rulesOf(named)).toEqual([]);
  });

  test('get none where a name stands there, or an item is no carcass', async () => {
    for (const text of [
      'carcasses:\n  - name: sink\n    kind: base\n    width: 600\n',
      'carcasses:\n  - base\n  - wall\n',
    ]) {
      const titles = [...(await offers(text)).keys()];
      expect(titles.filter((title) => /^Name /.test(title))).toEqual([]);
    }
  });
});

describe('a shop file that is not there', () => {
  const job = 'shop: bench.shop.yaml\ncarcasses:\n  sink: { kind: base, width: 600 }\n';
  const creations = async (uri: string): Promise<CodeAction[]> =>
    (await client.codeActions(uri, whole, ['quickfix'])).filter(({ title }) => title.startsWith('Create'));

  test('is created where its ending is left out, and the job gets its whole name', async () => {
    const uri = folder.uri('bare.carcass.yaml');
    const text = job.replace('bench.shop.yaml', 'attic');
    await client.open(uri, text);
    const [action] = await creations(uri);
    expect(action!.title).toBe('Create attic.shop.yaml from the built-in shop');
    const [create, write, name] = action!.edit!.documentChanges!;
    expect(create).toMatchObject({ kind: 'create', uri: folder.uri('attic.shop.yaml') });
    expect((write as TextDocumentEdit).edits).toMatchObject([{ newText: NEUTRAL_SHOP_TEXT }]);
    expect(client.applied(uri, { documentChanges: [name as TextDocumentEdit] })).toBe(
      job.replace('bench.shop.yaml', 'attic.shop.yaml'),
    );
    folder.write('attic.shop.yaml', NEUTRAL_SHOP_TEXT);
    const after = await client.open(uri, job.replace('bench.shop.yaml', 'attic.shop.yaml'));
    expect(after.map(({ code }) => code)).not.toContain('shop-missing');
  });

  test('is created from the built-in shop, beside the job', async () => {
    const uri = folder.uri('lonely.carcass.yaml');
    const found = await client.open(uri, job);
    expect(found.map(({ code }) => code)).toContain('shop-missing');
    const [action] = await creations(uri);
    expect(action).toMatchObject({
      title: 'Create bench.shop.yaml from the built-in shop',
      diagnostics: [{ code: 'shop-missing' }],
    });
    const [create, write] = action!.edit!.documentChanges!;
    const shop = folder.uri('bench.shop.yaml');
    expect(create).toEqual({ kind: 'create', uri: shop, options: { overwrite: false, ignoreIfExists: false } });
    const { edits, textDocument } = write as TextDocumentEdit;
    expect(textDocument.uri).toBe(shop);
    const [edit] = edits;
    expect(edit).toMatchObject({ newText: NEUTRAL_SHOP_TEXT });
    // As an editor would: the file is there, and the job is read with it.
    folder.write('bench.shop.yaml', NEUTRAL_SHOP_TEXT);
    expect(readFileSync(join(folder.path, 'bench.shop.yaml'), 'utf8')).toBe(NEUTRAL_SHOP_TEXT);
    expect((await client.open(uri, job)).map(({ code }) => code)).not.toContain('shop-missing');
    expect(await creations(uri)).toEqual([]);
    folder.remove('bench.shop.yaml');
  });

  test('is not offered for what is no shop file, nor of a job that is not saved', async () => {
    const odd = folder.uri('odd.carcass.yaml');
    await client.open(odd, job.replace('bench.shop.yaml', '/etc/shop'));
    expect(await creations(odd)).toEqual([]);
    await client.open('untitled:new.carcass.yaml', job);
    expect(await creations('untitled:new.carcass.yaml')).toEqual([]);
  });
});

test('a client that cannot make files is offered none', async () => {
  const plain = await Client.start();
  const uri = folder.uri('plain.carcass.yaml');
  await plain.open(uri, 'shop: bench.shop.yaml\ncarcasses:\n  sink: { kind: base, width: 600 }\n');
  const actions = await plain.codeActions(uri, whole, ['quickfix']);
  expect(actions.filter(({ title }) => title.startsWith('Create'))).toEqual([]);
  expect(await plain.stop()).toBe(0);
});
