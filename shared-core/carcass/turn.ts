import type { Turn } from './model.js';

/** A point seen from above, in the carcass frame; not whole where something stands turned. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The turn that takes a turn back. */
export const turnedBack = ({ at, degrees }: Turn): Turn => ({ at, degrees: -degrees });

/** A point turned about an upright line. */
export function turned({ at, degrees }: Turn, { x, y }: Spot): Spot {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [dx, dy] = [x - at.x, y - at.y];
  return { x: at.x + dx * cos - dy * sin, y: at.y + dx * sin + dy * cos };
}
