import type { Change, Finding, Repair } from '../document/finding.js';
import type { Path, Place } from '../document/place.js';
import type { MapEntry, TreeNode } from '../document/tree.js';
import { preferred } from '../schema/tell.js';
import { messages, type Message } from '../words/message.js';
import type { Habits } from './model.js';

/** Keys of a shop file that nothing is worked out from yet, as they stand in it; '*' is any name. What follows is why. */
const UNUSED: readonly (readonly [path: readonly string[], why: string])[] = [
  [['vertical-heads', '*', 'depth-stops'], 'each set-up has one depth, whatever the turret holds'],
  [['horizontal-heads', '*', 'depth-stops'], 'each set-up has one depth, whatever the turret holds'],
  [['line-drills', '*', 'depth-stops'], 'each set-up has one depth, whatever the turret holds'],
];

/** Habits that say something only where places are shared; each with whether it is one that asks for more than is usual. */
const WITH_SHARED_PLACES: Readonly<Record<string, (habits: Habits) => boolean>> = {
  'shared-load': ({ sharedLoad }) => sharedLoad !== null,
  'spare-holes': ({ spareHoles }) => spareHoles,
};

export const say = messages('value-unused-in-shop', {
  nothing: ({ key, why }: { readonly key: string; readonly why: string }) => `\`${key}\` does nothing yet: ${why}.`,
  nothingYet: ({ why }: { readonly why: string }) => `It does nothing yet: ${why}.`,
  notShared: ({ key }: { readonly key: string }) =>
    `\`${key}\` does nothing here: it counts only with \`share-places: yes\`. Write that too, or remove \`${key}\`.`,
  share: () => 'Share places with `share-places: yes`',
  remove: ({ key }: { readonly key: string }) => `Remove \`${key}\``,
});

/** Values of a shop file that do nothing, told so that nobody relies on them; in the order of the text. */
export function unusedValues(root: TreeNode | null, habits: Habits): readonly Finding[] {
  return root?.kind === 'map' ? under(root.entries, [], habits) : [];
}

function told(place: Place, message: Message, repairs: readonly Repair[]): Finding {
  return { rule: 'value-unused', severity: 'info', place, message, related: [], repairs };
}

/** What the owner of a shop file is to know of a key that does nothing yet; null of any other. */
export function unusedWords(path: Path): Message | null {
  const why = whyAt(path);
  return why === null ? null : say.nothingYet({ why });
}

function under(entries: readonly MapEntry[], path: Path, habits: Habits): readonly Finding[] {
  return entries.flatMap(({ key, keyPlace, value }): readonly Finding[] => {
    const here = [...path, key];
    const remove: Change = { kind: 'remove', part: 'shop', path: here };
    const why = whyAt(here);
    if (why !== null) return [told(keyPlace, say.nothing({ key, why }), [preferred(say.remove({ key }), remove)])];
    if (lacksSharing(here, habits)) {
      const share: Change = { kind: 'set', part: 'shop', path: ['habits', 'share-places'], text: 'yes' };
      const repairs = [
        preferred(say.share(), share),
        { title: say.remove({ key }), changes: [remove], preferred: false },
      ];
      return [told(keyPlace, say.notShared({ key }), repairs)];
    }
    return value?.kind === 'map' && value.alias === undefined ? under(value.entries, here, habits) : [];
  });
}

/** Whether a value asks for something of shared places in a shop that shares none. */
function lacksSharing([section, key, ...below]: Path, habits: Habits): boolean {
  if (habits.sharePlaces || section !== 'habits') return false;
  const isBatch = key === 'sizes' && below.length === 2 && below[1] === 'batch';
  return isBatch || (below.length === 0 && WITH_SHARED_PLACES[String(key)]?.(habits) === true);
}

function whyAt(path: Path): string | null {
  const found = UNUSED.find(
    ([steps]) => steps.length === path.length && steps.every((step, i) => step === '*' || step === path[i]),
  );
  return found?.[1] ?? null;
}
