import type { TextRange } from '../drawing/messages/drawing.js';
import type { PageName } from './render/page-size.js';

// What the client asks of the server about papers, and what it is told. Types only.

/** Every paper that can be made of a job. */
export type PaperName =
  | 'cut-list'
  | 'sheet-layouts'
  | 'banding-list'
  | 'set-ups'
  | 'bore-maps'
  | 'hardware-list'
  | 'assembly'
  | 'checking'
  | 'panel-labels'
  | 'cost';

/** How a paper is written. `svg` and `dxf` are of bore maps alone, a file for each panel; `csv` is of tables alone. */
export type FileForm = 'pdf' | 'html' | 'csv' | 'json' | 'text' | 'svg' | 'dxf';

/** What is to be written of a job. */
export interface WantedPapers {
  readonly only: readonly PaperName[];
  readonly as: readonly FileForm[];
  readonly page: PageName;
  /**
   * How long sheet layouts may be improved, all boards together; null for a fixed number of rounds, which gives the same job the
   * same layouts on every machine.
   */
  readonly seconds: number | null;
}

/** Method of the request from the client to the server: `PapersParams` -> `PapersReply`. It tells how far it has come. */
export type PapersMethod = 'borewright/papers';

export interface PapersParams extends WantedPapers {
  readonly uri: string;
  /** URI of the folder to write to, which is made where it is not there. */
  readonly folder: string;
}

export type PapersReply =
  | {
      readonly kind: 'written';
      /** Names of files in the folder. */
      readonly files: readonly string[];
      /** Carcasses that are in no paper, because their text has errors. */
      readonly broken: readonly string[];
      /** How many errors the job has. */
      readonly errors: number;
    }
  | {
      readonly kind: 'nothing';
      /** Why nothing was written, and what to do. */
      readonly reason: string;
    };

/** Method of the request from the client to the server: `ScannedParams` -> `ScannedReply`. */
export type ScannedMethod = 'borewright/scanned';

export interface ScannedParams {
  /** What a reader of codes gave, or what was pasted. */
  readonly text: string;
}

export type ScannedReply =
  | {
      readonly kind: 'found';
      readonly carcass: string;
      readonly panel: string;
      /** The job files of that name which have the panel, and what makes it there. At least one. */
      readonly places: readonly { readonly uri: string; readonly range: TextRange }[];
    }
  | {
      readonly kind: 'nothing';
      /** Why no panel is found, and what to do. */
      readonly reason: string;
    };
