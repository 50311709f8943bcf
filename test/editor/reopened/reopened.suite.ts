import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { pageProblems, until } from '../driver.js';
import { suite, test } from '../harness.js';
import { lookAtPanels, notePath } from '../window-left.js';

suite('the window opened anew', () => {
  test('bore map and machine view come back as they were', async () => {
    const left: unknown = JSON.parse(readFileSync(notePath(), 'utf8'));
    await until(
      JSON.stringify(left),
      async () => {
        const shown = await lookAtPanels();
        if (!isDeepStrictEqual(shown, left)) throw new Error(JSON.stringify(shown));
        return true;
      },
      30_000,
    );
    assert.deepEqual(await pageProblems(), []);
  });
});
