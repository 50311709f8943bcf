import { asKey } from './nearest.js';
import type { Tried } from './schema.js';

/** What a word that is no key of a map was most likely meant to be; null where its schema does not tell. */
export function triedOf(
  { tried }: { readonly tried?: Readonly<Record<string, Tried<string>>> },
  word: string,
): Tried<string> | null {
  const key = asKey(word);
  return tried !== undefined && Object.hasOwn(tried, key) ? tried[key]! : null;
}
