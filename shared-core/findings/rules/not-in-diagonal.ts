import type { CarcassSpec } from '../../carcass/spec.js';
import type { Lacking, Without } from '../../carcass/lacking.js';
import type { Path } from '../../document/place.js';
import { messages, type Message } from '../../words/message.js';
import { remove, setWord } from '../changes.js';
import type { Change, Repair } from '../finding.js';
import type { CarcassRule, Found } from '../rule.js';

export const say = messages('not-in-diagonal', {
  otherHand: () =>
    'A carcass stands across one corner, and `diagonal` says both `left` and `right`. Remove one of them; `left` counts.',
  dividers: () =>
    'A carcass across a corner is made without dividers, as the bays beside them would have no front of their own. Remove them, or stand another carcass beside it.',
  fixedShelves: () =>
    'A carcass across a corner is made without fixed shelves, as one of its sides would meet them at their front edge, which is not bored. Make them `loose-shelves`.',
  drawer: () =>
    'A drawer cannot run between the sides of a carcass across a corner, which stand square to each other. Put a door there, and the drawer into a carcass beside it.',
  appliance: () =>
    'An appliance cannot stand between the sides of a carcass across a corner. Give it a carcass of its own.',
  blind: () => 'A carcass across a corner has no blind end. Remove `blind`, or remove `diagonal`.',
  wardrobeRails: () =>
    'No rail for clothes runs between the sides of a carcass across a corner, which do not face each other. Remove it.',
  plinth: () =>
    'A carcass across a corner is made without a plinth of its own. Carry the plinth of the run through under it, and say how high that is with `plinth: 0` and `place: { above-floor: … }`.',
  endPanels: () =>
    'A carcass across a corner is made without end panels, as a neighbour stands at both of its sides. Give them to the last carcass of each run.',
  fillers: () =>
    'A carcass across a corner is made without fillers, as its front does not lie in the plane of its neighbours. Give them to the neighbours.',
  top: () => 'Both sides of a carcass across a corner stand under its top. Write `top: over`.',
  bottom: () => 'Both sides of a carcass across a corner stand on its bottom. Write `bottom: under`.',
  back: () =>
    'The backs of a carcass across a corner lie on the back edges: a groove or a rebate cannot run along both of its walls. Write `applied`, or `none`.',
  backOpen: () =>
    'The backs of a carcass across a corner are whole. Remove it, and cut out what is needed at the wall.',
  inset: () =>
    'The front across a corner lies before its edges: between sides that stand square to each other it finds no room. Write `overlay`.',
  remove: ({ key }: { readonly key: string }) => `Remove \`${key}\``,
  write: ({ key, word }: { readonly key: string; readonly word: string }) => `Write \`${key}: ${word}\``,
});

/** What is said of each, and the word that is to be written where it is not just removed. */
const TOLD: Readonly<Record<Lacking, { readonly told: () => Message; readonly word?: string }>> = {
  'other-hand': { told: say.otherHand },
  dividers: { told: say.dividers },
  'fixed-shelves': { told: say.fixedShelves },
  drawer: { told: say.drawer },
  appliance: { told: say.appliance },
  blind: { told: say.blind },
  'wardrobe-rails': { told: say.wardrobeRails },
  plinth: { told: say.plinth, word: '0' },
  'end-panels': { told: say.endPanels, word: 'none' },
  fillers: { told: say.fillers },
  top: { told: say.top, word: 'over' },
  bottom: { told: say.bottom, word: 'under' },
  back: { told: say.back, word: 'applied' },
  'back-open': { told: say.backOpen },
  inset: { told: say.inset, word: 'overlay' },
};

export const notInDiagonal: CarcassRule = {
  name: 'not-in-diagonal',
  severity: 'error',
  hides: true,
  about: {
    what: 'A carcass across a corner is to have what cannot be in one, and is made without it.',
    why: 'Its two sides stand square to each other and end at a slanting front. What runs straight between sides, from drawers to dividers, or lies in the plane of the neighbours’ fronts, has no place there; its sides stand between bottom and top, and its backs lie on the back edges.',
    remedy: 'Remove it, or write what the message says.',
    example: 'kind: wall\nwidth: 600\ndiagonal: { right: 600 }\ndividers: 1',
  },
  check({ spec }) {
    return spec.without.map(({ what, at }): Found => {
      const { told, word } = TOLD[what];
      return { place: at.place, message: told(), repairs: repairsOf(spec, { what, at }, word) };
    });
  },
};

/** A word is written into the carcass itself, whoever said the other; all else is removed where it is its own. */
function repairsOf(
  spec: CarcassSpec,
  { what, at: { place, path } }: Without,
  word: string | undefined,
): readonly Repair[] {
  const key = keyOf(path);
  const offer = (title: Message, change: Change): readonly Repair[] => [{ title, changes: [change], preferred: true }];
  if (word !== undefined) {
    const own = place.part === 'self' ? path : pathOf(what);
    return offer(
      say.write({ key: String(own.findLast((step) => typeof step === 'string')), word }),
      setWord(own, word),
    );
  }
  if (place.part !== 'self') return [];
  if (what === 'drawer' || what === 'appliance') return [];
  if (
    what === 'wardrobe-rails' ||
    what === 'dividers' ||
    what === 'fixed-shelves' ||
    what === 'blind' ||
    what === 'fillers'
  )
    return offer(say.remove({ key }), remove(path.slice(0, 1)));
  return offer(say.remove({ key: String(path.at(-1)) }), remove(path));
}

const keyOf = (path: Path): string => String(path[0]);

/** Where a carcass writes it itself. */
function pathOf(what: Lacking): Path {
  return what === 'back' ? ['back'] : what === 'inset' ? ['doors', 'how'] : [what];
}
