import type { Change } from '../../document/finding.js';
import type { Place } from '../../document/place.js';
import { messages } from '../../words/message.js';
import { quoted } from '../../words/english.js';
import { say as said } from '../messages.js';
import { errorAt, preferred } from '../tell.js';
import type { Context } from './context.js';

export const say = messages('word-replaced', {
  replaced: ({ word, now }: { readonly word: string; readonly now: string }) =>
    `${quoted(word)} is an old word for \`${now}\`. Write \`${now}\`.`,
});

/** The word that stands for one of an earlier version, which is told; null where the word is none of those. */
export function replacedBy<K extends string>(
  context: Context,
  formerly: Readonly<Record<string, K>> | undefined,
  word: string,
  place: Place,
  change: (now: K) => Change,
): K | null {
  if (formerly === undefined || !Object.hasOwn(formerly, word)) return null;
  const now = formerly[word]!;
  const repairs = [preferred(said.write({ text: now }), change(now))];
  context.tell([{ ...errorAt('word-replaced', place, say.replaced({ word, now }), { repairs }), severity: 'warning' }]);
  return now;
}
