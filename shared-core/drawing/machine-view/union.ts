import type { Box, Point } from '../scene/scene.js';

/** Outline of the union of boxes, as closed loops of square corners; holes in it are loops of their own. */
export function unionOutline(boxes: readonly Box[]): Point[][] {
  const xs = ascending(boxes.flatMap(({ x, width }) => [x, x + width]));
  const ys = ascending(boxes.flatMap(({ y, height }) => [y, y + height]));
  const covered = (i: number, j: number): boolean => {
    const [x0, x1, y0, y1] = [xs[i], xs[i + 1], ys[j], ys[j + 1]];
    if (x0 === undefined || x1 === undefined || y0 === undefined || y1 === undefined) return false;
    const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
    return boxes.some((box) => box.x < x && x < box.x + box.width && box.y < y && y < box.y + box.height);
  };
  // Each border between a covered and an open cell once, with the covered cell on its right.
  const next = new Map<string, Point[]>();
  const key = (i: number, j: number): string => `${i},${j}`;
  const border = (a: readonly [number, number], b: readonly [number, number]): void => {
    const from = key(...a);
    next.set(from, [...(next.get(from) ?? []), { x: b[0], y: b[1] }]);
  };
  for (let i = 0; i < xs.length - 1; i += 1) {
    for (let j = 0; j < ys.length - 1; j += 1) {
      if (!covered(i, j)) continue;
      if (!covered(i, j - 1)) border([i, j], [i + 1, j]);
      if (!covered(i + 1, j)) border([i + 1, j], [i + 1, j + 1]);
      if (!covered(i, j + 1)) border([i + 1, j + 1], [i, j + 1]);
      if (!covered(i - 1, j)) border([i, j + 1], [i, j]);
    }
  }
  const loops: Point[][] = [];
  for (const [start, ends] of next) {
    while (ends.length > 0) {
      const [i, j] = start.split(',').map(Number);
      const loop: Point[] = [{ x: i!, y: j! }];
      let to = ends.shift()!;
      while (key(to.x, to.y) !== start) {
        loop.push(to);
        to = next.get(key(to.x, to.y))!.shift()!;
      }
      loops.push(corners(loop).map(({ x, y }) => ({ x: xs[x]!, y: ys[y]! })));
    }
  }
  return loops;
}

/** Only the points at which a loop turns. */
function corners(loop: readonly Point[]): Point[] {
  return loop.filter((point, index) => {
    const before = loop.at(index - 1)!;
    const after = loop[(index + 1) % loop.length]!;
    return (before.x === point.x) !== (point.x === after.x);
  });
}

const ascending = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);
