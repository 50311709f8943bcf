import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { asItIs, type Told } from '../../shared-core/words/told.js';
import { tell } from '../../shared-core/service.js';
import { makePapers } from './make.js';
import { say } from './messages.js';
import { CannotWrite, type NamedFile, type PapersTask, type Stage } from './task.js';

/** What the thread is started with. */
export interface ThreadData {
  readonly task: PapersTask;
  /** One number: 1 while layouts may be improved. */
  readonly improves: SharedArrayBuffer;
}

export type FromThread =
  | { readonly kind: 'stage'; readonly stage: Stage }
  | { readonly kind: 'done'; readonly files: readonly NamedFile[] }
  | { readonly kind: 'refused'; readonly why: string };

/** Papers in the making. */
export interface Making {
  /** Rejects with `Refused` where nothing can be written, or the making was ended. */
  readonly files: Promise<readonly NamedFile[]>;
  /** Takes the layouts found so far, and goes on. */
  readonly enough: () => void;
  /** Ends it; there are no files. */
  readonly end: () => void;
}

/** Why there are no files, in words. */
export class Refused extends Error {
  constructor(readonly words: Told) {
    super(words);
  }
}

/**
 * Makes papers in a thread of their own, so that whoever asked can answer others meanwhile. Without the thread's file, as where
 * the program runs from its sources, they are made here.
 */
export function makeInThread(task: PapersTask, told: (stage: Stage) => void): Making {
  const thread = new URL('./papers-thread.js', import.meta.url);
  if (!existsSync(thread)) return makeHere(task, told);
  const improves = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const flag = new Int32Array(improves);
  Atomics.store(flag, 0, 1);
  const data: ThreadData = { task, improves };
  const worker = new Worker(thread, { workerData: data });
  const files = new Promise<readonly NamedFile[]>((resolve, reject) => {
    worker.on('message', (message: FromThread) => {
      if (message.kind === 'stage') told(message.stage);
      else if (message.kind === 'done') resolve(message.files);
      else reject(new Refused(asItIs(message.why)));
    });
    worker.on('error', reject);
    // Of an ended thread; one that has answered is settled already.
    worker.on('exit', () => reject(new Refused(tell(say.stopped(), 'mm'))));
  });
  return {
    files,
    enough: () => Atomics.store(flag, 0, 0),
    end: () => void worker.terminate(),
  };
}

function makeHere(task: PapersTask, told: (stage: Stage) => void): Making {
  const files = makePapers(task, { tell: told, mayImprove: () => true }).catch((fault: unknown) => {
    throw fault instanceof CannotWrite ? new Refused(tell(fault.why, 'mm')) : fault;
  });
  return { files, enough: () => undefined, end: () => undefined };
}
