// Checked against the Language Server Protocol 3.17, "Server lifecycle", and JSON-RPC 2.0, "Error object".
import { spawn, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import {
  createMessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type MessageConnection,
} from 'vscode-jsonrpc/node';
import type { PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { root } from './client.js';

const NOT_INITIALIZED = -32002;
const INVALID_REQUEST = -32600;
const INVALID_PARAMS = -32602;
const NOT_FOUND = -32601;

let server: ChildProcess;
let connection: MessageConnection;
let published: PublishDiagnosticsParams[];

beforeEach(() => {
  server = spawn(process.execPath, [join(root, 'dist', 'server', 'server.cjs'), '--stdio']);
  connection = createMessageConnection(new StreamMessageReader(server.stdout!), new StreamMessageWriter(server.stdin!));
  published = [];
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    published.push(params);
  });
  connection.listen();
});
afterEach(() => {
  connection.dispose();
  server.kill('SIGKILL');
});

const uri = 'untitled:sink.carcass.yaml';
const at = (line: number, character: number): object => ({ textDocument: { uri }, position: { line, character } });
const ask = (method: string, params: unknown): Promise<unknown> => connection.sendRequest(method, params);
const initialize = (): Promise<unknown> => ask('initialize', { processId: null, rootUri: null, capabilities: {} });
const open = (text: string, version = 1): Promise<void> =>
  connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'borewright-job', version, text },
  });
const sink = 'carcasses:\n  sink:\n    kind: base\n    width: 600\n';

async function found(): Promise<void> {
  await expect.poll(() => published.length, { timeout: 10_000 }).toBeGreaterThan(0);
}

test('before `initialize` requests get the error of the protocol, and notifications are not heard', async () => {
  await open(sink);
  await expect(ask('textDocument/hover', at(3, 6))).rejects.toMatchObject({ code: NOT_INITIALIZED });
  await expect(ask('borewright/setUps', { uri })).rejects.toMatchObject({ code: NOT_INITIALIZED });
  await expect(ask('shutdown', undefined)).rejects.toMatchObject({ code: NOT_INITIALIZED });
  await initialize();
  await connection.sendNotification('initialized', {});
  expect(await ask('textDocument/hover', at(3, 6))).toBe(null);
  await open(sink);
  await found();
  expect(await ask('textDocument/hover', at(3, 6))).not.toBe(null);
});

test('a second `initialize` is refused, and the session goes on', async () => {
  await initialize();
  await connection.sendNotification('initialized', {});
  await expect(initialize()).rejects.toMatchObject({ code: INVALID_REQUEST });
  await open(sink);
  await found();
});

test('after `shutdown` requests are refused, and `exit` ends the server with 0', async () => {
  const ended = new Promise<number | null>((done) => server.once('exit', done));
  await initialize();
  await connection.sendNotification('initialized', {});
  await open(sink);
  expect(await ask('shutdown', undefined)).toBe(null);
  await expect(ask('textDocument/hover', at(3, 6))).rejects.toMatchObject({ code: INVALID_REQUEST });
  await expect(ask('shutdown', undefined)).rejects.toMatchObject({ code: INVALID_REQUEST });
  await open(sink, 2);
  await connection.sendNotification('exit');
  expect(await ended).toBe(0);
});

test('what is asked wrongly gets its error or no answer, and the session goes on', async () => {
  await initialize();
  await connection.sendNotification('initialized', {});
  await open(sink);
  await found();
  await expect(ask('textDocument/hover', null)).rejects.toMatchObject({ code: INVALID_PARAMS });
  await expect(ask('nothing/known', {})).rejects.toMatchObject({ code: NOT_FOUND });
  for (const params of [at(-3, -1), at(1e9, 1e9), at(1, Number.MAX_SAFE_INTEGER), { textDocument: { uri } }, {}])
    await ask('textDocument/hover', params).catch((error: unknown) => {
      expect(error).toMatchObject({ code: expect.toSatisfy((code: number) => code < 0) as unknown });
    });
  const backwards = { start: { line: 9, character: 9 }, end: { line: 0, character: 0 } };
  for (const method of ['textDocument/codeAction', 'textDocument/inlayHint', 'textDocument/rangeFormatting'])
    await ask(method, {
      textDocument: { uri },
      range: backwards,
      context: { diagnostics: [] },
      options: { tabSize: 2, insertSpaces: true },
    });
  for (const params of [{}, { textDocument: null }, { textDocument: { uri: 7 } }])
    await connection.sendNotification('textDocument/didOpen', params);
  await connection.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [{ range: backwards, text: '' }],
  });
  await connection.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 3 },
    contentChanges: [{ text: sink }],
  });
  await expect.poll(() => published.some(({ version }) => version === 3), { timeout: 10_000 }).toBe(true);
  expect(await ask('textDocument/hover', at(3, 6))).not.toBe(null);
});

test('a document that is closed while it is checked keeps no findings', async () => {
  await initialize();
  await connection.sendNotification('initialized', {});
  const many = Array.from(
    { length: 60 },
    (_, index) => `  unit-${index}:\n    kind: base\n    widht: ${600 + index}\n`,
  );
  await open(`carcasses:\n${many.join('')}`);
  await found();
  await connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  expect(await ask('textDocument/hover', at(3, 6))).toBe(null);
  // Whatever was in the air has come by the next answer but one.
  await new Promise((done) => setTimeout(done, 300));
  expect(published.at(-1)!.diagnostics).toEqual([]);
});
