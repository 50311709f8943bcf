import type { Micrometres } from '../../length/units.js';
import { counted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const HEADS = labels('banding-heads', { edges: 'Edges', length: 'Length', edge: 'Edge', panels: 'Panels' });

/** What the banding list says. */
export const say = messages('banding-list', {
  caution: () =>
    'Hot glue, rollers and trimming knives burn, draw in and cut: keep hands and sleeves away from the feed, and let no piece through that is shorter or narrower than the bander takes. The machine’s manual and local rules decide.',
  order: () =>
    'Band the ends of a panel first, then its back edge, and its front edge last: its band covers the others.',
  cutLast: () => 'A slanting edge is there to be banded once its panel is bored and the corner is sawn off.',
  nothingBanded: () => 'No edge of this job is banded.',
  band: ({ band, thickness }: { readonly band: string; readonly thickness: Micrometres }, show) =>
    `${band}, ${show.exact(thickness)} thick`,
  /** Tape is bought by the metre, whatever the unit of the file. */
  tape: (
    {
      edges,
      length,
      allowance,
    }: { readonly edges: number; readonly length: Micrometres; readonly allowance: Micrometres },
    show,
  ) => `${counted(edges, 'edge')}, ${(length / 1e6).toFixed(2)} m with ${show.exact(allowance)} over on each`,
});
