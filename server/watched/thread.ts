import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parentPort } from 'node:worker_threads';
import { createConnection, PortMessageReader, PortMessageWriter } from 'vscode-languageserver/node';
import { version } from '../../package.json';
import { serve } from '../connection.js';
import { cutterIfBeside } from '../face-cutter.js';
import type { Files } from '../files.js';
import { ordersInThread } from '../thread.js';
import { writePapersInThread } from '../papers/writing-in-thread.js';
import { wordsBeside } from '../words-beside.js';
import { BEAT_MS, type Report } from './report.js';

/** Serves on the channel to the thread that watches this one, and gives it signs of life. */
export function serveInThread(files: Files): void {
  const port = parentPort;
  if (port === null) throw new Error('This is the thread of the language server; start main instead.');
  const report = (what: Report): void => port.postMessage(what);
  setInterval(() => report({ watch: 'beat' }), BEAT_MS);
  // The reference lies beside the bundles of a packed extension.
  const folder = new URL('../reference/', import.meta.url);
  const reference = existsSync(fileURLToPath(folder)) ? folder.href : null;
  const orders = ordersInThread(new URL('./orders-thread.js', import.meta.url));
  const connection = createConnection(new PortMessageReader(port), new PortMessageWriter(port));
  serve(connection, version, {
    files,
    reference,
    words: wordsBeside,
    orders,
    writePapers: writePapersInThread,
    face: cutterIfBeside,
    begins: (uri) => report({ watch: 'begins', uri }),
  });
}
