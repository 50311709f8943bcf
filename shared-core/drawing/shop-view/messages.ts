import { inOneNotation } from '../../length/show.js';
import type { Micrometres } from '../../length/units.js';
import { counted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

/** What a machine takes and does. */
export const FACTS = labels({
  spindles: 'Spindles',
  bitsCome: 'Bits come',
  extension: 'Extension',
  aboveTable: 'Above the table',
  heads: 'Heads',
  reaches: 'Reaches',
  movesOn: 'Moves a panel on',
  fromEdge: 'From the edge',
  depth: 'Depth',
  panelLength: 'Panel length',
  panelWidth: 'Panel width',
  panelThickness: 'Panel thickness',
  kerf: 'Kerf',
  widestStrip: 'Widest strip',
  longestPiece: 'Longest piece',
  trim: 'Trim',
  bandThickness: 'Band thickness',
  shortestEdge: 'Shortest edge',
  narrowestPanel: 'Narrowest panel',
  width: 'Width',
  height: 'Height',
});

/** What is said of the machines of a shop. */
export const say = messages('shop-view', {
  spindles: ({ spindles, pitch }: { readonly spindles: number; readonly pitch: Micrometres }, show) =>
    `${spindles} at ${show.nominal(pitch)}`,
  bitsFrom: ({ from }: { readonly from: 'above' | 'below' }) => `from ${from}`,
  heads: ({ heads }: { readonly heads: number }) => counted(heads, 'head'),
  span: ({ min, max }: { readonly min: Micrometres; readonly max: Micrometres }, { unit }) => {
    const write = inOneNotation([min, max], unit);
    return `${write(min)} to ${write(max)} ${unit}`;
  },
});
