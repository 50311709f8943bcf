import type { Panel, PanelRole } from '../model.js';

const STILL: readonly PanelRole[] = ['fixed-front', 'blind-panel', 'filler'];

/** Whether a panel closes something for good, so that it is screwed on from inside. */
export const standsStill = ({ role }: Pick<Panel, 'role'>): boolean => STILL.includes(role);
