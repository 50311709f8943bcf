import { boxOf, grow } from '../scene/boxes.js';
import { mm } from '../scene/scale.js';
import type { Stage } from './stage.js';
import { corners } from './table.js';

/** Bits that come out of the plate into the end, seen from above, and the empty places between them. */
export function drawLevelHead(stage: Stage): void {
  const { pen, acted, out } = stage;
  const { layout, stroke } = acted;
  const line = stage.y(0);
  for (const { head, spindle, diameter, at } of layout.spindles) {
    const x = stage.x(at[0]);
    const key = `spindle:${head}:${spindle}`;
    const inBar = line + (out * stage.sign(4.5)) / 2;
    if (diameter === null) {
      const box = { x: x - 4, y: inBar - 4, width: 8, height: 8 };
      pen.path({ key, class: 'spindle-empty' }, 'thin', corners(box), 'paper');
      continue;
    }
    const r = mm(diameter) / 2;
    const chuck = r + 4;
    const tip = line - out * mm(stroke.setUp.depth);
    pen.path(
      { key, class: 'spindle-loaded' },
      'outline',
      corners({
        x: x - chuck,
        y: Math.min(line, line + out * stage.sign(4.5)),
        width: 2 * chuck,
        height: stage.sign(4.5),
      }),
      'paper',
    );
    const shoulder = tip + out * r;
    pen.path(
      { key: `${key}:bit`, class: 'bit' },
      'thin',
      [
        { x: x - r, y: inBar },
        { x: x - r, y: shoulder },
        { x, y: tip },
        { x: x + r, y: shoulder },
        { x: x + r, y: inBar },
      ],
      'ink',
    );
    pen.takeSolid(
      grow(
        boxOf(
          [
            { x: x - r, y: inBar },
            { x: x + r, y: tip },
          ],
          0,
        ),
        stage.p(0.3),
      ),
    );
  }
}
