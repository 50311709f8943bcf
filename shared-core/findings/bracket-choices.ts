import type { Bracket } from '../shop/model.js';
import { quoted } from '../words/english.js';
import { messages } from '../words/message.js';
import { ownText, replaceName, setWord } from './changes.js';
import type { Repair } from './finding.js';
import type { CarcassContext } from './rule.js';

export const bracketChoices = messages('bracket-choices', {
  use: ({ bracket }: { readonly bracket: string }) => `Hang it on ${quoted(bracket)}`,
});

/** Ways to hang the carcass on another bracket, the one that carries least first; those alone that carry so many kilograms. */
export function otherBrackets(
  { spec, shop }: CarcassContext,
  now: Bracket,
  carrying: number | null,
): readonly Repair[] {
  const others = [...shop.brackets.values()]
    .filter(({ name, rating }) => name !== now.name && (carrying === null || (rating !== null && rating >= carrying)))
    .toSorted((a, b) => (a.rating ?? Infinity) - (b.rating ?? Infinity));
  return others.flatMap(({ name }, i) => {
    const change = ownText(spec.brackets) ? replaceName(spec.brackets, name) : setWord(['brackets'], name);
    const title = bracketChoices.use({ bracket: name });
    return change === null ? [] : [{ title, changes: [change], preferred: i === 0 }];
  });
}
