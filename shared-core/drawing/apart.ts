import type { Panel, Point3 } from '../carcass/model.js';
import { extentsOf, type CarcassAxis } from '../carcass/pose.js';

const AXES = ['x', 'y', 'z'] as const satisfies readonly CarcassAxis[];

/**
 * How far each panel is moved where a carcass is drawn apart: so many times its distance from the middle of the whole, in
 * micrometres of the carcass frame. By the panel's key.
 */
export function apart(panels: readonly Panel[], times: number): ReadonlyMap<string, Point3> {
  const boxes = panels.map((panel) => ({ key: panel.key, box: extentsOf(panel) }));
  const middles = AXES.map((axis) => {
    const from = Math.min(...boxes.map(({ box }) => box[axis].from));
    const to = Math.max(...boxes.map(({ box }) => box[axis].to));
    return (from + to) / 2;
  });
  return new Map(
    boxes.map(({ key, box }) => {
      const [x, y, z] = AXES.map((axis, i) => Math.round(((box[axis].from + box[axis].to) / 2 - middles[i]!) * times));
      return [key, { x: x!, y: y!, z: z! }] as const;
    }),
  );
}
