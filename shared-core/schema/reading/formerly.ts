import type { Change } from '../../document/finding.js';
import type { Place } from '../../document/place.js';
import { messages } from '../../words/message.js';
import { errorAt, preferred, quoted } from '../tell.js';
import type { Context } from './context.js';

const say = messages('word-replaced', {
  replaced: ({ word, now }: { readonly word: string; readonly now: string }) =>
    `${quoted(word)} is an old word. It is read as \`${now}\`; write that.`,
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
  const repairs = [preferred(`Write ${now}`, change(now))];
  context.tell([{ ...errorAt('word-replaced', place, say.replaced({ word, now }), { repairs }), severity: 'warning' }]);
  return now;
}
