import { parentPort } from 'node:worker_threads';
import { bestOrder, type OrderTask } from '../shared-core/service.js';

// The thread beside the server that finds orders of set-ups: a numbered task in, the order with that number out.
parentPort?.on('message', ({ number, task }: { readonly number: number; readonly task: OrderTask }) => {
  parentPort?.postMessage({ number, order: bestOrder(task) });
});
