import { parentPort, workerData } from 'node:worker_threads';
import type { FromThread, ThreadData } from './papers/in-thread.js';
import { makePapers } from './papers/make.js';
import { CannotWrite } from './papers/task.js';
import { tell } from '../shared-core/service.js';

// The thread beside the server or the command line that makes papers: one task in, how far it has come and the files out.
const { task, improves } = workerData as ThreadData;
const say = (message: FromThread): void => parentPort?.postMessage(message);
const flag = new Int32Array(improves);
try {
  const files = await makePapers(task, {
    tell: (stage) => say({ kind: 'stage', stage }),
    mayImprove: () => Atomics.load(flag, 0) === 1,
  });
  say({ kind: 'done', files });
} catch (fault) {
  if (!(fault instanceof CannotWrite)) throw fault;
  say({ kind: 'refused', why: tell(fault.why, 'mm') });
}
