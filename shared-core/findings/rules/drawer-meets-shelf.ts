import { extentsOf, meet } from '../../carcass/pose.js';
import { isInDrawer } from '../../carcass/roles.js';
import { means, wholeOf } from '../../job/panel-key.js';
import { listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, remove } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

export const say = messages('drawer-meets-shelf', {
  meets: ({ shelf, drawers }: { readonly shelf: string; readonly drawers: readonly string[] }) =>
    `${shelf} lies in the way of ${listed(drawers)}, which ${verb(drawers.length, 'runs', 'run')} through the same room. Move the shelf to where no drawer runs, or remove it.`,
  remove: ({ shelf }: { readonly shelf: string }) => `Remove ${shelf}`,
});

export const drawerMeetsShelf: CarcassRule = {
  name: 'drawer-meets-shelf',
  severity: 'error',
  about: {
    what: 'A loose shelf lies where a drawer runs.',
    why: 'Drawers take their room from fixed shelves, top and bottom; a loose shelf is put in afterwards and then the drawer does not go in, or the shelf has no place.',
    remedy: 'Move the shelf, or remove it.',
    example: 'kind: base\nwidth: 600\nloose-shelves: [424]\nfronts: [drawer, { front: drawer, height: 140 }]',
  },
  check(context) {
    const { panels } = context.carcass;
    const pieces = panels.filter(isInDrawer).map((panel) => ({ drawer: wholeOf(panel.key), at: extentsOf(panel) }));
    if (pieces.length === 0) return [];
    return panels
      .filter(({ role }) => role === 'loose-shelf')
      .flatMap((shelf): readonly Found[] => {
        const drawers = distinct(pieces.filter(({ at }) => meet(at, extentsOf(shelf))).map(({ drawer }) => drawer));
        if (drawers.length === 0) return [];
        const message = say.meets({ shelf: shelf.key, drawers });
        return [{ place: shelf.place, panel: shelf.key, message, repairs: withoutShelf(context, shelf.key) }];
      });
  },
};

/** A shelf of a list can be taken out of it; one of a number cannot be told from the others. */
export function withoutShelf({ spec }: CarcassContext, panel: string): readonly Repair[] {
  const shelf = [...spec.fixedShelves, ...spec.looseShelves].find(({ key }) => means(key, panel));
  if (shelf === undefined || !ownText(shelf.at)) return [];
  const path = shelf.at.path.at(-1) === 'at' ? shelf.at.path.slice(0, -1) : shelf.at.path;
  return [{ title: say.remove({ shelf: shelf.key }), changes: [remove(path)], preferred: false }];
}
