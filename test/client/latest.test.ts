import { expect, test } from 'vitest';
import { Latest } from '../../client/panels/latest.js';

test('of a burst, the one in the air is told that it is out of date, and one more is made', async () => {
  const asked: { readonly outdated: AbortSignal; readonly answer: () => void }[] = [];
  const latest = new Latest(
    (outdated) => new Promise((answer) => asked.push({ outdated, answer })),
    () => false,
  );
  const settled = latest.refresh();
  for (let key = 0; key < 30; key += 1) void latest.refresh();
  expect(asked.map(({ outdated }) => outdated.aborted)).toEqual([true]);
  asked[0]!.answer();
  await new Promise((done) => setTimeout(done, 0));
  expect(asked.map(({ outdated }) => outdated.aborted)).toEqual([true, false]);
  asked[1]!.answer();
  await settled;
  expect(asked).toHaveLength(2);
});

test('a request that fails does not stop the next', async () => {
  let asked = 0;
  const latest = new Latest(
    () => {
      asked += 1;
      return asked === 1 ? Promise.reject(new Error('no')) : Promise.resolve();
    },
    () => false,
  );
  await expect(latest.refresh()).rejects.toThrow('no');
  await latest.refresh();
  expect(asked).toBe(2);
});
