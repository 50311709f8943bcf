import type { Box, Point } from './scene.js';

/** True where two boxes share more than a border. */
export function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** True where `inner` lies in `outer`, borders included. */
export function contains(outer: Box, inner: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** A box with so much more on every side. */
export function grow(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

/** The smallest box about all of them; null about none. */
export function around(boxes: Iterable<Box>): Box | null {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const { x, y, width, height } of boxes) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x + width);
    bottom = Math.max(bottom, y + height);
  }
  return left > right ? null : { x: left, y: top, width: right - left, height: bottom - top };
}

/** Box of a line or of a run of points, `thick` wide where it has no width of its own. */
export function boxOf(points: readonly Point[], thick: number): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const box = {
    x: Math.min(...xs),
    y: Math.min(...ys),
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
  };
  return grow(box, thick / 2);
}

/** True where the straight line from a to b runs through the box. Liang-Barsky clipping. */
export function crosses(a: Point, b: Point, box: Box): boolean {
  let from = 0;
  let to = 1;
  const clip = (step: number, room: number): boolean => {
    if (step < 0) from = Math.max(from, room / step);
    else if (step > 0) to = Math.min(to, room / step);
    else if (room < 0) return false;
    return from <= to;
  };
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return (
    clip(-dx, a.x - box.x) &&
    clip(dx, box.x + box.width - a.x) &&
    clip(-dy, a.y - box.y) &&
    clip(dy, box.y + box.height - a.y)
  );
}
