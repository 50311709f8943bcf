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
  size: 'Along × across',
  offcut: 'Offcut',
  sheet: 'Sheet',
});

/** What comes of a cut that is no piece. */
export const PARTS = labels('layout-parts', { part: 'part', turned: 'turned' });

/** Sheets that are cut alike, by their numbers among all of a board. */
interface NumberedSheet {
  readonly first: number;
  readonly last: number;
  readonly sheets: number;
  readonly stock: string;
}

/** What sheets cost in the shop's own money, or what they measure in all where it does not price every size. */
interface Cost {
  readonly cost: number;
  readonly priced: boolean;
}

const amount = ({ cost, priced }: Cost): string => (priced ? `cost ${cost.toFixed(2)}` : `${cost.toFixed(2)} m²`);

/** What the sheet layouts say. */
export const say = messages('sheet-layouts', {
  about: ({ saw, kerf, stages }: { readonly saw: string; readonly kerf: Micrometres; readonly stages: number }, show) =>
    `Sizes as cut, bands taken off, in ${inUnit(show.unit)}. Saw: ${saw}, kerf ${show.exact(kerf)}, ${counted(stages, 'stage')}.`,
  caution: () =>
    'Guards and riving knife stay on the saw; hands stay clear of the blade. The saw’s manual and local rules decide.',
  noSize: () => 'No layout: the shop file gives no size of sheet for this board.',
  misfit: ({ letter }: { readonly letter: string }) => `${letter} cannot be cut from any sheet on this saw.`,
  lacking: ({ letter, count }: { readonly letter: string; readonly count: number }) =>
    `${count} of ${letter} ${count === 1 ? 'has' : 'have'} no sheet: those that would hold ${count === 1 ? 'it' : 'them'} are used up. Add sheets of the board to the shop file.`,
  tooFew: ({ sheets, ...cost }: Cost & { readonly sheets: number }) =>
    `${counted(sheets, 'sheet')}, ${amount(cost)}, and pieces that have no sheet`,
  least: ({ sheets, ...cost }: Cost & { readonly sheets: number }) =>
    `${counted(sheets, 'sheet')}, ${amount(cost)}: no layout ${cost.priced ? 'costs' : 'takes'} less`,
  notLeast: ({ sheets, bound, ...cost }: Cost & { readonly sheets: number; readonly bound: number }) =>
    `${counted(sheets, 'sheet')}, ${amount(cost)}; no layout ${cost.priced ? `costs under ${bound.toFixed(2)}` : `takes under ${bound.toFixed(2)} m²`}`,
  firstCuts: ({ first, last, sheets, stock, cuts }: NumberedSheet & { readonly cuts: 'along' | 'across' }) =>
    `${first === last ? `Sheet ${first}` : `Sheets ${first} to ${last}`} of ${sheets}: ${stock}, first cuts ${cuts} the sheet`,
  sheet: ({ first, last, sheets, stock }: NumberedSheet) =>
    `${first === last ? `Sheet ${first}` : `Sheets ${first} to ${last}, cut alike,`} of ${sheets}: ${stock}`,
  picture: ({ stock }: { readonly stock: string }) =>
    `${stock} with its pieces; the table below lists them in the order of the cuts.`,
  offcut: ({ names }: { readonly names: readonly string[] }) => `offcut ${names.join(', ')}`,
  keep: ({ board }: { readonly board: string }) =>
    `Mark these offcuts and keep them. Written under \`sheets\` of ${board} in the shop file, each with a name and how many there are, they are used first where that is cheapest.`,
});
