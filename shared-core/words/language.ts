import { composed } from './french.js';
import type { Told } from './told.js';

/** What the extension and its pages speak. */
export const LANGUAGES = ['en', 'de', 'fr'] as const;
export type Language = (typeof LANGUAGES)[number];

/** By the first part of a tag such as ‘de-AT’ (RFC 5646, 2.2.1); English for whatever is not spoken here. */
export function languageOf(tag: string | undefined): Language {
  const [primary] = (tag ?? '').toLowerCase().split('-');
  return LANGUAGES.find((one) => one === primary) ?? 'en';
}

/** A table in another language: the same names, and sentences of the same figures. */
export type Translation<T> = {
  readonly [K in keyof T]: T[K] extends (...figures: infer F) => string ? (...figures: F) => Told : Told;
};

/** A table as it is spoken in this language; the compiler asks for each. */
export function spoken<T>(
  language: Language,
  english: T & Translation<T>,
  others: Readonly<Record<Exclude<Language, 'en'>, Translation<T>>>,
): Translation<T> {
  if (language === 'en') return english;
  return language === 'fr' ? inType(others.fr) : others[language];
}

type Entry = readonly [name: string, words: string | ((...figures: unknown[]) => string)];

/** The same, composed. */
function inType<T extends object>(table: T): T {
  const told = Object.entries(table).map(([name, words]: Entry) => [
    name,
    typeof words === 'string' ? composed(words) : (...figures: unknown[]) => composed(words(...figures)),
  ]);
  // The names are those of the table, and so are the figures; `Object.fromEntries` cannot say so.
  return Object.fromEntries(told) as T;
}
