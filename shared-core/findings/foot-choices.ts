import type { Foot } from '../shop/model.js';
import { quoted } from '../words/english.js';
import { messages } from '../words/message.js';
import { ownText, replaceName, setWord } from './changes.js';
import type { Repair } from './finding.js';
import type { CarcassContext } from './rule.js';

export const footChoices = messages('foot-choices', {
  use: ({ foot }: { readonly foot: string }) => `Stand it on ${quoted(foot)}`,
});

/** Ways to stand the carcass on other feet that do, in the order of the shop. */
export function otherFeet({ spec, shop }: CarcassContext, now: Foot, does: (foot: Foot) => boolean): readonly Repair[] {
  const others = [...shop.feet.values()].filter((foot) => foot.name !== now.name && does(foot));
  return others.flatMap(({ name }) => {
    const change = ownText(spec.feet) ? replaceName(spec.feet, name) : setWord(['feet'], name);
    return change === null ? [] : [{ title: footChoices.use({ foot: name }), changes: [change], preferred: false }];
  });
}
