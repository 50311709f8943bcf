import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type {
  DocumentHighlight,
  DocumentLink,
  FoldingRange,
  Location,
  SelectionRange,
  SymbolInformation,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { Engine } from '../../shared-core/engine.js';
import { mentionsInShop } from '../../shared-core/mentions/files.js';
import { type Client, covered, demo, editsOf, type Folder } from './client.js';
import { session } from './session.js';

const KITCHEN = demo('kitchen.carcass.yaml');
const STUDIO = demo('studio.carcass.yaml').replace(/^shop:.*$/m, 'shop: "shed.shop.yaml"');
const SHOP = demo('shed.shop.yaml');

let client: Client;
let folder: Folder;
let kitchen: string;
let studio: string;
let shop: string;
session(async (one) => {
  ({ client, folder } = one);
  shop = folder.write('shed.shop.yaml', SHOP);
  studio = folder.write('studio.carcass.yaml', STUDIO);
  kitchen = folder.uri('kitchen.carcass.yaml');
  await client.open(kitchen, KITCHEN);
});

const textOf = (uri: string): string => (uri === kitchen ? client.text(uri) : readFileSync(fileURLToPath(uri), 'utf8'));
const words = ({ uri, range }: Location): string =>
  `${uri.slice(uri.lastIndexOf('/') + 1)}: ${covered(textOf(uri), range)}`;

test('a board leads to its line in the shop file, which is not open', async () => {
  const position = client.at(kitchen, 'birch-19', 3);
  const found = await client.ask<Location[]>('textDocument/definition', { textDocument: { uri: kitchen }, position });
  expect(found.map(words)).toEqual(['shed.shop.yaml: birch-19']);
  expect(found[0]!.range.start.line).toBe(SHOP.slice(0, SHOP.indexOf('  birch-19:')).split('\n').length - 1);
});

test('the name of the shop file leads to the file, as a link too', async () => {
  const position = client.at(kitchen, 'shed.shop.yaml', 1);
  const found = await client.ask<Location[]>('textDocument/definition', { textDocument: { uri: kitchen }, position });
  expect(found.map(({ uri }) => uri)).toEqual([shop]);
  const links = await client.ask<DocumentLink[]>('textDocument/documentLink', { textDocument: { uri: kitchen } });
  expect(links.map(({ target, range }) => [target, covered(KITCHEN, range)])).toEqual([[shop, 'shed.shop.yaml']]);
});

test('references run through the shop file and every job that names it', async () => {
  const position = client.at(kitchen, 'band: white-1', 8);
  const ask = async (includeDeclaration: boolean): Promise<string[]> =>
    (
      await client.ask<Location[]>('textDocument/references', {
        textDocument: { uri: kitchen },
        position,
        context: { includeDeclaration },
      })
    ).map(words);
  const all = await ask(true);
  expect(all.every((one) => one.endsWith(': white-1'))).toBe(true);
  const count = (text: string): number => [...text.matchAll(/white-1(?![\w])/g)].length;
  // In both shop and jobs the name stands nowhere but where it is meant, 'white-16' left aside.
  expect(all.filter((one) => one.startsWith('shed'))).toHaveLength(count(SHOP));
  expect(all.filter((one) => one.startsWith('kitchen'))).toHaveLength(count(KITCHEN));
  expect(all.filter((one) => one.startsWith('studio'))).toHaveLength(count(STUDIO));
  expect(await ask(false)).toHaveLength(all.length - 1);
});

test('highlights are of one file', async () => {
  const position = client.at(kitchen, 'birch-2\n', 1);
  const found = await client.ask<DocumentHighlight[]>('textDocument/documentHighlight', {
    textDocument: { uri: kitchen },
    position,
  });
  expect(found.length).toBe([...KITCHEN.matchAll(/birch-2(?!\w)/g)].length);
  for (const { range } of found) expect(covered(KITCHEN, range)).toBe('birch-2');
});

const rename = (uri: string, piece: string, newName: string): Promise<WorkspaceEdit> =>
  client.ask('textDocument/rename', { textDocument: { uri }, position: client.at(uri, piece, 1), newName });

test('a renamed board changes in all three files, open or not, quoted where it has to be', async () => {
  const edit = await rename(kitchen, 'birch-19', 'birch: 19 mm');
  const files = edit.documentChanges!.map((change) => ('textDocument' in change ? change.textDocument : null));
  expect(files.map((file) => [file!.uri, file!.version])).toEqual([
    [kitchen, 1],
    [shop, null],
    ...(STUDIO.includes('birch-19') ? [[studio, null]] : []),
  ]);
  const after = client.applied(kitchen, edit);
  expect(after).toBe(KITCHEN.replaceAll('birch-19', '"birch: 19 mm"'));
  const shopAfter = TextDocument.applyEdits(TextDocument.create(shop, 'x', 0, SHOP), editsOf(shop, edit));
  expect(shopAfter).toBe(SHOP.replaceAll('birch-19', '"birch: 19 mm"'));
});

test('an editor that counts the versions of a text from 0 gets edits of that version', async () => {
  const uri = folder.uri('from-nought.carcass.yaml');
  const text = 'carcasses:\n  a: { kind: base, width: 600 }\n  b: { like: a }\n';
  await client.connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'borewright-job', version: 0, text },
  });
  const edit = await client.ask<WorkspaceEdit>('textDocument/rename', {
    textDocument: { uri },
    position: { line: 1, character: 2 },
    newName: 'oven',
  });
  expect(edit.documentChanges).toEqual([expect.objectContaining({ textDocument: { uri, version: 0 } })]);
  await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
});

