import { chosen } from '../carcass/choices.js';
import { pullNames } from '../carcass/fronts/pull.js';
import type { Located } from '../document/place.js';
import { overallLength } from '../hung/pulls.js';
import type { FrontPull } from '../hung/model.js';
import { quoted } from '../words/english.js';
import { messages } from '../words/message.js';
import { ownText, remove, replaceName } from './changes.js';
import type { Repair } from './finding.js';
import type { CarcassContext } from './rule.js';

export const pullPlaceMessages = messages('pull-places', {
  usualPlace: ({ key }: { readonly key: string }) => `Remove \`${key}\` and put the pull at its usual place`,
  use: ({ pull }: { readonly pull: string }) => `Use ${quoted(pull)} there`,
});

/** Ways to have a pull elsewhere, or a shorter one: written places that can be taken out, and the longest pull that is shorter. */
export function movedPull(context: CarcassContext, { front, pull }: FrontPull): readonly Repair[] {
  const { spec, shop } = context;
  const { fromEdge, fromEnd, fromTop, end, lies } = spec.pulls;
  const own = (['pullFromEdge', 'pullFromEnd', 'pullFromTop', 'pullEnd', 'pullLies'] as const).map((key) =>
    chosen(spec, front.key, key),
  );
  const places = [...own, fromEdge, fromEnd, fromTop, end, lies].filter(
    (value): value is Located<never> => value !== undefined && value !== null && ownText(value),
  );
  const name = pullNames(spec)(front);
  const shorter = [...shop.pulls.values()]
    .filter((one) => overallLength(one) < overallLength(pull))
    .toSorted((a, b) => overallLength(b) - overallLength(a))[0];
  const change = name === null || shorter === undefined || !ownText(name) ? null : replaceName(name, shorter.name);
  return [
    ...places.map(({ path }) => ({
      title: pullPlaceMessages.usualPlace({ key: String(path.at(-1)) }),
      changes: [remove(path)],
      preferred: false,
    })),
    ...(change === null
      ? []
      : [{ title: pullPlaceMessages.use({ pull: shorter!.name }), changes: [change], preferred: false }]),
  ];
}
