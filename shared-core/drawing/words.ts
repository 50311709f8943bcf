import { isFace } from '../boring/surface.js';
import type { BorePurpose, Surface } from '../boring/model.js';
import type { Panel, PanelRole } from '../carcass/model.js';
import { isUpright } from '../carcass/roles.js';
import type { EdgeName } from '../job/model.js';

/** What a bore is for, in the hole table. */
export const PURPOSES: Readonly<Record<BorePurpose, string>> = {
  dowel: 'dowel',
  clearance: 'screw clearance',
  pilot: 'screw pilot',
  cam: 'cam',
  'cam-bolt': 'cam bolt',
  'cam-stud': 'cam stud',
  row: 'row',
  cup: 'hinge cup',
};

/** 'bottom end' of a side, 'left end' of a horizontal. */
export function endWord(panel: Pick<Panel, 'role'>, end: 'reference-end' | 'far-end'): string {
  if (isUpright(panel)) return end === 'reference-end' ? 'bottom end' : 'top end';
  return end === 'reference-end' ? 'left end' : 'right end';
}

/** Where the faces look of panels that have an inside of the box on both: [outside, inside]. */
const LOOKS: Readonly<Partial<Record<PanelRole, readonly [string, string]>>> = {
  divider: ['left', 'right'],
  'fixed-shelf': ['lower', 'upper'],
  'loose-shelf': ['lower', 'upper'],
};

/** 'inside face', 'left end'; of a divider 'inside (right) face'. */
export function surfaceWord(panel: Pick<Panel, 'role'>, surface: Surface): string {
  return isFace(surface) ? `${faceWord(panel, surface)} face` : endWord(panel, surface);
}

/** The same for a column headed 'Face': 'inside', 'left end'; of a shelf 'outside (lower)'. */
export function faceWord(panel: Pick<Panel, 'role'>, surface: Surface): string {
  if (!isFace(surface)) return endWord(panel, surface);
  const looks = LOOKS[panel.role];
  return looks === undefined ? surface : `${surface} (${looks[surface === 'outside' ? 0 : 1]})`;
}

/** What inside and outside mean of panels that have an inside of the box on both; none where there is none among them. */
export function facesExplained(roles: ReadonlySet<PanelRole>): string | null {
  const said = [
    ...(roles.has('divider') ? ['A divider’s outside face is its left one.'] : []),
    ...(roles.has('fixed-shelf') || roles.has('loose-shelf') ? ['A shelf’s outside face is its lower one.'] : []),
  ];
  return said.length === 0 ? null : said.join(' ');
}

/** 'front edge', 'back edge', or an end as `endWord` has it. */
export function edgeWord(panel: Pick<Panel, 'role'>, edge: EdgeName): string {
  return edge === 'front' ? 'front edge' : edge === 'back' ? 'back edge' : endWord(panel, edge);
}

/** 'near-left'; a name so short that it would pass for a figure or a letter of the text gets its noun: 'stop 7'. */
export function stopCalled(name: string): string {
  return name.length > 2 ? name : `stop ${name}`;
}

/** First letter large, the rest as it is. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
