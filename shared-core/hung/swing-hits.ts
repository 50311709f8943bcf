import { footprintOf } from '../carcass/footprint.js';
import { overlaps, type Interval } from '../carcass/interval.js';
import type { Carcass, Panel, Turn } from '../carcass/model.js';
import { extentsOf } from '../carcass/pose.js';
import { turned, type Spot } from '../carcass/turn.js';
import type { FrontPull, HungDoor } from './model.js';
import { swingOf } from './swing.js';

/** What a door touches as it opens, and by how many degrees it is open when it first does. */
export interface SwingHit {
  /** The pull of the door that touches it; null where the door itself does. */
  readonly by: FrontPull | null;
  readonly panel: Panel;
  /** The pull of that panel where it is this that is touched, not the panel itself. */
  readonly on: FrontPull | null;
  readonly angle: number;
}

type Point = readonly [x: number, y: number];

/** A convex shape in plan, seen from above, from the axis: x away from the hinge edge along the closed door, y to the back. */
type Plan = readonly Point[];

interface Block {
  readonly plan: Plan;
  readonly room: Room;
  readonly z: Interval;
  readonly panel: Panel;
  readonly pull: FrontPull | null;
}

/** What a shape takes up along x and along y. */
type Room = readonly [x: Interval, y: Interval];

/** Less than this is rounding, in micrometres. */
const NOTHING = 5;

/**
 * What a door and its pulls touch on their way, all else closed, from the first on. It turns about the line of `swingOf`, in steps
 * of a degree; between two of them a corner strays from its arc by less than the ten-thousandth part of its radius.
 */
export function swingHits(
  { door, hinge }: HungDoor,
  carcass: Carcass,
  pulls: readonly FrontPull[] = [],
): readonly SwingHit[] {
  const { axis, way, degrees } = swingOf({ door, hinge });
  const back = ((door.turn?.degrees ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(back), Math.sin(back)];
  const block = (spots: readonly Spot[], z: Interval, panel: Panel, pull: FrontPull | null): Block => {
    const plan = spots.map(({ x, y }): Point => {
      const [dx, dy] = [x - axis.x, y - axis.y];
      const along = dx * cos + dy * sin;
      return [way === 'clockwise' ? along : -along, dy * cos - dx * sin];
    });
    return { plan, room: roomOf(plan), z, panel, pull };
  };
  const blocks = [
    ...carcass.panels.map((panel) => block(footprintOf(panel), extentsOf(panel).z, panel, null)),
    ...pulls.map((pull) => block(spotsOf(pull, pull.front.turn), pull.body.z, pull.front, pull)),
  ];
  const still = blocks.filter(({ panel }) => panel.key !== door.key);
  return blocks
    .filter(({ panel }) => panel.key === door.key)
    .flatMap((moving) => hitsOf(moving, still, degrees))
    .toSorted((a, b) => a.angle - b.angle);
}

/** The corners of a pull seen from above, as it stands. */
function spotsOf({ body: { x, y } }: FrontPull, turn: Turn | undefined): readonly Spot[] {
  const spots = [
    { x: x.from, y: y.from },
    { x: x.to, y: y.from },
    { x: x.to, y: y.to },
    { x: x.from, y: y.to },
  ];
  return turn === undefined ? spots : spots.map((spot) => turned(turn, spot));
}

function hitsOf(moving: Block, still: readonly Block[], degrees: number): readonly SwingHit[] {
  const left = new Set(still.filter(({ z }) => overlaps(z, moving.z)));
  const hits: SwingHit[] = [];
  for (let angle = 1; angle <= degrees && left.size > 0; angle += 1) {
    const open = opened(moving.plan, angle);
    const room = roomOf(open);
    for (const one of left)
      if (near(room, one.room) && touch(open, one.plan)) {
        hits.push({ by: moving.pull, panel: one.panel, on: one.pull, angle });
        left.delete(one);
      }
  }
  return hits;
}

/** Turned so far about the origin: opening takes the far edge to the front, against y. */
function opened(plan: Plan, degrees: number): Plan {
  const turn = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return plan.map(([x, y]): Point => [x * cos + y * sin, y * cos - x * sin]);
}

function roomOf(plan: Plan): Room {
  const along = (axis: 0 | 1): Interval => {
    let [from, to] = [Infinity, -Infinity];
    for (const point of plan) {
      from = Math.min(from, point[axis]);
      to = Math.max(to, point[axis]);
    }
    return { from, to };
  };
  return [along(0), along(1)];
}

const near = (a: Room, b: Room): boolean =>
  ([0, 1] as const).every((i) => a[i].to - b[i].from > NOTHING && b[i].to - a[i].from > NOTHING);

/** Whether two shapes share room: by the edges of both, none of which parts them. */
function touch(a: Plan, b: Plan): boolean {
  return [...acrossEdges(a), ...acrossEdges(b)].every(([ax, ay]) => {
    const along = (points: Plan) => points.map(([x, y]) => x * ax + y * ay);
    const [one, other] = [along(a), along(b)];
    return Math.max(...one) - Math.min(...other) > NOTHING && Math.max(...other) - Math.min(...one) > NOTHING;
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
