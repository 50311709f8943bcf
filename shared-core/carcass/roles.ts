import type { Panel, PanelRole } from './model.js';

type Role = Pick<Panel, 'role'>;

const UPRIGHT: ReadonlySet<PanelRole> = new Set(['left-side', 'right-side', 'divider', 'back']);

const SEEN: ReadonlySet<PanelRole> = new Set([
  'left-side',
  'right-side',
  'bottom',
  'top',
  'divider',
  'fixed-shelf',
  'loose-shelf',
]);

/** Whether a panel is one of the two outer uprights. */
export function isSide({ role }: Role): boolean {
  return role === 'left-side' || role === 'right-side';
}

/** Whether it stands on its reference end in the carcass, so that its length is a height. */
export function isUpright({ role }: Role): boolean {
  return UPRIGHT.has(role);
}

/** Whether its front edge is seen, and carries the carcass's band unless the job says otherwise. */
export function isFrontSeen({ key, role }: Pick<Panel, 'key' | 'role'>): boolean {
  return SEEN.has(role) || key === 'rail-front';
}
