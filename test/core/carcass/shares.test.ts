import { expect, test } from 'vitest';
import { analyse } from '../findings/jobs.js';

/** Heights of the fronts from the top down, in micrometres. */
function heightsOf(unit: 'mm' | 'in', height: string): readonly number[] {
  const text = `unit: ${unit}\ncarcasses:\n  a: { kind: base, width: ${unit === 'mm' ? 600 : 24}, height: ${height}, fronts: [drawer, drawer, drawer] }\n`;
  const [one] = analyse(text).carcasses;
  return one!.carcass!.panels.filter(({ key }) => /^drawer-\d-front$/.test(key)).map(({ width }) => width);
}

test('fronts that share a height are whole tenths of a millimetre, and the lowest has what is left over', () => {
  let odd = 0;
  for (const height of ['720', '721', '722', '742.5']) {
    const heights = heightsOf('mm', height);
    expect(heights).toHaveLength(3);
    const [first, second, last] = heights as [number, number, number];
    expect([first % 100, second % 100, last % 100]).toEqual([0, 0, 0]);
    expect(second).toBe(first);
    expect([0, 100, 200]).toContain(last - first);
    if (last > first) odd += 1;
  }
  expect(odd).toBeGreaterThan(0);
});

test('what comes out even stays as it is', () => {
  // Gaps of 3 mm above three fronts and between them leave 720 - 9 = 711, which is three times 237.
  expect(heightsOf('mm', '720')).toEqual([237_000, 237_000, 237_000]);
  // 30 in are 762 mm: 753 = 3 x 251.
  expect(heightsOf('in', '30')).toEqual([251_000, 251_000, 251_000]);
});
