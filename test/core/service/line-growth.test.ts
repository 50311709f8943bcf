import { expect, test } from 'vitest';
import { lineContext } from '../../../shared-core/service/line-context.js';

test('a line that closes its brackets over and over is read no longer than it is', () => {
  const line = `a: ${'{}'.repeat(200_000)} `;
  const start = performance.now();
  expect(lineContext(line, line.length)).toBeNull();
  // Half a minute where every bracket has what is before it read again.
  expect(performance.now() - start).toBeLessThan(3000);
});
