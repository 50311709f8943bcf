// A small test runner for the extension host: suites register tests, `run` runs them in order and writes the results.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { expectAll, runAll, type Outcome } from './registry.js';

export { suite, test, type Outcome } from './registry.js';

/** Runs every registered test; rejects when one failed or none ran. */
export async function runRegistered(): Promise<void> {
  const outcomes = await runAll(process.env.BOREWRIGHT_EDITOR_ONLY);
  const results = process.env.BOREWRIGHT_EDITOR_RESULTS;
  if (results !== undefined) {
    // A window that is opened anew runs its tests after those of the one before.
    const earlier = existsSync(results) ? (JSON.parse(readFileSync(results, 'utf8')) as Outcome[]) : [];
    writeFileSync(results, JSON.stringify([...earlier, ...outcomes], null, 2));
  }
  expectAll(outcomes);
}
