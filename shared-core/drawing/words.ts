import { isFace } from '../boring/surface.js';
import type { Surface } from '../boring/model.js';
import type { Panel } from '../carcass/model.js';
import { isUpright, roleOf, ROLES } from '../carcass/roles.js';
import type { EdgeName } from '../job/model.js';

/** 'bottom end' of a side, 'left end' of a horizontal. */
export function endWord(panel: Pick<Panel, 'role'>, end: 'reference-end' | 'far-end'): string {
  if (isUpright(panel)) return end === 'reference-end' ? 'bottom end' : 'top end';
  return end === 'reference-end' ? 'left end' : 'right end';
}

/** 'inside face', 'left end'; of a divider 'inside (right) face'. */
export function surfaceWord(panel: Pick<Panel, 'role'>, surface: Surface): string {
  return isFace(surface) ? `${faceWord(panel, surface)} face` : endWord(panel, surface);
}

/** The same for a column headed 'Face': 'inside', 'left end'; of a shelf 'outside (lower)'. */
export function faceWord(panel: Pick<Panel, 'role'>, surface: Surface): string {
  if (!isFace(surface)) return endWord(panel, surface);
  const { looks } = roleOf(panel);
  return looks === null ? surface : `${surface} (${looks[surface]})`;
}

/** What inside and outside mean of panels that have an inside of the box on both; none where there is none among them. */
export function facesExplained(panels: readonly Pick<Panel, 'role'>[]): string | null {
  const here = new Set(panels.map(roleOf));
  const said = Object.values(ROLES).flatMap((role) =>
    role.looks !== null && here.has(role) ? [role.looks.explained] : [],
  );
  return said.length === 0 ? null : [...new Set(said)].join(' ');
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
