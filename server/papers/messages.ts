import { counted } from '../../shared-core/words/english.js';
import { messages } from '../../shared-core/words/message.js';
import { because, type FileFault } from '../messages.js';

/** What is said while papers are written. */
export const say = messages('writing-papers', {
  notOurs: ({ path }: { readonly path: string }) =>
    `${path} was not written by Borewright, or has been changed since. Move it away or name another folder.`,
  fault: ({ path, fault }: { readonly path: string; readonly fault: FileFault }) => `${path}: ${because(fault)}.`,
  noFont: ({ font }: { readonly font: string }) => `The font ${font} is missing beside the program; install it anew.`,
  noDisk: () => 'There is no disk here to write papers to. Use the desktop editor or the command line.',
  stopped: () => 'Stopped; nothing was written.',

  // How far it has come. Costs are in the shop's own money.
  boards: ({ board, place, boards }: { readonly board: string; readonly place: number; readonly boards: number }) =>
    boards === 1 ? `sheets of ${board}` : `sheets of ${board}, ${place} of ${counted(boards, 'board')}`,
  found: ({ what, cost, bound }: { readonly what: string; readonly cost: number; readonly bound: number }) =>
    cost <= bound
      ? `${what}: cost ${cost.toFixed(2)}, no layout costs less`
      : `${what}: cost ${cost.toFixed(2)}, at least ${bound.toFixed(2)}`,
  paper: ({ name, place, papers }: { readonly name: string; readonly place: number; readonly papers: number }) =>
    `${name}, ${place} of ${counted(papers, 'paper')}`,
});
