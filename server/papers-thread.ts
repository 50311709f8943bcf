import { parentPort, workerData } from 'node:worker_threads';
import type { FromThread, ThreadData } from './papers/in-thread.js';
import { makePapers, type Meanwhile } from './papers/make.js';
import { CannotWrite } from './papers/task.js';
import { tell } from '../shared-core/service.js';
import { speak } from '../shared-core/words/spoken.js';
import { wordsBeside } from './words-beside.js';

// Of whoever started the program only the language is known here.
const { task, improves } = workerData as ThreadData;
const spoken = wordsBeside(task.language);
speak(spoken);

// The thread beside the server or the command line that makes papers: one task in, how far it has come and the files out.
const say = (message: FromThread): void => parentPort?.postMessage(message);
const flag = new Int32Array(improves);
try {
  const meanwhile: Meanwhile = {
    tell: (stage) => say({ kind: 'stage', stage }),
    mayImprove: () => Atomics.load(flag, 0) === 1,
  };
  const files = await makePapers(task, meanwhile, spoken);
  say({ kind: 'done', files });
} catch (fault) {
  if (!(fault instanceof CannotWrite)) throw fault;
  say({ kind: 'refused', why: tell(fault.why, 'mm') });
}
