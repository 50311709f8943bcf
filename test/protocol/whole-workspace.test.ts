import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type {
  DocumentDiagnosticReport,
  FullDocumentDiagnosticReport,
  WorkspaceDiagnosticReport,
} from 'vscode-languageserver-protocol';
import { CAPABILITIES, Client, Folder } from './client.js';

const SHELF_OFF = 'carcasses:\n  a: { kind: base, width: 600, loose-shelves: [330] }\n';
const WIDTH_OFF = 'carcasses:\n  a: { kind: base, width: wide }\n';
const SOUND = 'carcasses:\n  a: { kind: base, width: 600 }\n';

let client: Client;
let folder: Folder;
/** What the client keeps as its settings. */
let settings: object;
const progress: string[] = [];
/** Whether the client shows it. */
let showsProgress = true;

async function start(
  more: object = {},
  options: object = {},
  folders: readonly string[] | string = [folder.uri('one'), folder.uri('two')],
): Promise<void> {
  client = await Client.start(
    {
      ...CAPABILITIES,
      ...more,
      workspace: {
        ...CAPABILITIES.workspace,
        configuration: true,
        didChangeConfiguration: { dynamicRegistration: true },
        workspaceFolders: true,
      },
      window: { workDoneProgress: true },
    },
    options,
    undefined,
    folders,
    (connection) => {
      connection.onRequest('workspace/configuration', () => [settings]);
      connection.onRequest('window/workDoneProgress/create', () => {
        if (!showsProgress) throw new Error('not now');
        return null;
      });
      connection.onNotification('$/progress', ({ value }: { value: { kind: string } }) => {
        progress.push(value.kind);
      });
    },
  );
}
const set = async (now: object): Promise<void> => {
  settings = now;
  await client.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
};
const put = (name: string, text: string): string => {
  const path = join(folder.path, name);
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, text);
  return pathToFileURL(path).href;
};
const codes = (uri: string): readonly unknown[] =>
  (client.diagnostics.get(uri)?.diagnostics ?? []).map(({ code }) => code).filter((code) => code !== 'shop-neutral');
const ON = { findings: { wholeWorkspace: true } };

beforeEach(() => {
  folder = new Folder();
  settings = {};
  progress.length = 0;
  showsProgress = true;
});
afterEach(async () => {
  expect(client.errors).toEqual([]);
  expect(await client.stop()).toBe(0);
  folder.close();
});

describe('findings of files that are not open', () => {
  test('are told of every folder while that is set, and taken back when it is not', async () => {
    const uris = [
      put('one/shelf.carcass.yaml', SHELF_OFF),
      put('two/deep/below/width.carcass.yaml', WIDTH_OFF),
      put('two/boards.shop.yaml', 'boards: [1]\n'),
    ] as const;
    put('two/node_modules/x.carcass.yaml', WIDTH_OFF);
    for (let index = 0; index < 4; index += 1) put(`one/sound-${index}.carcass.yaml`, SOUND);
    await start();
    const open = put('one/open.carcass.yaml', SOUND);
    await client.open(open, SOUND);
    expect([...client.diagnostics.keys()]).toEqual([open]);
    await set(ON);
    await client.until(() => uris.every((uri) => codes(uri).length > 0), 'findings of all files');
    expect(uris.map(codes)).toEqual([['shelf-off-grid'], ['length-impossible'], ['value-wrong']]);
    await client.until(() => progress.includes('end'), 'the end of the progress');
    expect(progress[0]).toBe('begin');
    expect([...client.diagnostics.keys()].some((uri) => uri.includes('node_modules'))).toBe(false);
    await set({});
    await client.until(() => uris.every((uri) => codes(uri).length === 0), 'nothing of files that are not open');
  });

  test('are told of the one folder that an older client names', async () => {
    const uri = put('one/shelf.carcass.yaml', SHELF_OFF);
    await start({}, {}, folder.uri('one'));
    await set(ON);
    await client.until(() => codes(uri).length > 0, 'findings of a file in the folder');
    expect(codes(uri)).toEqual(['shelf-off-grid']);
  });

  test('are told to a client that refuses to show how far the search has come', async () => {
    showsProgress = false;
    const uri = put('one/width.carcass.yaml', WIDTH_OFF);
    for (let index = 0; index < 5; index += 1) put(`one/sound-${index}.carcass.yaml`, SOUND);
    await start();
    await set(ON);
    await client.until(() => codes(uri).length > 0, 'the finding');
    expect(progress).toEqual([]);
  });

  test('follow the disk, and those that are open while they are', async () => {
    const uri = put('one/shelf.carcass.yaml', SHELF_OFF);
    const other = put('two/other.carcass.yaml', SOUND);
    await start();
    await set(ON);
    await client.until(() => codes(uri).length > 0, 'the finding on the disk');
    put('two/other.carcass.yaml', WIDTH_OFF);
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri: other, type: 2 }] });
    await client.until(() => codes(other).length > 0, 'the finding of the changed file');
    // In the editor the shelf is on its pitch; on the disk it is not.
    await client.open(uri, SOUND);
    expect(codes(uri)).toEqual([]);
    await client.close(uri);
    await client.until(() => codes(uri).length > 0, 'the finding on the disk again');
  });

  test('follow the shop file that is typed in', async () => {
    const job = put(
      'one/job.carcass.yaml',
      'shop: own.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, board: oak }\n',
    );
    const text = 'boards:\n  oak: { thickness: 19 }\n';
    const shop = put('one/own.shop.yaml', text);
    await start();
    await set(ON);
    await client.open(shop, text, 'borewright-shop');
    await client.change(shop, [{ text: text.replace('oak', 'ash') }]);
    await client.until(() => codes(job).includes('board-unknown'), 'the board that is gone');
  });

  test('go with their folder', async () => {
    const uri = put('two/width.carcass.yaml', WIDTH_OFF);
    await start();
    await set(ON);
    await client.until(() => codes(uri).length > 0, 'the finding');
    await client.connection.sendNotification('workspace/didChangeWorkspaceFolders', {
      event: { added: [], removed: [{ uri: folder.uri('two'), name: 'two' }] },
    });
    await client.until(() => codes(uri).length === 0, 'nothing of a folder that is gone');
  });
});

