import type { Micrometres } from '../../length/units.js';
import { counted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { inUnit } from '../../words/names.js';
import { labels } from '../../words/told.js';

export const HEADS = labels('layout-heads', {
  cut: 'Cut',
  number: 'Cut',
  finished: 'Finished',
  pieces: 'Pieces',
  panels: 'Panels',
  gives: 'Gives',
  size: 'Along x across',
});

/** What comes of a cut that is no piece. */
export const PARTS = labels('layout-parts', { part: 'part', kept: 'offcut, kept', waste: 'waste', turned: 'turned' });

/** What the sheet layouts say. Costs are in the shop's own money. */
export const say = messages('sheet-layouts', {
  about: ({ saw, kerf, stages }: { readonly saw: string; readonly kerf: Micrometres; readonly stages: number }, show) =>
    `Sizes as cut, bands taken off, in ${inUnit(show.unit)}. Saw: ${saw}, kerf ${show.exact(kerf)}, ${counted(stages, 'stage')}.`,
  caution: () =>
    'Guards and riving knife stay on the saw; hands stay clear of the blade. The saw’s manual and local rules decide.',
  noSize: () => 'No layout: the shop file gives no size of sheet for this board.',
  misfit: ({ letter }: { readonly letter: string }) => `${letter} cannot be cut from any sheet on this saw.`,
  least: ({ sheets, cost }: { readonly sheets: number; readonly cost: number }) =>
    `${counted(sheets, 'sheet')}, cost ${cost.toFixed(2)}: no layout costs less`,
  notLeast: ({ sheets, cost, bound }: { readonly sheets: number; readonly cost: number; readonly bound: number }) =>
    `${counted(sheets, 'sheet')}, cost ${cost.toFixed(2)}; no layout costs under ${bound.toFixed(2)}`,
  firstCuts: ({
    copies,
    stock,
    cuts,
  }: {
    readonly copies: number;
    readonly stock: string;
    readonly cuts: 'along' | 'across';
  }) => `${copies} of ${stock}, first cuts ${cuts} the sheet`,
  copies: ({ copies, stock }: { readonly copies: number; readonly stock: string }) => `${copies} of ${stock}`,
  picture: ({ stock }: { readonly stock: string }) =>
    `${stock} with its pieces; the table below lists them in the order of the cuts.`,
  offcut: ({ size }: { readonly size: string }) => `offcut ${size}`,
});
