import { Disk } from './disk.js';
import { serveInThread } from './watched/thread.js';

// The language server, in the thread that `main.ts` watches.
serveInThread(new Disk());
