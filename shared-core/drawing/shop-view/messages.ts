import { inOneNotation } from '../../length/show.js';
import type { Micrometres } from '../../length/units.js';
import { counted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

interface Range {
  readonly min: Micrometres;
  readonly max: Micrometres;
}
interface SomeSpindles {
  /** From 1; null where there is one head. */
  readonly head: number | null;
  readonly spindles: number;
}

function spindlesOf({ head, spindles }: SomeSpindles): string {
  const count = spindles === 1 ? 'One spindle' : `${spindles} spindles`;
  return head === null ? count : `Head ${head}: ${count}`;
}

/** What a machine takes and does. */
export const FACTS = labels('machine-facts', {
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
  preMilling: 'Milled off before',
  width: 'Width',
  height: 'Height',
});

export const NAMES = labels('machine-names', {
  operator: 'Operator',
});

/** What is said of the machines of a shop. */
export const say = messages('shop-view', {
  spindles: ({ spindles, pitch }: { readonly spindles: number; readonly pitch: Micrometres }, show) =>
    `${spindles} at ${show.nominal(pitch)}`,
  bitsFrom: ({ from }: { readonly from: 'above' | 'below' }) => `from ${from}`,
  heads: ({ heads }: { readonly heads: number }) => counted(heads, 'head'),
  span: ({ min, max }: { readonly min: Micrometres; readonly max: Micrometres }, { reader, unit }) => {
    const write = inOneNotation([min, max], reader);
    return `${write(min)} to ${write(max)} ${unit}`;
  },

  // Beside what is drawn. The unit of the drawing is not said again at each figure.
  headRange: ({ head, min, max }: { readonly head: number | null; readonly min: string; readonly max: string }) =>
    head === null ? `${min} to ${max} from the fence` : `Head ${head}: ${min} to ${max} from the fence`,
  reaches: ({ throat }: { readonly throat: string }) => `reaches ${throat}`,
  stopRange: ({ stop, min, max }: { readonly stop: string; readonly min: string; readonly max: string }) =>
    `${stop}: ${min} to ${max}`,

  // For a reader who cannot see the drawing.
  spindlesInPlate: ({ head, spindles }: SomeSpindles) => `${spindlesOf({ head, spindles })} in the plate.`,
  spindlesFromFence: ({ head, spindles, min, max }: SomeSpindles & Range, show) =>
    `${spindlesOf({ head, spindles })}, the first ${show.exact(min)} to ${show.exact(max)} from the fence.`,
  stop: ({ stop, side, min, max }: Range & { readonly stop: string; readonly side: 'left' | 'right' }, show) =>
    `Stop ${stop} on the ${side}, ${show.exact(min)} to ${show.exact(max)}.`,
  clamp: ({ clamp }: { readonly clamp: string }) => `Clamp ${clamp}.`,

  ofBuiltInShop: ({ kind }: { readonly kind: string }) => `${kind}, from the built-in shop`,
  hasFault: () => 'The text of this machine has an error.',
  ofJob: () => 'A job file has no machines of its own. Open the shop file (NAME.shop.yaml).',
  noMachines: () => 'This shop has no machines yet. Write one under `vertical-heads:`.',
});
