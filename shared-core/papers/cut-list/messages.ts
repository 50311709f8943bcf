import type { Micrometres } from '../../length/units.js';
import { counted, listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { inUnit } from '../../words/names.js';
import { labels } from '../../words/told.js';

export const HEADS = labels('cut-heads', {
  pieces: 'Pieces',
  cutLength: 'Cut length',
  cutWidth: 'Cut width',
  finishedLength: 'Finished length',
  finishedWidth: 'Finished width',
  bands: 'Bands',
  panels: 'Panels',
});

/** The edges of pieces of one size, which may stand upright in one place and lie in another. */
export const EDGES = labels('cut-edges', {
  front: 'front',
  back: 'back',
  'reference-end': 'bottom or left end',
  'far-end': 'top or right end',
});

/** What the cut list says. */
export const say = messages('cut-list', {
  about: (_: unknown, { unit }) =>
    `Sizes in ${inUnit(unit)}, length first; on a board with grain the length runs along it.`,
  /** Why a piece is cut larger than its finished size less its bands. */
  milled: ({ bander, milled }: { readonly bander: string; readonly milled: Micrometres }, show) =>
    `${bander} mills ${show.exact(milled)} off each edge before it bands it; the cut sizes have that put on.`,
  board: (
    {
      board,
      thickness,
      hasGrain,
    }: { readonly board: string; readonly thickness: Micrometres; readonly hasGrain: boolean },
    show,
  ) => `${board}, ${show.exact(thickness)} thick, ${hasGrain ? 'with grain' : 'no grain'}`,
  total: ({ pieces, squareMetres }: { readonly pieces: number; readonly squareMetres: number }) =>
    `${counted(pieces, 'piece')}, ${squareMetres.toFixed(2)} m²`,
  /** 'front and back white-1, top or right end birch-2' */
  bands: ({ bands }: { readonly bands: readonly { readonly band: string; readonly edges: readonly string[] }[] }) =>
    bands.map(({ band, edges }) => `${edges.length === 4 ? 'all round' : listed(edges)} ${band}`).join(', '),
  noBand: () => 'none',
});
