import { bestOrder, type OrderTask, type SetUpOrder } from '../shared-core/service.js';

/** Finds the order of set-ups: a second's work for many, so where there are threads it is done beside the server. */
export type Orders = (task: OrderTask) => Promise<SetUpOrder>;

/** Where there are no threads. */
export const ordersHere: Orders = (task) => Promise.resolve(bestOrder(task));

/** As many tasks are remembered: an edit that changes no changeover asks for the same order again. */
const REMEMBERED = 8;

/** Asks for every task once, and again only where it was not answered. */
export function remembering(orders: Orders): Orders {
  const known = new Map<string, Promise<SetUpOrder>>();
  return (task) => {
    const key = JSON.stringify(task);
    const before = known.get(key);
    if (before !== undefined) return before;
    const answer = orders(task);
    known.set(key, answer);
    answer.catch(() => known.delete(key));
    if (known.size > REMEMBERED) known.delete(known.keys().next().value!);
    return answer;
  };
}
