import { counted } from '../../shared-core/words/english.js';
import { messages } from '../../shared-core/words/message.js';
import { because, type FileFault } from '../messages.js';

interface Found {
  readonly what: string;
  readonly cost: number;
  readonly bound: number;
  readonly priced: boolean;
}

/** What is said while papers are written. */
export const say = messages('writing-papers', {
  notOurs: ({ path }: { readonly path: string }) =>
    `${path} was not written by Borewright, or has been changed since. Move it away or name another folder.`,
  fault: ({ path, fault }: { readonly path: string; readonly fault: FileFault }) => `${path}: ${because(fault)}.`,
  noFont: ({ font }: { readonly font: string }) => `The font ${font} is missing beside the program; install it anew.`,
  noDisk: () => 'There is no disk here to write papers to. Use the desktop editor or the command line.',
  stopped: () => 'Stopped; nothing was written.',

  // How far it has come. Costs are in the shop's own money, or in square metres where it has no prices.
  boards: ({ board, place, boards }: { readonly board: string; readonly place: number; readonly boards: number }) =>
    boards === 1 ? `sheets of ${board}` : `sheets of ${board}, ${place} of ${counted(boards, 'board')}`,
  found: ({ what, cost, bound, priced }: Found) => {
    const amount = priced ? `cost ${cost.toFixed(2)}` : `${cost.toFixed(2)} m²`;
    return cost <= bound
      ? `${what}: ${amount}, no layout ${priced ? 'costs' : 'takes'} less`
      : `${what}: ${amount}, at least ${bound.toFixed(2)}${priced ? '' : ' m²'}`;
  },
  paper: ({ name, place, papers }: { readonly name: string; readonly place: number; readonly papers: number }) =>
    `${name}, ${place} of ${counted(papers, 'paper')}`,
});
