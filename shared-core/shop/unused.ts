import type { Finding } from '../document/finding.js';
import type { Path } from '../document/place.js';
import type { MapEntry, TreeNode } from '../document/tree.js';
import { preferred } from '../schema/tell.js';
import { messages } from '../words/message.js';

/** Keys of a shop file that nothing is worked out from yet, as they stand in it; '*' is any name. What follows is why. */
const UNUSED: readonly (readonly [path: readonly string[], why: string])[] = [
  [['vertical-heads', '*', 'depth-stops'], 'each set-up has one depth, whatever the turret holds'],
  [['horizontal-heads', '*', 'depth-stops'], 'each set-up has one depth, whatever the turret holds'],
  [['line-drills', '*', 'depth-stops'], 'each set-up has one depth, whatever the turret holds'],
  [['cup-borers'], 'no job can ask for hinge cups yet'],
  [['habits', 'machines', 'cups'], 'no job can ask for hinge cups yet'],
];

const say = messages('value-unused-in-shop', {
  nothing: ({ key, why }: { readonly key: string; readonly why: string }) => `\`${key}\` does nothing yet: ${why}.`,
  remove: ({ key }: { readonly key: string }) => `Remove \`${key}\``,
});

/** Values of a shop file that do nothing, told so that nobody relies on them; in the order of the text. */
export function unusedValues(root: TreeNode | null): readonly Finding[] {
  return root?.kind === 'map' ? under(root.entries, []) : [];
}

/** What the owner of a shop file is to know of a key that does nothing yet; null of any other. */
export function unusedWords(path: Path): string | null {
  const why = whyAt(path);
  return why === null ? null : `It does nothing yet: ${why}.`;
}

function under(entries: readonly MapEntry[], path: Path): readonly Finding[] {
  return entries.flatMap(({ key, keyPlace, value }): readonly Finding[] => {
    const here = [...path, key];
    const why = whyAt(here);
    if (why === null) return value?.kind === 'map' && value.alias === undefined ? under(value.entries, here) : [];
    const repairs = [preferred(say.remove({ key }), { kind: 'remove', part: 'shop', path: here })];
    const common = { severity: 'info', related: [] } as const;
    return [{ rule: 'value-unused', place: keyPlace, message: say.nothing({ key, why }), repairs, ...common }];
  });
}

function whyAt(path: Path): string | null {
  const found = UNUSED.find(
    ([steps]) => steps.length === path.length && steps.every((step, i) => step === '*' || step === path[i]),
  );
  return found?.[1] ?? null;
}
