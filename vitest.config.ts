import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    setupFiles: ['test/seed.ts'],
    include: ['test/**/*.test.ts'],
    exclude: ['**/node_modules/**', 'dist/**', 'test/editor/**'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Left to itself it keeps one of two cores idle.
    maxWorkers: '100%',
  },
});
