import { expect, test } from 'vitest';
import { parseLength } from '../../../shared-core/length/parse.js';
import { figure, SHOWN_WITHIN } from '../../../shared-core/length/show.js';
import type { Unit } from '../../../shared-core/length/units.js';

test.each<Unit>(['mm', 'in'])('a figure in %s that is shown and written again is as near as is told', (unit) => {
  const off = Array.from({ length: 30_000 }, (_, length) => {
    const back = parseLength(figure(length, unit), unit);
    return back.ok ? Math.abs(back.value - length) : Infinity;
  });
  // In inches the bound is reached, in millimetres nothing is off.
  expect(Math.max(...off)).toBe(unit === 'in' ? SHOWN_WITHIN.in : 0);
});
