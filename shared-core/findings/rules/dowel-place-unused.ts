import { remove } from '../changes.js';
import type { CarcassRule } from '../rule.js';
import type { Micrometres } from '../../length/units.js';
import { messages } from '../../words/message.js';

export const say = messages('dowel-place-unused', {
  nowhere: ({ at }: { readonly at: Micrometres }, show) =>
    `The place ${show.length(at)} from the front edge is not bored because no two panels meet there. Move it, or remove it from the list.`,
  notOnPanel: ({ at, panel }: { readonly at: Micrometres; readonly panel: string }, show) =>
    `The place ${show.length(at)} from the front edge of ${panel} is not bored because no other panel meets it there. Move it, or remove it from the list.`,
  remove: ({ at }: { readonly at: Micrometres }, show) => `Remove ${show.exact(at)} from the list`,
});

export const dowelPlaceUnused: CarcassRule = {
  name: 'dowel-place-unused',
  severity: 'warning',
  about: {
    what: 'A place is listed under `dowels` or `end-dowels` where no two panels meet.',
    why: 'Nothing is bored there: it lies behind the panel, in the groove of the back, or where this panel has no joint. The joint has one bore fewer than was meant.',
    remedy: 'Move the place to where the panels meet, or remove it from the list.',
    example: 'kind: wall   # 330 mm deep\nwidth: 600\ndowels: [53, 213, 373]',
  },
  check(context) {
    return context.boring.unused.map(({ panel, at }) => ({
      place: at.place,
      ...(panel === null ? {} : { panel }),
      message: panel === null ? say.nowhere({ at: at.value }) : say.notOnPanel({ at: at.value, panel }),
      repairs:
        at.place.part === 'self'
          ? [{ title: say.remove({ at: at.value }), changes: [remove(at.path)], preferred: true }]
          : [],
    }));
  },
};
