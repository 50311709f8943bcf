import type { MoveShelfParams, MoveShelfReply } from '../drawing/messages/shelves.js';
import { moveShelf } from '../engine/move-shelf.js';
import type { DrawnDocument } from './drawing.js';
import type { AnalysedFile } from './file.js';

/** The change of the text that moves a loose shelf along its rows. */
export function shelfMoved(
  file: AnalysedFile,
  { uri, version, toRange }: DrawnDocument,
  { carcass, shelf, holes }: MoveShelfParams,
): MoveShelfReply {
  const edits = file.kind === 'shop' ? [] : moveShelf(file.analysis, carcass, shelf, holes);
  return { uri, version, edits: edits.map(({ start, end, text }) => ({ range: toRange(start, end), text })) };
}
