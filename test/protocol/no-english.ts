/** Words that no sentence in German or French has, and hardly a sentence in English does without. */
const ENGLISH = /\b(?:the|of|and|is|are|with|which|its|every|deep|counts|bored|hole)\b/i;

/** Lines of these texts that are in English once names are taken away: what is quoted, linked, or has a hyphen. */
export function inEnglish(texts: readonly string[]): readonly string[] {
  return [...new Set(texts.flatMap((text) => text.split('\n')))].filter((line) => ENGLISH.test(withoutNames(line)));
}

const withoutNames = (words: string): string =>
  words.replace(/`[^`]*`|\]\([^)]*\)|[„«‘][^“»’]*[“»’]|[\w-]+-[\w-]+|[\w-]+\.(?:shop|carcass)\.yaml/g, '');
