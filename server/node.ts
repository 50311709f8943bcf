import { Worker } from 'node:worker_threads';
import { Supervisor } from './watched/supervisor.js';
import { transportOf } from './watched/transport.js';

/** A file that is not worked out by then never will be; the slowest sound job takes a tenth of it. */
const PATIENCE = { stuck: 20_000, shutdown: 2000 };

/** Much is made for a moment while a job is opened: with more room than this V8 takes 70 MB more, and no less time. */
const YOUNG_MB = 48;

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
    () => new Worker(thread, { resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB } }),
    PATIENCE,
    (code) => process.exit(code),
  );
}
