import { defineConfig } from 'vitest/config';

/**
 * Tests that need modules that no other test has loaded: three put a module aside for one of their own; the others
 * count steps, which the engine does only in code that it compiles after it was told to.
 */
export const ALONE = [
  'test/core/job/dropped.test.ts',
  'test/core/messages/page.test.ts',
  'test/core/engine/hostile.test.ts',
  'test/core/tolerance/many-dowels.test.ts',
  'test/protocol/papers-no-drive.test.ts',
];

export default defineConfig({
  test: {
    setupFiles: ['test/seed.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Left to itself it keeps one of two cores idle.
    maxWorkers: '100%',
    projects: [
      {
        extends: true,
        test: {
          name: 'together',
          include: ['test/**/*.test.ts'],
          exclude: ['**/node_modules/**', 'dist/**', 'test/editor/**', 'test/out/**', ...ALONE],
          // Nothing in the core remembers, so one loading of it serves every file: a sixth of the time.
          isolate: false,
        },
      },
      { extends: true, test: { name: 'alone', include: ALONE, isolate: true } },
    ],
  },
});
