import type { TextRange } from './drawing.js';

// What the client and the server say to each other about a shelf that is moved on the drawing. Types only.

/** Method of the request from the client to the server: `MoveShelfParams` -> `MoveShelfReply`. */
export type MoveShelfMethod = 'borewright/moveShelf';

export interface MoveShelfParams {
  readonly uri: string;
  readonly carcass: string;
  /** Key of one of its panels. */
  readonly shelf: string;
  /** So many holes up; down where negative. */
  readonly holes: number;
}

/** The change of the text that moves it; none where there is nothing to move. */
export interface MoveShelfReply {
  readonly uri: string;
  /** The version of the document that the edits are for. */
  readonly version: number;
  readonly edits: readonly { readonly range: TextRange; readonly text: string }[];
}
