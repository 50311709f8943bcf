import { remove } from '../changes.js';
import type { CarcassRule } from '../rule.js';
import { show } from '../words.js';

export const dowelPlaceUnused: CarcassRule = {
  name: 'dowel-place-unused',
  severity: 'warning',
  about: {
    what: 'A place is listed under `dowels` where no two panels meet.',
    why: 'Nothing is bored there: it lies behind the panel, in the groove of the back, or where this panel has no joint. The joint holds with one bore less than was meant.',
    remedy: 'Move the place to where the panels meet, or take it out of the list.',
    example: 'kind: wall   # 330 mm deep\nwidth: 600\ndowels: [53, 213, 373]',
  },
  check(context) {
    return context.boring.unused.map(({ panel, at }) => ({
      place: at.place,
      ...(panel === null ? {} : { panel }),
      message: `${show(context, at.value)} from the front edge ${panel === null ? 'no two panels meet' : `${panel} meets no other panel`}: nothing is bored there. Move it, or take it out.`,
      repairs:
        at.place.part === 'self'
          ? [{ title: `Take ${show(context, at.value)} out of the list`, changes: [remove(at.path)], preferred: true }]
          : [],
    }));
  },
};
