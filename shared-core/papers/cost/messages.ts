import { messages } from '../../words/message.js';
import { timeWords } from '../../words/time.js';
import { labels } from '../../words/told.js';
import type { WorkKind } from './cost.js';

export const HEADS = labels('cost-heads', {
  what: 'What',
  amount: 'Amount',
  each: 'Each',
  cost: 'Cost',
  share: 'Share',
  time: 'Time',
});
export const PARTS = labels('cost-parts', { dearest: 'What costs most', time: 'Time' });
export const NO_PRICE = labels('no-price', { none: 'no price' });

/** What is done. */
export const WORK: Readonly<Record<WorkKind, string>> = labels('cost-work', {
  saw: 'cutting on the panel saw',
  band: 'banding',
  changeover: 'changing over the boring machines',
  bore: 'boring',
  assemble: 'putting together',
});

/** What the paper of cost and time says; prices are in the shop's own money. */
export const say = messages('cost', {
  total: ({ cost, seconds }: { readonly cost: number; readonly seconds: number }) =>
    `In all ${cost.toFixed(2)} in the shop’s own money, and ${timeWords(seconds)} of work.`,
  timeOnly: ({ seconds }: { readonly seconds: number }) => `In all ${timeWords(seconds)} of work.`,
  about: () =>
    'By the prices and times of the shop file. Sheets count whole, with the offcuts that are kept; bands count with their allowance. Screws of backs, glue and what the job file does not name are not counted.',
  unpriced: ({ count }: { readonly count: number }) =>
    count === 1
      ? 'One line has no price in the shop file, and is not in the sum.'
      : `${count} lines have no price in the shop file, and are not in the sum.`,
  noSaw: () => 'Sheets and their cutting are not counted: the shop file has no panel saw.',
  nothing: () => 'There is nothing to make.',
  sheet: ({ board, stock }: { readonly board: string; readonly stock: string }) =>
    board === stock ? `sheets of ${board}` : `sheets of ${board}, ${stock}`,
  unlaid: ({ board }: { readonly board: string }) => `${board} without a sheet`,
  band: ({ band }: { readonly band: string }) => `band ${band}`,
  squareMetres: ({ amount }: { readonly amount: number }) => `${amount.toFixed(2)} m²`,
  metres: ({ amount }: { readonly amount: number }) => `${amount.toFixed(2)} m`,
  time: ({ seconds }: { readonly seconds: number }) => timeWords(seconds),
});
