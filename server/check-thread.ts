import { parentPort } from 'node:worker_threads';
import { checker } from './cli/check-files.js';

// A thread beside the command line that checks files of a folder: a path in, what was found out.
const check = checker();
parentPort?.on('message', (path: string) => parentPort?.postMessage(check(path)));
