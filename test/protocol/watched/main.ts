import { Worker } from 'node:worker_threads';
import { Supervisor } from '../../../server/watched/supervisor.js';
import { transportOf } from '../../../server/watched/transport.js';

const { reader, writer } = transportOf(process.argv);
const thread = new URL('./thread.cjs', import.meta.url);
new Supervisor(
  reader,
  writer,
  () => new Worker(thread),
  { stuck: 1500, shutdown: 500 },
  (code) => process.exit(code),
);