describe('a severity that is set', () => {
  test('counts for every finding of its rule, at any depth, and off turns repairs off too', async () => {
    await start();
    const uri = put('one/job.carcass.yaml', SHELF_OFF);
    const [before] = (await client.open(uri, SHELF_OFF)).filter(({ code }) => code === 'shelf-off-grid');
    expect(before?.severity).not.toBe(1);
    const severity = (choice: string): object => ({ findings: { severity: { 'shelf-off-grid': choice } } });
    const now = (): number | undefined =>
      client.diagnostics.get(uri)?.diagnostics.find(({ code }) => code === 'shelf-off-grid')?.severity;
    for (const [choice, wanted] of [
      ['error', 1],
      ['warning', 2],
      ['information', 3],
      ['off', undefined],
      ['loud', before?.severity],
    ] as const) {
      await set(severity(choice));
      await client.until(() => now() === wanted, `severity ${choice}`);
    }
    await set(severity('off'));
    await client.until(() => now() === undefined, 'severity off');
    const whole = { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } };
    expect(await client.codeActions(uri, whole, ['quickfix', 'source.fixAll'])).toEqual([]);
  });

  test('may be said at the start by a client that keeps no settings', async () => {
    client = await Client.start(CAPABILITIES, { settings: { findings: { severity: { 'shelf-off-grid': 'off' } } } });
    const found = await client.open(put('one/job.carcass.yaml', SHELF_OFF), SHELF_OFF);
    expect(found.map(({ code }) => code)).not.toContain('shelf-off-grid');
  });
});

describe('a client that asks for findings', () => {
  const PULLS = { textDocument: { ...CAPABILITIES.textDocument, diagnostic: { dynamicRegistration: false } } };
  const pull = (uri: string, previousResultId?: string): Promise<DocumentDiagnosticReport> =>
    client.ask('textDocument/diagnostic', { textDocument: { uri }, previousResultId });

  test('gets them all, is told when nothing changed, and is sent none', async () => {
    await start(PULLS);
    expect(client.capabilities.diagnosticProvider).toMatchObject({ interFileDependencies: true });
    const uri = put('one/job.carcass.yaml', SHELF_OFF);
    await client.opened(uri, SHELF_OFF);
    const first = (await pull(uri)) as FullDocumentDiagnosticReport;
    expect(first.kind).toBe('full');
    expect(first.items.map(({ code }) => code)).toContain('shelf-off-grid');
    expect(await pull(uri, first.resultId)).toEqual({ kind: 'unchanged', resultId: first.resultId });
    await client.type(uri, [{ text: SOUND }]);
    const second = (await pull(uri, first.resultId)) as FullDocumentDiagnosticReport;
    expect(second.items.map(({ code }) => code)).toEqual(['shop-neutral']);
    expect(client.diagnostics.size).toBe(0);
  });

  test('asks for the whole workspace', async () => {
    const uri = put('two/width.carcass.yaml', WIDTH_OFF);
    settings = ON;
    await start(PULLS);
    await client.opened(put('one/open.carcass.yaml', SOUND), SOUND);
    const ask = (previousResultIds: object[]): Promise<WorkspaceDiagnosticReport> =>
      client.ask('workspace/diagnostic', { previousResultIds });
    let items: WorkspaceDiagnosticReport['items'] = [];
    await client.until(() => true, 'settings');
    for (let tries = 0; items.length === 0 && tries < 100; tries += 1) items = (await ask([])).items;
    expect(items.map((one) => [one.uri, one.kind])).toEqual([[uri, 'full']]);
    const again = await ask([{ uri, value: items[0]!.resultId }]);
    expect(again.items.map(({ kind }) => kind)).toEqual(['unchanged']);
    // What it was told is taken back where the whole workspace is wanted no more.
    await set({});
    const told = [{ uri, value: again.items[0]!.resultId! }];
    let back: object | undefined;
    for (let tries = 0; tries < 100 && !JSON.stringify(back ?? null).includes('[]'); tries += 1)
      [back] = (await ask(told)).items;
    expect(back).toMatchObject({ uri, kind: 'full', items: [] });
  });

  test('is sent them where it says so', async () => {
    await start(PULLS, { diagnostics: 'push' });
    expect(client.capabilities.diagnosticProvider).toBeUndefined();
    const uri = put('one/job.carcass.yaml', SHELF_OFF);
    expect((await client.open(uri, SHELF_OFF)).map(({ code }) => code)).toContain('shelf-off-grid');
  });
});
