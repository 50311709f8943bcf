import { vi } from 'vitest';
import type * as Words from '../../../shared-core/words/message.js';

/** What was told: the words of each template, as they first came up, and which rules said it. */
export interface Gathered {
  /** Every template of every table that is loaded, `GROUP.TEMPLATE`. */
  readonly templates: Set<string>;
  readonly words: Map<string, string>;
}

/**
 * Watches the tables and what is told of them. To be hoisted over the imports:
 * `vi.mock('…/words/message.js', async (original) => watched(gathered, await original()))`.
 */
export function watched(gathered: Gathered, original: typeof Words): typeof Words {
  const { Message, messages } = original;
  const inEnglish: (this: Words.Message, show: Parameters<Words.Message['inEnglish']>[0]) => string = Reflect.get(
    Message.prototype,
    'inEnglish',
  );
  vi.spyOn(Message.prototype, 'inEnglish').mockImplementation(function (this: Words.Message, show) {
    const words = inEnglish.call(this, show);
    if (!gathered.words.has(this.id)) gathered.words.set(this.id, words);
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
