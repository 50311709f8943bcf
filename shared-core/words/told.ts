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

/** A table of names and labels: what has no figures and is no sentence. A translation puts another in its place. */
export function labels<const T extends Readonly<Record<string, string>>>(
  table: T,
): { readonly [K in keyof T]: T[K] & Told } {
  return table as { readonly [K in keyof T]: T[K] & Told };
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
