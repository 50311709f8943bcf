import type * as Path from 'node:path';
import { expect, test, vi } from 'vitest';
import { expectFolder } from '../../server/papers/write.js';

// Paths as they are where there are drives.
vi.mock('node:path', async (importOriginal) => (await importOriginal<typeof Path>()).win32);

test('a folder on a drive that is not there is refused: nothing stands above a drive', () => {
  expect(() => expectFolder('Q:\\jobs\\papers')).toThrow(
    expect.objectContaining({ why: expect.anything() as unknown }),
  );
});
