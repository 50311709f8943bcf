import type { Carcass, Panel } from '../carcass/model.js';
import { extentsOf } from '../carcass/pose.js';
import { roleOf } from '../carcass/roles.js';
import type { Micrometres } from '../length/units.js';
import { weightOf, weightOfAll } from './weight.js';

/** How a carcass stands on the floor with its doors open and nothing in it. */
export interface Balance {
  /** Of what stands behind the line that it would tip about, and of what hangs before it; kilograms. */
  readonly weight: number;
  readonly doors: number;
  /** How far behind that line the first has its centre, and how far before it the second. */
  readonly behind: Micrometres;
  readonly before: Micrometres;
}

/**
 * Weights and their arms about the front edge of what it stands on: of its plinth, else of its sides. Each door is open at a
 * right angle, so its centre stands half its width before the front of the carcass. null for one without doors.
 */
export function balanceOf({ panels }: Carcass): Balance | null {
  const doors = panels.filter(({ role }) => role === 'door');
  if (doors.length === 0) return null;
  const rest = panels.filter((panel) => !doors.includes(panel));
  const plinth = rest.find((panel) => roleOf(panel).belongs === 'under-box');
  const line = plinth === undefined ? 0 : extentsOf(plinth).y.from;
  const [weight, hung] = [weightOfAll(rest), weightOfAll(doors)];
  const behind = centre(rest, ({ y }) => (y.from + y.to) / 2) - line;
  const before = line - centre(doors, ({ x, y }) => y.from - (x.to - x.from) / 2);
  return { weight, doors: hung, behind: Math.round(behind), before: Math.round(before) };
}

/** Whether it would tip forward: the moment of the doors is the greater. */
export function tips({ weight, doors, behind, before }: Balance): boolean {
  return doors * before > weight * behind;
}

function centre(panels: readonly Panel[], of: (extents: ReturnType<typeof extentsOf>) => number): number {
  const sum = panels.reduce((moment, panel) => moment + weightOf(panel) * of(extentsOf(panel)), 0);
  return sum / weightOfAll(panels);
}
