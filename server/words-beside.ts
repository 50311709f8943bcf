import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import type { Language } from '../shared-core/words/language.js';
import type { Spoken } from '../shared-core/words/spoken.js';

/** Reads the words of a language out of the file that lies beside the program's own; null for English, and where there is none. */
export function wordsBeside(language: Language): Spoken | null {
  const file = new URL(`./words-${language}.cjs`, import.meta.url);
  if (language === 'en' || !existsSync(fileURLToPath(file))) return null;
  const { spoken } = createRequire(import.meta.url)(fileURLToPath(file)) as { readonly spoken: Spoken };
  return spoken;
}
