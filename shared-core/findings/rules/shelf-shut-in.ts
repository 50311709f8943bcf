import { openFront } from '../../carcass/fronts/blind.js';
import type { Interval } from '../../carcass/interval.js';
import type { Bay, Panel } from '../../carcass/model.js';
import { extentsOf } from '../../carcass/pose.js';
import { looseOn } from '../../carcass/shelf-kinds.js';
import { wayOut, type ShelfRoom } from '../../hung/bring-in.js';
import type { Micrometres } from '../../length/units.js';
import { messages } from '../../words/message.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { withoutShelf } from './drawer-meets-shelf.js';

interface ShutIn {
  readonly shelf: string;
  readonly size: readonly [length: Micrometres, width: Micrometres];
  readonly open: readonly [width: Micrometres, height: Micrometres];
}

export const say = messages('shelf-shut-in', {
  shut: ({ shelf, size, open }: ShutIn, show) =>
    `${shelf} is ${show.length(size[0])} × ${show.length(size[1])}, and beside the blind panel ${show.length(open[0])} × ${show.length(open[1])} are open: it goes through neither flat nor lifted at an edge or an end. Put it in before the blind panel is screwed on, or leave more room over it or under it.`,
});

export const shelfShutIn: CarcassRule = {
  name: 'shelf-shut-in',
  severity: 'warning',
  about: {
    what: 'A loose shelf in a corner carcass does not come through the opening beside the blind panel.',
    why: 'Such a shelf is longer than the opening is wide. It goes in on edge, its end first, if the place is high enough to lift it; between two fixed shelves that stand close it is not. It is noticed when the blind panel is on and the carcass stands. Only straight ways are tried: flat, or lifted at one edge or one end, and then turned.',
    remedy: 'Put it in before the blind panel is screwed on, give it more height, or make the opening wider.',
    example:
      'kind: base\nwidth: 1100\nblind: { right: 580 }\nfixed-shelves: [256, 448]\nloose-shelves: [{ at: 328 }]\ndoors: left',
  },
  check(context) {
    const { bays, panels } = context.carcass;
    const blind = panels.filter(({ role }) => role === 'blind-panel').map(extentsOf);
    if (blind.length === 0) return [];
    const closed = {
      from: Math.min(...blind.map(({ y }) => y.from)),
      to: Math.max(...blind.map(({ y }) => y.to)),
    };
    return panels
      .filter(({ role }) => role === 'loose-shelf')
      .flatMap((shelf): readonly Found[] => {
        const { x } = extentsOf(shelf);
        const bay = bays.find(({ from, to }) => from <= x.from && x.to <= to);
        const room = bay === undefined ? null : roomOf(context, shelf, bay, closed);
        if (room === null || wayOut(shelf, room) !== null) return [];
        const open = [Math.max(0, room.open.to - room.open.from), room.height] as const;
        const message = say.shut({ shelf: shelf.key, size: [shelf.length, shelf.width], open });
        return [{ place: shelf.place, panel: shelf.key, message, repairs: withoutShelf(context, shelf.key) }];
      });
  },
};

/** What is clear about a shelf between what is fixed; null where nothing closes any of its front. */
function roomOf({ spec, carcass, shop }: CarcassContext, shelf: Panel, bay: Bay, closed: Interval): ShelfRoom | null {
  const front = openFront(spec);
  const open = { from: Math.max(front.from, bay.from), to: Math.min(front.to, bay.to) };
  if (open.from === bay.from && open.to === bay.to) return null;
  const { x, y, z } = extentsOf(shelf);
  const fixed = carcass.panels
    .filter(({ role }) => role === 'fixed-shelf' || role === 'bottom' || role === 'top' || role === 'rail')
    .map(extentsOf)
    .filter((one) => one.x.from < x.to && x.from < one.x.to);
  const floor = Math.max(...fixed.map((one) => one.z.to).filter((at) => at <= z.from));
  const ceiling = Math.min(...fixed.map((one) => one.z.from).filter((at) => at >= z.to));
  return {
    width: bay.to - bay.from,
    y: { from: closed.to, to: y.to + looseOn(shop.habits).play },
    outer: closed.from,
    edge: 0,
    height: ceiling - floor,
    open: { from: open.from - bay.from, to: open.to - bay.from },
  };
}
