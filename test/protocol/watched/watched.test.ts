import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { CAPABILITIES, Client, Folder, root, wordsOf } from '../client.js';

// The real supervisor over a server whose disk never comes back from one shop file, as a text would that never ends.
let bundles: string;
let folder: Folder;
let client: Client;

beforeAll(async () => {
  bundles = mkdtempSync(join(tmpdir(), 'borewright-watched-'));
  for (const entry of ['main', 'thread']) {
    await build({
      absWorkingDir: root,
      entryPoints: [`test/protocol/watched/${entry}.ts`],
      outfile: join(bundles, `${entry}.cjs`),
      bundle: true,
      platform: 'node',
      format: 'cjs',
      target: 'node20',
      define: { 'import.meta.url': '__moduleUrl' },
      banner: { js: "const __moduleUrl = require('node:url').pathToFileURL(__filename).href;" },
      logLevel: 'error',
    });
  }
  folder = new Folder();
});
afterAll(() => {
  rmSync(bundles, { recursive: true, force: true });
  folder.close();
});
beforeEach(async () => {
  client = await Client.start(undefined, undefined, [join(bundles, 'main.cjs'), '--stdio']);
});
afterEach(() => {
  client.process.kill('SIGKILL');
});

const job = (shop: string): string =>
  `${shop === '' ? '' : `shop: ${shop}\n`}carcasses:\n  a:\n    kind: base\n    width: 600\n`;
const stopped = (uri: string): boolean =>
  client.diagnostics.get(uri)?.diagnostics.some(({ code }) => code === 'analysis-stopped') === true;

/** Opens without waiting for findings, which may never come. */
async function opens(name: string, shop: string): Promise<string> {
  const uri = folder.uri(name);
  await client.connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'borewright-job', version: 1, text: job(shop) },
  });
  return uri;
}

describe.each(['endless', 'deadly'])('a file that is %s', (kind) => {
  test('is set aside with a finding; the others are checked, and it is tried again when it changes', async () => {
    const good = folder.uri('good.carcass.yaml');
    await client.open(good, job(''));
    const bad = await opens('bad.carcass.yaml', `${kind}.shop.yaml`);
    await client.until(() => stopped(bad), 'the finding of the file that was set aside');
    expect(wordsOf(client.diagnostics.get(bad)!.diagnostics[0]!)).toBe(
      'Checking this file took longer than 2 s and was stopped, so nothing in it is checked. Undo the last change; the file is tried again at the next one.',
    );
    // The other file is answered for again, by the text that it has by now.
    const found = await client.change(good, [{ text: `${job('')}    hight: 700\n` }]);
    expect(found.map(({ code }) => code)).toContain('key-unknown');
    expect(await client.hover(good, client.at(good, 'width', 1))).toContain('width');
    await client.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: bad, version: 2 },
      contentChanges: [{ text: job('') }],
    });
    await client.until(
      () => client.diagnostics.get(bad)?.version === 2 && !stopped(bad),
      'findings of the mended text',
    );
    expect(await client.stop()).toBe(0);
  });

  test('does not keep the server from shutting down', async () => {
    await opens('bad.carcass.yaml', `${kind}.shop.yaml`);
    expect(await client.stop()).toBe(0);
  });
});

test('a file that is not open is left out after it once kept the server, and the others are checked', async () => {
  client.process.kill('SIGKILL');
  const bad = folder.write('closed-bad.carcass.yaml', job('endless.shop.yaml'));
  const good = folder.write('closed-good.carcass.yaml', `${job('')}    hight: 700\n`);
  client = await Client.start(
    undefined,
    { settings: { findings: { wholeWorkspace: true } } },
    [join(bundles, 'main.cjs'), '--stdio'],
    [folder.uri('')],
  );
  await client.until(() => stopped(bad), 'the finding of the file that was left out');
  await client.until(() => (client.diagnostics.get(good)?.diagnostics.length ?? 0) > 0, 'findings of the other file');
  // Another change begins another search, and this one comes to its end.
  client.diagnostics.delete(good);
  folder.write('closed-good.carcass.yaml', `${job('')}    widht: 700\n`);
  await client.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri: good, type: 2 }] });
  await client.until(() => client.diagnostics.has(good), 'findings of the changed file');
  expect(stopped(bad)).toBe(true);
  folder.remove('closed-bad.carcass.yaml');
  folder.remove('closed-good.carcass.yaml');
  expect(await client.stop()).toBe(0);
});

