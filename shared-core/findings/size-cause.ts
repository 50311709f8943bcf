import { chosen, chosenBand } from '../carcass/choices.js';
import type { Panel } from '../carcass/model.js';
import { materialsOf, roleOf } from '../carcass/roles.js';
import type { Located } from '../document/place.js';
import type { CarcassContext } from './rule.js';

/** What of a panel the text decides. */
export type PanelSide = 'length' | 'width' | 'thickness' | 'band';

/** The written value that gives the panel this size; else the panel’s own place. */
export function sizeCause(context: CarcassContext, panel: Panel, side: PanelSide): Pick<Located<unknown>, 'place'> {
  const value = sizeValue(context, panel, side);
  return value.written ? value : panel;
}

function sizeValue({ spec, carcass }: CarcassContext, panel: Panel, side: PanelSide): Located<unknown> {
  switch (side) {
    case 'thickness':
      return chosen(spec, panel.key, 'board') ?? materialsOf(spec, panel).board;
    case 'band':
      return chosenBand(spec, panel.key, 'front') ?? materialsOf(spec, panel).band;
    case 'length':
    case 'width':
      return roleOf(panel).sizes[side](spec, panel, carcass.bays);
  }
}
