import { PassThrough } from 'node:stream';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  createConnection,
  createMessageConnection,
  LSPErrorCodes,
  StreamMessageReader,
  StreamMessageWriter,
  type MessageConnection,
} from 'vscode-languageserver/node';
import { serve } from '../../server/connection.js';
import { noFiles } from '../../server/files.js';
import type { Orders } from '../../server/orders.js';
import { bestOrder } from '../../shared-core/service.js';

// The server itself, with a search for the order of set-ups that the test holds up until the text has gone on.
const URI = 'untitled:job.carcass.yaml';
const TEXT = 'carcasses:\n  a:\n    kind: base\n    width: 600\n';
let client: MessageConnection;
/** What happens while an order is sought. */
let meanwhile: () => Promise<void>;
const orders: Orders = async (task) => {
  await meanwhile();
  return bestOrder(task);
};

beforeEach(async () => {
  // A hover waits only so long for the order: here the order always comes first.
  vi.useFakeTimers({ toFake: ['setTimeout'] });
  meanwhile = () => Promise.resolve();
  const [to, from] = [new PassThrough(), new PassThrough()];
  serve(createConnection(new StreamMessageReader(to), new StreamMessageWriter(from)), '0', {
    files: noFiles,
    reference: null,
    words: () => null,
    orders,
    writePapers: null,
  });
  client = createMessageConnection(new StreamMessageReader(from), new StreamMessageWriter(to));
  client.listen();
  await client.sendRequest('initialize', { processId: null, rootUri: null, capabilities: {} });
  await client.sendNotification('initialized', {});
  await client.sendNotification('textDocument/didOpen', {
    textDocument: { uri: URI, languageId: 'borewright-job', version: 1, text: TEXT },
  });
  // A hover asks for the order only where the whole job is worked out.
  await client.sendRequest('textDocument/documentSymbol', { textDocument: { uri: URI } });
});
afterEach(() => {
  client.dispose();
  vi.useRealTimers();
});

/** The text is changed, and the server has heard of it. */
async function goesOn(): Promise<void> {
  meanwhile = () => Promise.resolve();
  await client.sendNotification('textDocument/didChange', {
    textDocument: { uri: URI, version: 2 },
    contentChanges: [{ text: `# Two lines\n# more\n${TEXT}` }],
  });
  await client.sendRequest('borewright/template', { kind: 'job', unit: 'mm' });
}

test.each([
  ['the hover', 'textDocument/hover', { textDocument: { uri: URI }, position: { line: 2, character: 5 } }],
  ['the list of set-ups', 'borewright/setUps', { uri: URI }],
  [
    'the machine view',
    'borewright/machineStep',
    { uri: URI, setUp: '', carcass: 'a', panel: 'left', step: 0, nearer: 1 },
  ],
])('%s has no answer for a text that went on while the order of set-ups was sought', async (_, method, params) => {
  let isAsked = false;
  meanwhile = async () => {
    isAsked = true;
    await goesOn();
  };
  await expect(client.sendRequest(method, params)).rejects.toMatchObject({ code: LSPErrorCodes.ContentModified });
  expect(isAsked).toBe(true);
  expect(await client.sendRequest(method, params)).not.toBeNull();
});
