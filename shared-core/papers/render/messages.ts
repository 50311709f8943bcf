import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

/** The head of the column that says of which part of a paper a row is. */
export const HEADS = labels({ part: 'Part' });

/** What a renderer adds to a paper. */
export const say = messages('print', {
  picture: ({ name }: { readonly name: string }) => `(picture: ${name})`,
  toScale: ({ name, scale }: { readonly name: string; readonly scale: number }) => `${name} – scale 1:${scale}`,
  notToScale: ({ name }: { readonly name: string }) => `${name} – not to scale`,
});
