import { around, boxOf, overlap } from './boxes.js';
import { textBox } from './lettering.js';
import type { Box, Shape } from './scene.js';

/** The smallest box that holds every shape with its lettering. */
export function frameOf(shapes: readonly Shape[], scale: number): Box {
  return around(shapes.map((shape) => shapeBox(shape, scale))) ?? { x: 0, y: 0, width: 1, height: 1 };
}

/** What a shape covers, its lettering included, in millimetres of the drawing. */
export function shapeBox(shape: Shape, scale: number): Box {
  switch (shape.kind) {
    case 'text':
      return textBox(shape, scale);
    case 'line':
      return boxOf(
        [
          { x: shape.x1, y: shape.y1 },
          { x: shape.x2, y: shape.y2 },
        ],
        0,
      );
    case 'path':
    case 'bracket':
      return boxOf(shape.points, 0);
    case 'code':
      return { x: shape.x, y: shape.y, width: shape.size, height: shape.size };
    case 'circle':
    case 'bore':
    case 'mark':
      return { x: shape.cx - shape.r, y: shape.cy - shape.r, width: 2 * shape.r, height: 2 * shape.r };
  }
}

/** Whether no lettering stands over other lettering. */
export function isLegible(shapes: readonly Shape[], scale: number): boolean {
  const boxes = shapes.flatMap((shape) => (shape.kind === 'text' ? [textBox(shape, scale)] : []));
  return boxes.every((box, index) => !boxes.slice(index + 1).some((other) => overlap(box, other)));
}
