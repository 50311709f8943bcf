import type { Language } from '../../shared-core/words/language.js';
import type { Message } from '../../shared-core/words/message.js';
import type { PaperName, WantedPapers, Wishes } from '../../shared-core/service.js';

/** A text that is open where the papers were asked for: it counts in the place of what the disk has. */
export interface OpenText {
  readonly uri: string;
  readonly language: string;
  readonly text: string;
}

/** Papers to be made, wherever that is done: nothing but data. */
export interface PapersTask {
  readonly uri: string;
  /** The job, and shop files that are open. */
  readonly texts: readonly OpenText[];
  readonly wishes: Wishes;
  readonly wanted: WantedPapers;
  /** What they are written in; what programs read is in English whatever it says. */
  readonly language: Language;
}

/** A file to be written into a folder. */
export interface NamedFile {
  /** A plain file name, without a folder. */
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** How far it has come. Costs are in the smallest coins of the shop's money, or a hundredth of a square metre where it has no prices. */
export type Stage =
  | {
      readonly kind: 'layouts';
      readonly board: string;
      readonly index: number;
      readonly boards: number;
      readonly priced: boolean;
      /** null before the first layout. */
      readonly found: { readonly cost: number; readonly bound: number } | null;
    }
  | { readonly kind: 'paper'; readonly name: PaperName; readonly index: number; readonly papers: number };

/** Why nothing can be written, in words for its reader. */
export class CannotWrite extends Error {
  constructor(readonly why: Message) {
    super(why.id);
  }
}
