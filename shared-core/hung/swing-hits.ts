import { overlaps } from '../carcass/interval.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { extentsOf } from '../carcass/pose.js';
import type { HungDoor } from './model.js';
import { swingOf } from './swing.js';

/** What a door touches as it opens, and by how many degrees it is open when it first does. */
export interface SwingHit {
  readonly panel: Panel;
  readonly angle: number;
}

/** In plan, seen from above, from the axis: x away from the hinge edge along the closed door, y to the back. */
interface Plan {
  readonly x: { readonly from: number; readonly to: number };
  readonly y: { readonly from: number; readonly to: number };
}

/** Less than this is rounding, in micrometres. */
const NOTHING = 5;

/**
 * The panels that a door touches on its way, the others closed, from the first on. It turns about the line of `swingOf`, in steps
 * of a degree; between two of them a corner strays from its arc by less than the ten-thousandth part of its radius.
 */
export function swingHits({ door, hinge }: HungDoor, carcass: Carcass): readonly SwingHit[] {
  const own = extentsOf(door);
  const { axis, way, degrees } = swingOf({ door, hinge });
  const planOf = (panel: Panel): Plan => {
    const { x, y } = extentsOf(panel);
    const away = way === 'clockwise' ? [x.from - axis.x, x.to - axis.x] : [axis.x - x.to, axis.x - x.from];
    return { x: { from: away[0]!, to: away[1]! }, y: { from: y.from - axis.y, to: y.to - axis.y } };
  };
  const leaf = planOf(door);
  const furthest = Math.hypot(leaf.x.to, Math.max(-leaf.y.from, leaf.y.to));
  // No corner comes further back than these two do on their arcs.
  const deepest = Math.max(Math.hypot(leaf.x.from, leaf.y.to), Math.hypot(leaf.x.from, leaf.y.from));
  const near = carcass.panels
    .filter((panel) => panel.key !== door.key && overlaps(extentsOf(panel).z, own.z))
    .map((panel) => ({ panel, plan: planOf(panel) }))
    .filter(({ plan: { x, y } }) => y.from < deepest && x.from < furthest && x.to > -furthest);
  const hits = near.flatMap(({ panel, plan }) => {
    for (let angle = 1; angle <= degrees; angle += 1) if (touches(leaf, plan, angle)) return [{ panel, angle }];
    return [];
  });
  return hits.toSorted((a, b) => a.angle - b.angle);
}

/** Whether the leaf, turned so far about the origin, shares room with a block: by the axes of both, none of which parts them. */
function touches(leaf: Plan, block: Plan, degrees: number): boolean {
  const turn = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const corners = ({ x, y }: Plan) => [x.from, x.to].flatMap((a) => [y.from, y.to].map((b) => [a, b] as const));
  // Opening takes the far edge to the front, against y.
  const open = corners(leaf).map(([x, y]) => [x * cos + y * sin, y * cos - x * sin] as const);
  const fixed = corners(block);
  const axes = [
    [1, 0],
    [0, 1],
    [cos, -sin],
    [sin, cos],
  ] as const;
  return axes.every(([ax, ay]) => {
    const along = (points: readonly (readonly [number, number])[]) => points.map(([x, y]) => x * ax + y * ay);
    const [a, b] = [along(open), along(fixed)];
    return Math.max(...a) - Math.min(...b) > NOTHING && Math.max(...b) - Math.min(...a) > NOTHING;
  });
}
