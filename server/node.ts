import { Worker } from 'node:worker_threads';
import { Supervisor } from './watched/supervisor.js';
import { transportOf } from './watched/transport.js';

/** A file that is not worked out by then never will be; the slowest sound job takes a tenth of it. */
const PATIENCE = { stuck: 20_000, shutdown: 2000 };

/**
 * Starts the language server in a thread of its own, watched from here, on the channel that the command line names: `--stdio`,
 * `--node-ipc`, `--socket=PORT` or `--pipe=NAME`.
 */
export function startServer(): void {
  const { reader, writer } = transportOf(process.argv);
  const thread = new URL('./server-thread.js', import.meta.url);
  new Supervisor(
    reader,
    writer,
    () => new Worker(thread),
    PATIENCE,
    (code) => process.exit(code),
  );
}
