import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lastPlace, lineTo, placeAt, placesOf, stepsTo } from '../../../shared-core/length/grid.js';

test('a line of places on a pitch', () => {
  const line = lineTo({ offset: 8000, pitch: 32_000 }, 712_000);
  expect(line.count).toBe(23);
  expect(lastPlace(line)).toBe(712_000);
  expect(placesOf(line).slice(0, 3)).toEqual([8000, 40_000, 72_000]);
  expect(lineTo(line, 711_999).count).toBe(22);
  expect(lineTo(line, 7999).count).toBe(0);
});

test('a line holds every place of its grid up to the limit, and none beyond', () => {
  const grid = { offset: fc.integer({ min: -5000, max: 60_000 }), pitch: fc.integer({ min: 1, max: 50_000 }) };
  fc.assert(
    fc.property(fc.record(grid), fc.integer({ min: -9000, max: 400_000 }), (one, limit) => {
      const line = lineTo(one, limit);
      const places = placesOf(line);
      expect(places.every((place) => place <= limit)).toBe(true);
      expect(placeAt(one, line.count)).toBeGreaterThan(limit);
      places.forEach((place, k) => expect(stepsTo(one, place)).toBe(k));
    }),
  );
});
