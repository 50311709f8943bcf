import { existsSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { Disk } from '../disk.js';
import { Workspace } from '../workspace.js';
import { INPUT, open } from './files.js';
import { findingsOf, type ShownFinding } from './found.js';
import { orElse } from './run.js';

/** What came of one file: its findings, or why it could not be read. */
export type CheckedFile = { readonly findings: readonly ShownFinding[] } | { readonly missing: string };

/** A thread takes a third of a second before it is as quick as this one; so much text is worth it. */
const LEAST_FOR_THREADS = 20_000;

/** Checks one file after the other, with what they share (a shop file) read once. Faults of ours are thrown. */
export function checker(): (path: string) => CheckedFile {
  const workspace = new Workspace(new Disk());
  return (path) =>
    orElse<CheckedFile>(
      () => ({ findings: findingsOf(open(workspace, path)) }),
      (missing) => ({ missing }),
    );
}

/** Checks files, in threads where that is quicker; the results are in the order of the paths. */
export async function checkFiles(paths: readonly string[]): Promise<readonly CheckedFile[]> {
  const thread = new URL('./check-thread.js', import.meta.url);
  const sizes = paths.map(sizeOf);
  const work = sizes.reduce((sum, size) => sum + size, 0) - Math.max(0, ...sizes);
  if (work < LEAST_FOR_THREADS || availableParallelism() < 2 || !existsSync(thread)) return paths.map(checker());
  // The largest first, so that no thread is left with it at the end.
  const queue = [...paths.keys()].sort((a, b) => sizes[b]! - sizes[a]!);
  const checked: CheckedFile[] = [];
  const threads = Math.min(availableParallelism(), paths.length);
  await Promise.all(Array.from({ length: threads }, () => keepAtWork(thread, queue, paths, checked)));
  return checked;
}

/** Keeps one thread at work until the queue is empty. */
function keepAtWork(thread: URL, queue: number[], paths: readonly string[], checked: CheckedFile[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(thread);
    let index: number | undefined;
    const next = (): void => {
      index = queue.shift();
      if (index === undefined) void worker.terminate().then(() => resolve());
      else worker.postMessage(paths[index]);
    };
    worker.on('message', (result: CheckedFile) => {
      checked[index!] = result;
      next();
    });
    worker.on('error', reject);
    next();
  });
}

function sizeOf(path: string): number {
  // What comes by standard input can be read once, and here.
  if (path === INPUT) return Number.NEGATIVE_INFINITY;
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0;
}
