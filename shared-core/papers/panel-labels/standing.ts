import { UNIT } from '../../carcass/pose.js';
import type { Panel, Point3 } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';

/** A side of a page. */
export type Side = 'left' | 'right' | 'top' | 'foot';

/** How a panel is seen by who looks at its outside face as it stands in the carcass: upright ones upright, level ones from the front. */
export interface SeenOutside {
  /** Where each edge lies on the page. */
  readonly edges: Readonly<Record<EdgeName, Side>>;
  /** Whether the face is upright, or looks up or down. */
  readonly looks: 'aside' | 'up' | 'down';
  /** The side that is to the front of the carcass; null for a panel that stands across it, as a back does. */
  readonly front: Side | null;
}

const dot = (a: Point3, b: Point3): number => a.x * b.x + a.y * b.y + a.z * b.z;
const cross = (a: Point3, b: Point3): Point3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/** From the pose alone. Whoever looks at the outside face looks along t; what is up for him is z, or to the back of the carcass. */
export function seenOutside({ pose }: Panel): SeenOutside {
  const ahead = UNIT[pose.t];
  const upright = ahead.z === 0;
  const up = upright ? UNIT['+z'] : UNIT['+y'];
  const right = cross(ahead, up);
  const sideOf = (way: Point3): Side => {
    if (dot(way, right) !== 0) return dot(way, right) > 0 ? 'right' : 'left';
    return dot(way, up) > 0 ? 'top' : 'foot';
  };
  const against = ({ x, y, z }: Point3): Point3 => ({ x: -x, y: -y, z: -z });
  const [u, v] = [UNIT[pose.u], UNIT[pose.v]];
  return {
    edges: {
      front: sideOf(against(u)),
      back: sideOf(u),
      'reference-end': sideOf(against(v)),
      'far-end': sideOf(v),
    },
    // The outside face looks back at him.
    looks: upright ? 'aside' : ahead.z > 0 ? 'down' : 'up',
    front: ahead.y === 0 ? sideOf(UNIT['-y']) : null,
  };
}
