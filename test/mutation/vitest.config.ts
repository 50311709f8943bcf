import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

/** The tests that a run of `run.mjs` is about, as globs. */
const include = (process.env['BOREWRIGHT_MUTATION_TESTS'] ?? '').split(',');

export default defineConfig({
  // Stryker runs this in a copy of the repository.
  root: resolve(import.meta.dirname, '..', '..'),
  test: { setupFiles: ['test/seed.ts'], include, testTimeout: 60_000, isolate: false },
});
