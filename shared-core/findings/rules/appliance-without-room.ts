import { overlaps } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Micrometres } from '../../length/units.js';
import { listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { CarcassRule, Found } from '../rule.js';
import { withoutShelf } from './drawer-meets-shelf.js';

export const say = messages('appliance-without-room', {
  meets: ({ shelves, high }: { readonly shelves: readonly string[]; readonly high: Micrometres }, show) =>
    `${listed(shelves)} ${verb(shelves.length, 'stands', 'stand')} in the place of the appliance, which is ${show.length(high)} high. Move ${verb(shelves.length, 'it', 'them')} to where the appliance does not stand, or remove ${verb(shelves.length, 'it', 'them')}.`,
});

export const applianceWithoutRoom: CarcassRule = {
  name: 'appliance-without-room',
  severity: 'error',
  about: {
    what: 'A shelf stands in the place of an appliance.',
    why: 'The place is open from edge to edge of what is left of the front for it. A shelf in it has to come out again when the appliance is delivered, and its bores stay.',
    remedy: 'Move the shelf, or remove it.',
    example:
      'kind: tall\nwidth: 600\nback: none\nloose-shelves: [904]\nfronts: [left, { front: appliance, height: 595 }, drawer]',
  },
  check(context) {
    const shelves = context.carcass.panels.filter(({ role }) => role === 'fixed-shelf' || role === 'loose-shelf');
    return context.carcass.appliances.flatMap(({ x, z, place }): readonly Found[] => {
      const inIt = shelves.filter((shelf) => {
        const own = extentsOf(shelf);
        return overlaps(own.x, x) && overlaps(own.z, z);
      });
      if (inIt.length === 0) return [];
      const message = say.meets({ shelves: inIt.map(({ key }) => key), high: z.to - z.from });
      const repairs = inIt.flatMap(({ key }) => withoutShelf(context, key));
      return [{ place, message, repairs }];
    });
  },
};