test('a name that is taken, empty or has a meaning is refused with the reason', async () => {
  await expect(rename(kitchen, 'birch-19', 'white-16')).rejects.toThrow('There is a board called ‘white-16’ already.');
  await expect(rename(kitchen, 'birch-19', ' ')).rejects.toThrow('A board needs a name.');
  await expect(rename(kitchen, 'birch-2\n', 'none')).rejects.toThrow('‘none’ means nothing at all');
  const position = client.at(kitchen, 'shed.shop.yaml', 1);
  await expect(client.ask('textDocument/prepareRename', { textDocument: { uri: kitchen }, position })).rejects.toThrow(
    'Rename the file ‘shed.shop.yaml’ itself',
  );
});

test('what the built-in shop describes cannot be renamed, nor what nobody describes', async () => {
  const uri = folder.uri('alone.carcass.yaml');
  await client.open(uri, 'carcasses:\n  a:\n    kind: base\n    width: 600\n    board: board-18\n');
  await expect(rename(uri, 'board-18', 'x')).rejects.toThrow(
    '‘board-18’ is not described in a file that can be changed.',
  );
  const other = folder.uri('other.carcass.yaml');
  await client.open(other, 'shop: shed.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    board: oak\n');
  await expect(rename(other, 'oak', 'x')).rejects.toThrow('No board is called ‘oak’.');
  await client.close(uri);
  await client.close(other);
});

test('the bores are the same after any name of the shop is changed everywhere', async () => {
  await client.open(shop, SHOP, 'borewright-shop');
  const given = mentionsInShop(SHOP).filter((mention) => mention.gives);
  expect(given.length).toBeGreaterThan(25);
  const bored = (jobText: string, shopText: string): string => {
    const engine = new Engine({ readShop: () => ({ ok: true, uri: shop, text: shopText }) });
    return JSON.stringify(
      engine.analyse(kitchen, jobText).carcasses.map(({ boring }) => boring),
      (key, value: unknown) => (key === 'place' || key === 'start' || key === 'end' ? null : value),
    );
  };
  const before = bored(KITCHEN, SHOP);
  const jobDocument = TextDocument.create(kitchen, 'x', 1, KITCHEN);
  const shopDocument = TextDocument.create(shop, 'x', 1, SHOP);
  for (const { start, name } of given) {
    const edit = await client.ask<WorkspaceEdit>('textDocument/rename', {
      textDocument: { uri: shop },
      position: shopDocument.positionAt(start),
      newName: 'Q7, [new]',
    });
    const jobAfter = TextDocument.applyEdits(jobDocument, editsOf(kitchen, edit));
    const shopAfter = TextDocument.applyEdits(shopDocument, editsOf(shop, edit));
    expect(shopAfter).not.toBe(SHOP);
    expect(bored(jobAfter, shopAfter).replaceAll('Q7, [new]', name), name).toBe(before);
  }
  await client.close(shop);
});

test('a shop file that is renamed or moved, alone or with its folder, is followed by its jobs', async () => {
  const ask = (oldUri: string, newUri: string): Promise<WorkspaceEdit | null> =>
    client.ask('workspace/willRenameFiles', { files: [{ oldUri, newUri }] });
  const line = (edit: WorkspaceEdit | null): string[] =>
    edit === null ? [] : editsOf(kitchen, edit).map(({ newText }) => newText);
  expect(line(await ask(shop, folder.uri('new name.shop.yaml')))).toEqual(['new name.shop.yaml']);
  expect(line(await ask(shop, folder.uri('shops/shed.shop.yaml')))).toEqual(['shops/shed.shop.yaml']);
  expect(line(await ask(kitchen, folder.uri('jobs/2026/kitchen.carcass.yaml')))).toEqual(['../../shed.shop.yaml']);
  // Both move together, so the way between them stays.
  expect(await ask(folder.uri('.').replace(/\/\.?$/, ''), folder.uri('x'))).toBeNull();
  expect(await ask(folder.uri('other.shop.yaml'), folder.uri('more.shop.yaml'))).toBeNull();
});

test('names of every file are found by their letters', async () => {
  const found = await client.ask<SymbolInformation[]>('workspace/symbol', { query: 'brch' });
  expect(found.map(({ name, containerName }) => [name, containerName])).toContainEqual(['birch-19', 'shed.shop.yaml']);
  const stop = await client.ask<SymbolInformation[]>('workspace/symbol', { query: 'near-left' });
  expect(stop.map(({ containerName }) => containerName)).toEqual(['shed.shop.yaml, borer-up']);
  const own = await client.ask<SymbolInformation[]>('workspace/symbol', { query: 'tray-base' });
  expect(own.map(({ location }) => location.uri)).toEqual([kitchen]);
});

test('a selection grows from the word to the entry, the carcass and the file', async () => {
  const [range] = await client.ask<SelectionRange[]>('textDocument/selectionRange', {
    textDocument: { uri: kitchen },
    positions: [client.at(kitchen, 'width: 600', 8)],
  });
  const texts: string[] = [];
  for (let at: SelectionRange | undefined = range; at !== undefined; at = at.parent)
    texts.push(covered(KITCHEN, at.range));
  expect(texts.slice(0, 2)).toEqual(['600', 'width: 600']);
  expect(texts.at(-1)).toBe(KITCHEN);
  expect(texts.some((text) => text.startsWith('sink:') && !text.includes('corner-base'))).toBe(true);
  texts.forEach((text, i) => expect(i === 0 || text.includes(texts[i - 1]!)).toBe(true));
});

test('carcasses fold at their names', async () => {
  const folds = await client.ask<FoldingRange[]>('textDocument/foldingRange', { textDocument: { uri: kitchen } });
  const line = client.at(kitchen, '  sink:').line;
  expect(folds.find(({ startLine }) => startLine === line)).toMatchObject({ endLine: line + 4 });
});
