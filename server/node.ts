import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createConnection } from 'vscode-languageserver/node';
import { version } from '../package.json';
import { serve } from './connection.js';
import { Disk } from './disk.js';
import { ordersInThread } from './thread.js';

/**
 * Starts the language server on the channel that the command line names: `--stdio`, `--node-ipc`, `--socket=PORT` or
 * `--pipe=NAME`.
 */
export function startServer(): void {
  // The reference page lies beside the bundles of a packed extension.
  const page = new URL('../reference.md', import.meta.url);
  const orders = ordersInThread(new URL('./orders-thread.cjs', import.meta.url));
  serve(createConnection(), new Disk(), version, existsSync(fileURLToPath(page)) ? page.href : null, orders);
}
