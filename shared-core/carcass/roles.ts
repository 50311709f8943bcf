import { LYING_ENDS, UPRIGHT_ENDS, type EndName, type LongEdge } from '../words/names.js';
import type { Told } from '../words/told.js';
import type { Panel, PanelRole } from './model.js';
import type { Materials, Role } from './role.js';
import { keysOfKind } from './fronts/asked.js';
import { back, cornerBack } from './roles/back.js';
import { divider } from './roles/divider.js';
import { drawerBack, drawerBottom, drawerBoxFront, drawerSide } from './roles/drawers.js';
import { door, drawerFront, fixedFront } from './roles/fronts.js';
import { endPanel, filler } from './roles/beside.js';
import { blindPanel } from './roles/blind.js';
import { bottom, top } from './roles/horizontals.js';
import { plinth } from './roles/plinth.js';
import { rail } from './roles/rail.js';
import { fixedShelf, looseShelf } from './roles/shelves.js';
import { leftSide, rightSide } from './roles/sides.js';
import type { CarcassSpec } from './spec.js';

/**
 * Every part that a panel can play, in the order in which the panels of a carcass are listed. A new one is a name in the
 * model, a file of its own and a line here; all that is known of a role is in its file.
 */
export const ROLES = {
  'left-side': leftSide,
  'right-side': rightSide,
  bottom,
  top,
  rail,
  divider,
  'fixed-shelf': fixedShelf,
  'loose-shelf': looseShelf,
  back,
  'corner-back': cornerBack,
  plinth,
  door,
  'drawer-front': drawerFront,
  'fixed-front': fixedFront,
  'blind-panel': blindPanel,
  'end-panel': endPanel,
  filler,
  'drawer-side': drawerSide,
  'drawer-box-front': drawerBoxFront,
  'drawer-back': drawerBack,
  'drawer-bottom': drawerBottom,
} satisfies Readonly<Record<PanelRole, Role>>;

/** What is known of the part that a panel plays. */
export function roleOf({ role }: Pick<Panel, 'role'>): Role {
  return ROLES[role];
}

/** Whether it stands on its reference end in the carcass, so that its length is a height. */
export function isUpright(panel: Pick<Panel, 'role'>): boolean {
  return roleOf(panel).stands === 'upright';
}

/** Whether it is one of the panels that the box is pressed together from. */
export function isOfBox(panel: Pick<Panel, 'role'>): boolean {
  return roleOf(panel).belongs === 'to-box';
}

/** Whether it is a back of the box, or a part of one. */
export const isBack = ({ role }: Pick<Panel, 'role'>): boolean => role === 'back' || role === 'corner-back';

/** Whether it is a piece of a drawer’s box. */
export function isInDrawer(panel: Pick<Panel, 'role'>): boolean {
  return roleOf(panel).belongs === 'in-drawer';
}

/** Whether it is one of the two outer uprights, whose rows set the pitch grid. */
export function setsGrid(panel: Pick<Panel, 'role'>): boolean {
  return roleOf(panel).rows === 'set-grid';
}

/** The board and the band that the job gives panels of the role, unless it chooses for the single one. */
export function materialsOf(spec: CarcassSpec, panel: Pick<Panel, 'role'>): Materials {
  return roleOf(panel).materials?.(spec) ?? spec;
}

/** What the edge is called that bores are counted from, or the one across from it. */
export function edgeNamed(panel: Pick<Panel, 'role'>, edge: 'front' | 'back'): LongEdge & Told {
  return roleOf(panel).edges[edge];
}

/** What an end is called. */
export function endNamed(panel: Pick<Panel, 'role'>, end: 'reference-end' | 'far-end'): EndName & Told {
  return (roleOf(panel).ends ?? (isUpright(panel) ? UPRIGHT_ENDS : LYING_ENDS))[end];
}

/** The keys that `panels` of a carcass may have, in the order of its panels. */
export function panelKeys(spec: CarcassSpec): readonly string[] {
  const keys = Object.values<Role>(ROLES).flatMap(({ names }) => names(spec));
  return [...keys, ...keysOfKind(spec, 'drawer')];
}
