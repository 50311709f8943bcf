import { afterEach, expect, test, vi } from 'vitest';
import { Awake } from '../../client/webview/page/awake.js';

afterEach(() => vi.unstubAllGlobals());

test('a screen that is let go of and kept again at once is held by one lock, which the next word lets go of', async () => {
  let held = 0;
  const request = async (): Promise<EventTarget> => {
    await Promise.resolve();
    held += 1;
    const lock = new EventTarget();
    const release = (): Promise<void> => {
      held -= 1;
      lock.dispatchEvent(new Event('release'));
      return Promise.resolve();
    };
    return Object.assign(lock, { release });
  };
  vi.stubGlobal('document', new EventTarget());
  vi.stubGlobal('navigator', { wakeLock: { request } });
  const told: boolean[] = [];
  const awake = new Awake((isKept) => told.push(isKept));
  awake.keep();
  awake.release();
  awake.keep();
  await vi.waitFor(() => expect([held, told]).toEqual([1, [true]]));
  awake.release();
  expect([held, told]).toEqual([0, [true, false]]);
});
