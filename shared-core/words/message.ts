import { readingFile, type Reader } from '../length/reader.js';
import type { Unit } from '../length/units.js';
import { showTo, type Show, type Tellable } from './show.js';
import { templateOf } from './spoken.js';
import { asItIs, type Told } from './told.js';

/** Words one message in one language from its figures: lengths as micrometres, names as the owner wrote them. */
export type Template<F> = (figures: F, show: Show) => string;

/** The figures that a template needs; nothing for one without. */
export type FiguresOf<T> = T extends (figures: infer F, show: Show) => string ? F : never;

type Templates = Readonly<Record<string, Template<never>>>;

/** Makes a message of one template from its figures; carries what a page of all messages and a translation need. */
export type Teller<T> = (unknown extends FiguresOf<T> ? () => Message : (figures: FiguresOf<T>) => Message) & {
  readonly id: string;
};

/**
 * A table of messages in another language: of the same names, and words of the same figures. A name that is missing is told in
 * English; a test has a list of those.
 */
export type TranslationOf<T> = {
  readonly [K in keyof T]?: T[K] extends (figures: infer F) => unknown ? Template<F> : never;
};

/** A table of messages: a teller for each template. */
export type Table<T extends Templates> = { readonly [K in keyof T]: Teller<T[K]> };

/**
 * What is to be told, as data: the name of a template and its figures. It is put into words only where a person reads it
 * (`tell`), so nothing that computes knows a language or a unit to show.
 */
export class Message implements Tellable {
  readonly #words: (show: Show) => string;

  constructor(
    /** `GROUP.TEMPLATE`, as in the tables. */
    readonly id: string,
    readonly figures: unknown,
    words: (show: Show) => string,
    /** The unit of the file that it speaks of, where that is not the one before the reader. */
    readonly unit: Unit | null = null,
  ) {
    this.#words = words;
  }

  inWords(show: Show): string {
    return this.#words(show);
  }

  /** The same of a file in this unit, whatever the file is in that its reader has before him. */
  in(unit: Unit): Message {
    return new Message(this.id, this.figures, this.#words, unit);
  }
}

/** Something to be told: a message, or a text that stands as it is, such as the words of the operating system. */
export type Words = Message | Told;

/**
 * A table of messages in English. The type of the templates is what a table in another language has to meet.
 * @param group what the messages are of, in kebab-case: a rule's name, or that of a step of the reading
 */
export function messages<const T extends Templates>(group: string, templates: T): Table<T> {
  const tellers = Object.entries(templates).map(([key, template]) => {
    const id = `${group}.${key}`;
    const english = template as Template<unknown>;
    const teller = (figures?: unknown): Message =>
      new Message(id, figures ?? {}, (show) => {
        // Each table of another language takes the figures of the English one: the compiler has seen to that.
        const spoken = templateOf(group, key) as Template<unknown> | undefined;
        return (spoken ?? english)(figures, show);
      });
    return [key, Object.assign(teller, { id })] as const;
  });
  // The entries are those of `templates`, one for one; `Object.fromEntries` cannot say so.
  return Object.fromEntries(tellers) as unknown as Table<T>;
}

/** Puts a message into words for a reader. */
export function tell(words: Tellable | Told, reader: Reader): Told {
  if (typeof words === 'string') return words;
  return asItIs(words.inWords(showTo(words.unit === null ? reader : readingFile(reader, words.unit), tell)));
}

/** The same for many messages that one reader gets. */
export function tellerTo(reader: Reader): (words: Tellable) => Told {
  return (words) => tell(words, reader);
}

/** The same for messages that say the same, whatever language they are told in. */
export function identityOf(words: Words): string {
  return typeof words === 'string' ? words : `${words.id} ${JSON.stringify(words.figures)}`;
}
