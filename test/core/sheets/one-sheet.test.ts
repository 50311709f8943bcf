import { describe, expect, test } from 'vitest';
import { bestSheet } from '../../oracles/one-sheet/best-sheet.js';
import type { OneSheet, Pattern } from '../../oracles/one-sheet/problem.js';
import { published } from './published.js';

/** What a pattern really holds, found by walking it; throws where parts overlap or stick out. */
function worth({ rectangles }: OneSheet, pattern: Pattern): { value: number; counts: number[] } {
  const counts = rectangles.map(() => 0);
  const walk = (part: Pattern): number => {
    if (part.kind === 'rectangle') {
      const one = rectangles[part.index]!;
      expect([part.length, part.width]).toEqual([one.length, one.width]);
      counts[part.index] = counts[part.index]! + 1;
      return one.value;
    }
    const beside = part.kind === 'beside';
    const [a, b] = [part.first, part.second];
    expect(part.length).toBe(beside ? a.length + b.length : Math.max(a.length, b.length));
    expect(part.width).toBe(beside ? Math.max(a.width, b.width) : a.width + b.width);
    return walk(a) + walk(b);
  };
  return { value: walk(pattern), counts };
}

describe('the best pattern of one sheet', () => {
  test.each(published)('$name: the published optimum, proven', ({ sheet, optimum }) => {
    const best = bestSheet(sheet);
    expect(best.value).toBe(optimum);
    expect(best.bound).toBe(optimum);
    const { value, counts } = worth(sheet, best.pattern!);
    expect(value).toBe(optimum);
    counts.forEach((count, i) => expect(count).toBeLessThanOrEqual(sheet.rectangles[i]!.most));
    expect(best.pattern!.length).toBeLessThanOrEqual(sheet.length);
    expect(best.pattern!.width).toBeLessThanOrEqual(sheet.width);
  });

  test('keeps value and bound apart where the effort ends before the search', () => {
    const { sheet, optimum } = published.find(({ name }) => name === 'cgcut3')!;
    const best = bestSheet(sheet, 30);
    expect(best.value).toBeLessThan(optimum);
    expect(best.bound).toBeGreaterThanOrEqual(optimum);
  });

  test('is empty where nothing fits', () => {
    const sheet = { length: 10, width: 10, rectangles: [{ length: 11, width: 2, value: 5, most: 1 }] };
    expect(bestSheet(sheet)).toEqual({ pattern: null, value: 0, bound: 0 });
  });
});
