import { panelsOfDrawer } from '../carcass/drawers/panels.js';
import type { Diagonal } from '../carcass/model.js';
import { footprintOf, middleOf } from '../carcass/footprint.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { extentsOf, straightExtents } from '../carcass/pose.js';
import { turned, turnedBack } from '../carcass/turn.js';
import { roleOf } from '../carcass/roles.js';
import type { Micrometres } from '../length/units.js';
import { weightOf, weightOfAll } from './weight.js';

/** How a carcass stands on the floor with all of it open and nothing in it. */
export interface Balance {
  /** Of what stands behind the line that it would tip about, and of what is open before it; kilograms. */
  readonly weight: number;
  readonly open: number;
  /** How far behind that line the first has its centre, and how far before it the second. */
  readonly behind: Micrometres;
  readonly before: Micrometres;
  readonly doors: number;
  readonly drawers: number;
}

/** What is open, and how far it has its centre from the front of the carcass, counted to the back. */
interface Opened {
  readonly panel: Panel;
  readonly at: number;
}

/**
 * Weights and their arms about the front edge of what it stands on: of its plinth, else of its sides, across a corner of its bottom. All is open at once, which is
 * the worst that empty doors and drawers do, as none brings weight back when it opens (common practice, no source): each door at a
 * right angle, so its centre stands half its width before its closed front, and each drawer out by the length of its slide. null
 * for a carcass that has neither.
 */
export function balanceOf(carcass: Carcass): Balance | null {
  const doors = carcass.panels
    .filter(({ role }) => role === 'door')
    .map((panel): Opened => {
      const { x, y } = straightExtents(panel);
      return { panel, at: y.from - (panel.turn?.at.y ?? 0) - (x.to - x.from) / 2 };
    });
  const drawers = carcass.drawers.flatMap((drawer) =>
    panelsOfDrawer(carcass, drawer).map((panel): Opened => ({ panel, at: middle(panel, null) - drawer.length.length })),
  );
  const opened = [...doors, ...drawers];
  if (opened.length === 0) return null;
  const moving = new Set(opened.map(({ panel }) => panel));
  const rest = carcass.panels.filter((panel) => !moving.has(panel));
  const behindFront = (panel: Panel): number => middle(panel, carcass.diagonal);
  const plinth = rest.find((panel) => roleOf(panel).belongs === 'under-box');
  const line = plinth === undefined ? 0 : extentsOf(plinth).y.from;
  return {
    weight: weightOfAll(rest),
    open: weightOfAll([...moving]),
    behind: Math.round(centre(rest.map((panel) => ({ panel, at: behindFront(panel) }))) - line),
    before: Math.round(line - centre(opened)),
    doors: doors.length,
    drawers: carcass.drawers.length,
  };
}

/** Whether it would tip forward: the moment of what is open is the greater. */
export function tips({ weight, open, behind, before }: Balance): boolean {
  return open * before > weight * behind;
}

/** How far its middle lies behind the front of the carcass; across a corner, behind the diagonal. */
function middle(panel: Panel, diagonal: Diagonal | null): number {
  if (diagonal === null) {
    const { y } = extentsOf(panel);
    return (y.from + y.to) / 2;
  }
  const { turn } = diagonal;
  return turned(turnedBack(turn), middleOf(footprintOf(panel))).y - turn.at.y;
}

function centre(parts: readonly Opened[]): number {
  const moment = parts.reduce((sum, { panel, at }) => sum + weightOf(panel) * at, 0);
  return moment / weightOfAll(parts.map(({ panel }) => panel));
}
