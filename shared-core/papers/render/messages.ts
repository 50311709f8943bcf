import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

/** The head of the column that says of which part of a paper a row is. */
export const HEADS = labels('print-heads', { part: 'Part', toChange: 'to be changed' });

/** What a renderer adds to a paper. */
export const say = messages('print', {
  picture: ({ name }: { readonly name: string }) => `(picture: ${name})`,
  contents: () => 'Contents',
  toScale: ({ name, scale }: { readonly name: string; readonly scale: number }) => `${name} – scale 1:${scale}`,
  notToScale: ({ name }: { readonly name: string }) => `${name} – not to scale`,
});

/** What the parts of a paper are, for whoever reads its JSON by the schema. */
export const SCHEMA_WORDS = labels({
  title: 'Shop paper',
  about:
    'A shop paper: its blocks in the order to read. All text is as on paper, lengths with their unit or under a head that has it.',
  heading: 'A heading. Level 1 stands by itself, 2 and 3 are in it; aside stands at the other end of the line.',
  paragraph: 'Running text.',
  list: 'Things that are told one by one.',
  cautions: 'What to mind so that nobody is hurt.',
  figures: 'Named figures to be set; those that are marked are to be changed.',
  table: 'A table, each row as long as its columns; null is a box to tick.',
  picture:
    'A picture with what it shows in words; width and height in millimetres of paper. SVG and PDF have the picture itself.',
  labels: 'Labels on sheets of labels, in millimetres; the table has what each says.',
});
