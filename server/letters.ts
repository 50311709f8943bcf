import type { Orders } from './orders.js';
import type { OpenFile } from './workspace.js';

/** Longer than this nobody waits for the letters of set-ups. */
const MOST_MS = 15;

/** Waits a little for the order to run, so that set-ups can be told by the letters that it gives them. */
export async function waitForLetters(file: OpenFile, orders: Orders): Promise<void> {
  if (file.kind !== 'job' || file.analysis.isOrdered) return;
  // A search that fails leaves the set-ups without letters; who asks for the plan is told why.
  const known = file.analysis.planBy(orders).catch(() => null);
  await Promise.race([known, new Promise((done) => setTimeout(done, MOST_MS))]);
}
