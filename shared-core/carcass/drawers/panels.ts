import { means } from '../../job/panel-key.js';
import type { Carcass, Drawer, Panel } from '../model.js';

/** The panels of a drawer, its front among them: what comes out together. */
export function panelsOfDrawer({ panels }: Carcass, { key }: Drawer): readonly Panel[] {
  return panels.filter((panel) => panel.key !== key && means(key, panel.key));
}
