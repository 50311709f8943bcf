import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import type { Diagnostic, Hover, InitializeResult, PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { Folder, root } from './client.js';

// Starts the server as the page for other editors says, and holds the page against what there is.
const page = readFileSync(join(root, 'server', 'reference', 'editors.md'), 'utf8');

interface Configuration {
  readonly command: readonly [string, ...string[]];
  readonly languages: Readonly<Record<string, readonly string[]>>;
  readonly initializationOptions: object;
}
const configuration = JSON.parse(/```json\n(.*?)```/s.exec(page)![1]!) as Configuration;
const folder = new Folder();
afterAll(() => folder.close());

test('the configuration starts a server that checks, explains and completes files of these names', async () => {
  const [command, ...args] = configuration.command;
  const child = spawn(command, args, { cwd: root, stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const found = new Map<string, readonly Diagnostic[]>();
  connection.onNotification('textDocument/publishDiagnostics', ({ uri, diagnostics }: PublishDiagnosticsParams) => {
    found.set(uri, diagnostics);
  });
  connection.listen();
  const { capabilities } = await connection.sendRequest<InitializeResult>('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: {},
    initializationOptions: configuration.initializationOptions,
  });
  await connection.sendNotification('initialized', {});
  for (const pattern of Object.values(configuration.languages).flat()) {
    const uri = folder.uri(pattern.replace('*', 'desk'));
    const text = pattern.includes('carcass')
      ? 'carcasses:\n  desk: { kind: base, width: 600, hight: 720 }\n'
      : 'boards:\n  oak: { thicknes: 18 }\n';
    // An editor may call the language what it likes.
    await connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'yaml', version: 1, text },
    });
    const end = performance.now() + 20_000;
    while (!found.has(uri) && performance.now() < end) await new Promise((done) => setTimeout(done, 20));
    const codes = found.get(uri)!.map(({ code }) => code);
    expect(codes, uri).toContain('key-unknown');
    // Turned off by the settings of the page.
    expect(codes, uri).not.toContain('shop-neutral');
    const hover = await connection.sendRequest<Hover | null>('textDocument/hover', {
      textDocument: { uri },
      position: { line: 1, character: 3 },
    });
    expect(hover, uri).not.toBeNull();
  }
  expect(capabilities).toMatchObject({ completionProvider: {}, signatureHelpProvider: {}, renameProvider: {} });
  await connection.sendRequest('shutdown');
  const gone = new Promise<number | null>((done) => child.once('exit', done));
  await connection.sendNotification('exit');
  expect(await gone).toBe(0);
  connection.dispose();
});

test('every setting of the extension that the server knows has its line, with its values', () => {
  const { contributes } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    contributes: { configuration: { properties: Record<string, { enum?: readonly string[] }> } };
  };
  // The trace is the protocol's own, and how papers are written the extension tells with its request for them.
  const settings = Object.entries(contributes.configuration.properties).filter(
    ([name]) => !/\.(?:trace|papers)\./.test(name),
  );
  for (const [name, { enum: values = [] }] of settings) {
    const line = page.split('\n').find((one) => one.startsWith(`| \`${name.replace('borewright.', '')}\``));
    expect(line, name).toBeDefined();
    for (const value of values) expect(line).toContain(`\`${value}\``);
  }
});

test('every option that the server reads at the start has its line', () => {
  const read = ['server/abilities.ts', 'server/client-side.ts'].flatMap((file) => {
    const text = readFileSync(join(root, file), 'utf8');
    return [...text.matchAll(/saidOf\(options, '(\w+)'\)|'(\w+)' in said/g)].map(([, one, other]) => one ?? other!);
  });
  expect(read.toSorted()).toEqual([
    'diagnostics',
    'hoverPictures',
    'reference',
    'referenceCommand',
    'restricted',
    'settings',
  ]);
  for (const option of read) expect(page, option).toContain(`| \`${option}\``);
});
