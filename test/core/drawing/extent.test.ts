import { expect, test } from 'vitest';
import { frameOf, shapeBox } from '../../../shared-core/drawing/scene/extent.js';
import type { Box, Shape } from '../../../shared-core/drawing/scene/scene.js';

const common = { key: 'one', class: 'label', panel: 'left' } as const;
const round = { ...common, cx: 10, cy: 20, r: 4 } as const;
const points = [
  { x: 3, y: 9 },
  { x: 8, y: 2 },
  { x: 5, y: 12 },
];
const AROUND_POINTS: Box = { x: 3, y: 2, width: 5, height: 10 };

const shapes: readonly (readonly [Shape, Box])[] = [
  [
    { ...common, kind: 'code', x: 30, y: 40, size: 12, dark: [[true]] },
    { x: 30, y: 40, width: 12, height: 12 },
  ],
  [
    { ...round, kind: 'circle', line: 'thin' },
    { x: 6, y: 16, width: 8, height: 8 },
  ],
  [
    { ...round, kind: 'mark', severity: 'error', flagged: false, bore: 'b' },
    { x: 6, y: 16, width: 8, height: 8 },
  ],
  [
    { ...common, kind: 'line', line: 'thin', x1: 7, y1: 1, x2: 2, y2: 5 },
    { x: 2, y: 1, width: 5, height: 4 },
  ],
  [{ ...common, kind: 'path', line: 'outline', points, closed: false, fill: 'none' }, AROUND_POINTS],
  [{ ...common, kind: 'bracket', severity: 'info', bores: [], points, flag: { x: 3, y: 9 } }, AROUND_POINTS],
];

test.each(shapes.map(([shape, box]) => [shape.kind, shape, box] as const))('a %s covers itself', (_, shape, box) => {
  expect(shapeBox(shape, 1)).toEqual(box);
});

test('the frame of a drawing holds all of them, as near as can be', () => {
  const all = shapes.map(([shape]) => shape);
  expect(frameOf(all, 1)).toEqual({ x: 2, y: 1, width: 40, height: 51 });
});
