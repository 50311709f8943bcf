import { isFace } from '../boring/surface.js';
import type { BorePurpose, Surface } from '../boring/model.js';
import type { Panel, PanelRole } from '../carcass/model.js';
import type { EdgeName } from '../job/model.js';

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

const UPRIGHT: ReadonlySet<PanelRole> = new Set(['left-side', 'right-side', 'divider', 'back']);

/** Whether it stands on its reference end in the carcass. */
export function isUpright(panel: Panel): boolean {
  return UPRIGHT.has(panel.role);
}

/** 'bottom end' of a side, 'left end' of a horizontal. */
export function endWord(panel: Panel, end: 'reference-end' | 'far-end'): string {
  if (isUpright(panel)) return end === 'reference-end' ? 'bottom end' : 'top end';
  return end === 'reference-end' ? 'left end' : 'right end';
}

export function surfaceWord(panel: Panel, surface: Surface): string {
  return surface === 'inside' ? 'inside face' : surface === 'outside' ? 'outside face' : endWord(panel, surface);
}

/** The same for a column headed 'Face': 'inside', 'left end'. */
export function faceWord(panel: Panel, surface: Surface): string {
  return isFace(surface) ? surface : endWord(panel, surface);
}

export function edgeWord(panel: Panel, edge: EdgeName): string {
  return edge === 'front' ? 'front edge' : edge === 'back' ? 'back edge' : endWord(panel, edge);
}

/** First letter large, the rest as it is. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
