import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import { CAPABILITIES, root } from './client.js';

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly result?: unknown;
  readonly params?: { readonly diagnostics: readonly Diagnostic[] };
}

test.each([
  ['en', 'must be between'],
  ['fr-CA', 'doit être entre'],
])('the server for a browser’s worker answers with nothing of Node about it, in %s', async (locale, words) => {
  const seen: Message[] = [];
  // What a worker's global scope has, as far as a language server needs it; no require, no process.
  const scope: Record<string, unknown> = {
    postMessage: (message: Message) => seen.push(message),
    addEventListener: () => undefined,
    onmessage: null,
    setTimeout,
    clearTimeout,
    setInterval,
    clearInterval,
    console,
    performance,
    URL,
    TextEncoder,
    TextDecoder,
  };
  scope.self = scope;
  const context = createContext(scope);
  runInContext(readFileSync(join(root, 'dist', 'server', 'worker.js'), 'utf8'), context);
  const send = (message: object): void =>
    (scope.onmessage as (event: { data: object }) => void)({ data: { jsonrpc: '2.0', ...message } });
  const until = async (found: (message: Message) => boolean): Promise<Message> => {
    for (let tries = 0; tries < 200; tries += 1) {
      const message = seen.find(found);
      if (message !== undefined) return message;
      await new Promise((done) => setTimeout(done, 20));
    }
    throw new Error(`not answered; seen: ${JSON.stringify(seen)}`);
  };

  send({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: CAPABILITIES, locale } });
  expect((await until(({ id }) => id === 1)).result).toMatchObject({ serverInfo: { name: 'borewright' } });
  send({ method: 'initialized', params: {} });
  const text = 'shop: own.shop.yaml\ncarcasses:\n  a: { kind: base, width: -1 }\n';
  const uri = 'vscode-vfs://github/jobs/x.carcass.yaml';
  send({
    method: 'textDocument/didOpen',
    params: { textDocument: { uri, languageId: 'borewright-job', version: 1, text } },
  });
  const { params } = await until(({ method }) => method === 'textDocument/publishDiagnostics');
  expect(params!.diagnostics.map(({ code }) => code).sort()).toEqual(['length-impossible', 'shop-missing']);
  expect(params!.diagnostics.find(({ code }) => code === 'length-impossible')!.message).toContain(words);
  send({
    id: 2,
    method: 'textDocument/hover',
    params: { textDocument: { uri }, position: { line: 2, character: 10 } },
  });
  expect((await until(({ id }) => id === 2)).result).not.toBeNull();
});
