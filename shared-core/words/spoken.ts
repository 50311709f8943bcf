/** All that is said in another language than English, by table and name. What it lacks is said in English. */
export interface Spoken {
  readonly language: 'de' | 'fr';
  readonly messages: Readonly<Record<string, Readonly<Record<string, (figures: never, show: never) => string>>>>;
  readonly labels: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/**
 * What the program speaks. It is nothing that the core has worked out: whoever starts the program says it once, before anything is
 * told, as one who lays another book of words on the table.
 */
const TONGUE: { spoken: Spoken | null } = { spoken: null };

/** From now on everything is told in these words; null for English. */
export function speak(spoken: Spoken | null): void {
  TONGUE.spoken = spoken;
}

/** The words of one message, or of one label, in the language of the program; undefined where it has none of its own. */
export function templateOf(group: string, key: string): ((figures: never, show: never) => string) | undefined {
  return TONGUE.spoken?.messages[group]?.[key];
}
export function labelOf(table: string, key: string): string | undefined {
  return TONGUE.spoken?.labels[table]?.[key];
}

/** The language that is spoken. */
export function languageSpoken(): 'en' | 'de' | 'fr' {
  return TONGUE.spoken?.language ?? 'en';
}

/** A figure as the reader's language writes it: '12,5' where decimals have a comma. For reading, never for a file. */
export function asRead(figure: string): string {
  return TONGUE.spoken === null ? figure : figure.replace('.', ',');
}

// Tables of another language are a bundle of their own, which knows nothing of what was said here: they name their words themselves.

/** 'from … to …' between two figures. */
export function rangeWord(): string {
  return { en: 'to', de: 'bis', fr: 'à' }[languageSpoken()];
}

/** 'and' between the last two of a list. */
export function andWord(): 'and' | 'und' | 'et' {
  return ({ en: 'and', de: 'und', fr: 'et' } as const)[languageSpoken()];
}
