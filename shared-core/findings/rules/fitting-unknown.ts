import { jointsChosen } from '../../carcass/choices.js';
import { SORTS_OF_FITTING } from '../../fittings/kinds.js';
import { keysOfKind } from '../../carcass/fronts/asked.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const fittingUnknown: CarcassRule = {
  name: 'fitting-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: `A ${SORTS_OF_FITTING} is named that the shop does not have.`,
    why: 'It decides the diameter, depth and place of every construction bore. Until the name is right, the shop’s usual fitting is bored.',
    remedy: 'Use a fitting of the shop file, or add this one there.',
    example: 'kind: base\nwidth: 600\njoint: dowl-8x30',
  },
  check({ spec, shop }) {
    const ofDrawers = keysOfKind(spec, 'drawer').length === 0 ? [] : [spec.drawers.joint];
    const ofPanels = [...spec.panels.values()].flatMap((panel) => [panel, ...jointsChosen(panel)]);
    const names = [spec.joint, ...ofDrawers, ...ofPanels.map(({ joint }) => joint)];
    return unknownNames(names, [...shop.fittings.keys()], 'fitting');
  },
};