test('what a thread shows of how far it has come ends with the thread', async () => {
  client.process.kill('SIGKILL');
  const names = ['bad', 'c', 'd', 'e', 'f'].map((name) => `progress-${name}.carcass.yaml`);
  for (const name of names) folder.write(name, job(name.includes('bad') ? 'endless.shop.yaml' : ''));
  const open = new Set<unknown>();
  let begun = 0;
  client = await Client.start(
    { ...CAPABILITIES, window: { workDoneProgress: true } },
    { settings: { findings: { wholeWorkspace: true } } },
    [join(bundles, 'main.cjs'), '--stdio'],
    [folder.uri('')],
    (connection) => {
      connection.onRequest('window/workDoneProgress/create', () => null);
      connection.onNotification('$/progress', ({ token, value }: { token: unknown; value: { kind: string } }) => {
        if (value.kind === 'begin') {
          open.add(token);
          begun += 1;
        }
        if (value.kind === 'end') open.delete(token);
      });
    },
  );
  await client.until(() => begun === 1, 'the begin of the search');
  await client.until(() => stopped(folder.uri(names[0]!)), 'the finding of the file that was left out');
  await client.until(() => open.size === 0, 'the end of what was shown');
  for (const name of names) folder.remove(name);
  expect(await client.stop()).toBe(0);
});

test('a request that the stuck thread never answers is refused, so that the client need not wait for ever', async () => {
  const bad = await opens('bad.carcass.yaml', 'endless.shop.yaml');
  await expect(client.hover(bad, { line: 2, character: 3 })).rejects.toThrow(/started again/);
});

test('a server that nobody asked to shut down ends with 1', async () => {
  const gone = new Promise<number | null>((done) => client.process.once('exit', done));
  await client.connection.sendNotification('exit');
  expect(await gone).toBe(1);
});

test('a thread that fails tells the client where, without words of the fault or paths', async () => {
  const faults: unknown[] = [];
  client.connection.onNotification('borewright/fault', (told: unknown) => {
    faults.push(told);
  });
  await opens('oven.carcass.yaml', 'uncaught.shop.yaml');
  await client.until(() => faults.length > 0, 'the fault');
  expect(faults[0]).toEqual({
    how: 'ended',
    kind: 'RangeError',
    frames: expect.arrayContaining([expect.stringMatching(/^fail\d* \(thread\.cjs:\d+:\d+\)$/)]) as unknown,
  });
  expect(JSON.stringify(faults)).not.toMatch(/oven|uncaught|tmp|\/|\\\\/);
});

test.skipIf(process.platform === 'win32')('a server that was asleep with its computer goes on as it was', async () => {
  const faults: unknown[] = [];
  client.connection.onNotification('borewright/fault', (told: unknown) => {
    faults.push(told);
  });
  const uri = folder.uri('slept.carcass.yaml');
  await client.open(uri, job(''));
  client.process.kill('SIGSTOP');
  // Longer than the patience with a thread that says nothing.
  await new Promise((next) => setTimeout(next, 2500));
  client.process.kill('SIGCONT');
  const found = await client.change(uri, [{ text: `${job('')}    hight: 700\n` }]);
  expect(found.map(({ code }) => code)).toContain('key-unknown');
  await new Promise((next) => setTimeout(next, 500));
  expect(faults).toEqual([]);
  expect(await client.stop()).toBe(0);
});
