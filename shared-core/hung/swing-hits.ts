import { footprintOf } from '../carcass/footprint.js';
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

type Point = readonly [x: number, y: number];

/** A convex shape in plan, seen from above, from the axis: x away from the hinge edge along the closed door, y to the back. */
type Plan = readonly Point[];

/** Less than this is rounding, in micrometres. */
const NOTHING = 5;

/**
 * The panels that a door touches on its way, the others closed, from the first on. It turns about the line of `swingOf`, in steps
 * of a degree; between two of them a corner strays from its arc by less than the ten-thousandth part of its radius.
 */
export function swingHits({ door, hinge }: HungDoor, carcass: Carcass): readonly SwingHit[] {
  const own = extentsOf(door);
  const { axis, way, degrees } = swingOf({ door, hinge });
  const back = ((door.turn?.degrees ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(back), Math.sin(back)];
  const planOf = (panel: Panel): Plan =>
    footprintOf(panel).map(({ x, y }) => {
      const [dx, dy] = [x - axis.x, y - axis.y];
      const along = dx * cos + dy * sin;
      return [way === 'clockwise' ? along : -along, dy * cos - dx * sin];
    });
  const leaf = planOf(door);
  const furthest = Math.max(...leaf.map(([x, y]) => Math.hypot(x, y)));
  const nearEdge = Math.min(...leaf.map(([x]) => x));
  // No corner comes further back than those of the hinge edge do on their arcs.
  const deepest = Math.max(...leaf.filter(([x]) => x < nearEdge + NOTHING).map(([x, y]) => Math.hypot(x, y)));
  const near = carcass.panels
    .filter((panel) => panel.key !== door.key && overlaps(extentsOf(panel).z, own.z))
    .map((panel) => ({ panel, plan: planOf(panel) }))
    .filter(({ plan }) => {
      const xs = plan.map(([x]) => x);
      return Math.min(...plan.map(([, y]) => y)) < deepest && Math.min(...xs) < furthest && Math.max(...xs) > -furthest;
    });
  const hits = near.flatMap(({ panel, plan }) => {
    for (let angle = 1; angle <= degrees; angle += 1) if (touches(leaf, plan, angle)) return [{ panel, angle }];
    return [];
  });
  return hits.toSorted((a, b) => a.angle - b.angle);
}

/** Whether the leaf, turned so far about the origin, shares room with a block: by the edges of both, none of which parts them. */
function touches(leaf: Plan, block: Plan, degrees: number): boolean {
  const turn = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  // Opening takes the far edge to the front, against y.
  const open = leaf.map(([x, y]): Point => [x * cos + y * sin, y * cos - x * sin]);
  return [...acrossEdges(open), ...acrossEdges(block)].every(([ax, ay]) => {
    const along = (points: Plan) => points.map(([x, y]) => x * ax + y * ay);
    const [a, b] = [along(open), along(block)];
    return Math.max(...a) - Math.min(...b) > NOTHING && Math.max(...b) - Math.min(...a) > NOTHING;
  });
}

/** A direction across each edge of a shape, of length one. */
function acrossEdges(shape: Plan): readonly Point[] {
  return shape.map(([x, y], i) => {
    const [nx, ny] = shape[(i + 1) % shape.length]!;
    const long = Math.hypot(nx - x, ny - y);
    return [(ny - y) / long, (x - nx) / long];
  });
}
