import { besideNamed } from '../lookups.js';
import { hasFronts, keysOfKind } from '../../carcass/fronts/asked.js';
import { NO_BAND } from '../../shop/habits.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const bandUnknown: CarcassRule = {
  name: 'band-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'An edge band is named that the shop does not have.',
    why: 'The thickness of the band comes off the cut size of the panel. Until the name is right, the edge counts as bare.',
    remedy: 'Use a band of the shop file, add this one there, or write `none` for a bare edge.',
    example: 'kind: base\nwidth: 600\nband: bnad-1',
  },
  check({ spec, shop }) {
    const ofPanels = [...spec.panels.values()].flatMap((panel) => Object.values(panel.bands?.value ?? {}));
    const ofDoors = hasFronts(spec) ? [spec.doors.band] : [];
    const ofDrawers = keysOfKind(spec, 'drawer').length === 0 ? [] : [spec.drawers.band];
    const ofBeside = besideNamed(spec).map(({ band }) => band);
    const names = [spec.band, ...ofBeside, ...ofDoors, ...ofDrawers, ...ofPanels].filter(
      (name) => name.value !== NO_BAND,
    );
    return unknownNames(names, [...shop.bands.keys()], 'band');
  },
};
