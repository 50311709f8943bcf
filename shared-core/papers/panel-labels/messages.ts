import { counted, listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const HEADS = labels('label-heads', {
  job: 'Job',
  carcass: 'Carcass',
  panel: 'Panel',
  piece: 'Piece',
  size: 'Size',
  board: 'Board',
  cutList: 'Cut list',
  bands: 'Bands',
  operations: 'Operations',
  code: 'Code',
});

/** What stands in the small drawing of a panel. */
export const MARKS = labels('label-marks', { front: 'front', up: 'up', facesUp: 'faces up', facesDown: 'faces down' });

/** What is done with a panel beside boring. */
export const OPERATIONS = labels('label-operations', {
  band: 'band',
  groove: 'groove',
  corner: 'saw off the corner',
  assemble: 'assemble',
});

/** What the panel labels say. */
export const say = messages('panel-labels', {
  about: ({ labels: count, sheets }: { readonly labels: number; readonly sheets: number }) =>
    `${counted(count, 'label')} on ${counted(sheets, 'sheet')}, in the order of the cut list. Stick each on the outside face of its panel as it comes off the saw, so that it never lies over the bores of the inside face; take it off before the box is closed. Print at full size: a print that is made to fit the page does not meet the labels.`,
  code: () => 'The code holds the name of the job file and of the panel: kitchen.carcass.yaml#sink/left.',
  piece: ({ number, of }: { readonly number: number; readonly of: number }) => `${number} of ${of}`,
  bands: ({ bands }: { readonly bands: string }) => `Bands: ${bands}`,
  noBands: () => 'No bands',
  next: ({ next, then }: { readonly next: string; readonly then: readonly string[] }) =>
    then.length === 0 ? `Next: ${next}` : `Next: ${next}; then ${listed(then)}`,
  described: ({ panel, size }: { readonly panel: string; readonly size: string }) => `Label of ${panel}, ${size}`,
});
