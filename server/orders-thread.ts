import { parentPort } from 'node:worker_threads';
import { bestOrder, type ChangeoverTable } from '../shared-core/machining/plan/plan.js';

// The thread beside the server that finds orders of set-ups: a numbered table in, the order with that number out.
parentPort?.on('message', ({ number, table }: { readonly number: number; readonly table: ChangeoverTable }) => {
  parentPort?.postMessage({ number, order: bestOrder(table) });
});
