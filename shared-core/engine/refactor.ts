import type { TextEdit } from '../document/pieces.js';
import type { Words } from '../words/message.js';

/** A change of a job that nobody needs and somebody may want; edits are in offsets of the whole file. */
export interface Refactor {
  readonly title: Words;
  readonly edits: readonly TextEdit[];
}
