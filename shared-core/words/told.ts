import { labelOf } from './spoken.js';

declare const TOLD: unique symbol;

/**
 * Text that may stand before a reader: words out of a table, or what is the same in every language. A plain string is none, so a
 * sentence put together on the spot does not compile where a paper or a reply asks for this.
 */
export type Told = string & { readonly [TOLD]: true };

/** What stands as it is in every language: a name or a note of the owner's, a figure with its unit, a letter, a mark. */
export function asItIs(text: string): Told {
  // Nothing marks a string when the program runs; the type alone does.
  return text as Told;
}

/** Several of them side by side, with a mark between. */
export function joined(parts: readonly Told[], mark: ', ' | '; ' | ' ' | ' / ' | ' · '): Told {
  return asItIs(parts.join(mark));
}

type Labels<T> = { readonly [K in keyof T]: T[K] & Told };

/**
 * A table of names and labels: what has no figures and is no sentence. One with a group is told in the language of the program,
 * so it is to be read where it is told, not when a module is loaded; one without is told in English.
 */
export function labels<const T extends Readonly<Record<string, string>>>(table: T): Labels<T>;
export function labels<const T extends Readonly<Record<string, string>>>(group: string, table: T): Labels<T>;
export function labels<const T extends Readonly<Record<string, string>>>(group: string | T, table?: T): Labels<T> {
  if (typeof group !== 'string') return group as Labels<T>;
  const english = table!;
  const told = Object.keys(english).map((key) => [
    key,
    { enumerable: true, get: (): string => labelOf(group, key) ?? english[key]! },
  ]);
  // The names are those of the table, one for one; `defineProperties` cannot say so.
  return Object.defineProperties({}, Object.fromEntries(told) as PropertyDescriptorMap) as Labels<T>;
}

/** A word that figures of messages have in English, as one of a group of labels is told. */
export function worded(group: string, word: string): Told {
  return asItIs(labelOf(group, word) ?? word);
}

type Phrase = (...figures: never[]) => string;
type ToldBy<P> = P extends (...figures: infer F) => string ? (...figures: F) => Told : never;

/**
 * A table of sentences for a place that knows no unit to show, as the pages and the extension are: lengths come to them in words.
 * What knows the unit has a table of `messages` instead.
 */
export function phrases<const T extends Readonly<Record<string, Phrase>>>(
  table: T,
): { readonly [K in keyof T]: ToldBy<T[K]> } {
  // Nothing marks a string when the program runs; the type alone does.
  return table as unknown as { readonly [K in keyof T]: ToldBy<T[K]> };
}
