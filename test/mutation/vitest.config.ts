import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';
import { ALONE } from '../../vitest.config.js';

/** The tests that a run of `run.mjs` is about, as globs. */
const include = (process.env['BOREWRIGHT_MUTATION_TESTS'] ?? '').split(',');

/** The server is loaded only where tests speak to it. */
const setUp = include.some((glob) => glob.startsWith('test/protocol')) ? ['test/mutation/server-here.ts'] : [];

export default defineConfig({
  // Stryker runs this in a copy of the repository.
  root: resolve(import.meta.dirname, '..', '..'),
  test: {
    setupFiles: ['test/seed.ts', ...setUp],
    include,
    exclude: ALONE,
    testTimeout: 600_000,
    hookTimeout: 600_000,
    isolate: false,
  },
});
