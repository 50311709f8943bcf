import { expect, test } from 'vitest';
import { unparted } from '../../client/webview/page/unparted.js';

test('a figure keeps its fraction and its unit on its line', () => {
  expect(unparted('2 1/8, 8 3/8 in')).toBe('2\u00a01/8, 8\u00a03/8\u00a0in');
  expect(unparted('in boards of 16 mm')).toBe('in boards of 16\u00a0mm');
});

test('what is not of a figure is parted as before', () => {
  for (const words of ['8 to 712 by 32', '6 inside', '2 3']) expect(unparted(words)).toBe(words);
});
