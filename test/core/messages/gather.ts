import { vi } from 'vitest';
import { spoken as de } from '../../../server/spoken/de.js';
import { spoken as fr } from '../../../server/spoken/fr.js';
import { speak, type Spoken } from '../../../shared-core/words/spoken.js';
import type * as Words from '../../../shared-core/words/message.js';

/** What was told: the words of each template, as they first came up, and which rules said it. */
export interface Gathered {
  /** Every template of every table that is loaded, `GROUP.TEMPLATE`. */
  readonly templates: Set<string>;
  readonly words: Map<string, string>;
  /** The same in every language, a few times for each template. */
  readonly wordings: Map<string, Wording[]>;
}

export interface Wording {
  readonly english: string;
  readonly de: string;
  readonly fr: string;
}

/** So many examples of each template are looked at in other languages. */
const WORDINGS = 4;

/**
 * Watches the tables and what is told of them. To be hoisted over the imports:
 * `vi.mock('…/words/message.js', async (original) => watched(gathered, await original()))`.
 */
export function watched(gathered: Gathered, original: typeof Words): typeof Words {
  const { Message, messages } = original;
  const inWords: (this: Words.Message, show: Parameters<Words.Message['inWords']>[0]) => string = Reflect.get(
    Message.prototype,
    'inWords',
  );
  let isOtherwise = false;
  const otherwise = (message: Words.Message, show: Parameters<Words.Message['inWords']>[0], spoken: Spoken): string => {
    speak(spoken);
    isOtherwise = true;
    try {
      return inWords.call(message, show);
    } finally {
      speak(null);
      isOtherwise = false;
    }
  };
  vi.spyOn(Message.prototype, 'inWords').mockImplementation(function (this: Words.Message, show) {
    const words = inWords.call(this, show);
    if (isOtherwise) return words;
    if (!gathered.words.has(this.id)) gathered.words.set(this.id, words);
    const wordings = gathered.wordings.get(this.id) ?? [];
    gathered.wordings.set(this.id, wordings);
    if (wordings.length < WORDINGS && !wordings.some(({ english }) => english === words))
      wordings.push({ english: words, de: otherwise(this, show, de), fr: otherwise(this, show, fr) });
    return words;
  });
  return {
    ...original,
    messages: (group, templates) => {
      for (const key of Object.keys(templates)) gathered.templates.add(`${group}.${key}`);
      return messages(group, templates);
    },
  };
}
