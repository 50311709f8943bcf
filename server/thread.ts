import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { SetUpOrder } from '../shared-core/service.js';
import { ordersHere, remembering, type Orders } from './orders.js';

/** Finds orders in a thread of its own, which starts at the first asking; where it cannot be had, or fails, here. */
export function ordersInThread(file: URL): Orders {
  if (!existsSync(fileURLToPath(file))) return remembering(ordersHere);
  let thread: Worker | null = null;
  let asked = 0;
  const waiting = new Map<number, { resolve: (order: SetUpOrder) => void; reject: (fault: Error) => void }>();

  const start = (): Worker => {
    const worker = new Worker(file);
    // It must not keep the server from ending.
    worker.unref();
    worker.on('message', ({ number, order }: { readonly number: number; readonly order: SetUpOrder }) => {
      waiting.get(number)?.resolve(order);
      waiting.delete(number);
    });
    worker.on('error', (fault: Error) => {
      thread = null;
      for (const { reject } of waiting.values()) reject(fault);
      waiting.clear();
    });
    return worker;
  };
  return remembering((task) =>
    new Promise<SetUpOrder>((resolve, reject) => {
      const number = (asked += 1);
      waiting.set(number, { resolve, reject });
      thread ??= start();
      thread.postMessage({ number, task });
    }).catch(() => ordersHere(task)),
  );
}
