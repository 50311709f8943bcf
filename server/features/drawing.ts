import {
  drawingOf,
  pictureOf,
  shelfMoved,
  type DrawingParams,
  type DrawingReply,
  type FaceCutter,
  type MoveShelfParams,
  type MoveShelfReply,
  type PictureParams,
  type PictureReply,
} from '../../shared-core/service.js';
import { offsetOf, shownIn } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** The drawing that the preview asks for, of the present text or, while that is broken, of the last good one. */
export function drawing(file: OpenFile, params: DrawingParams): DrawingReply {
  const { document } = file;
  const offset = params.position === null ? null : offsetOf(document, params.position);
  return drawingOf(file, shownIn(document), params, offset);
}

/** The same on paper, for a file, the clipboard or a printer. */
export function picture(file: OpenFile, params: PictureParams, face: FaceCutter | null): PictureReply {
  return pictureOf(file, shownIn(file.document), params, face);
}

/** The edits that move a loose shelf along its rows, for the present text. */
export function moveShelf(file: OpenFile, params: MoveShelfParams): MoveShelfReply {
  return shelfMoved(file, shownIn(file.document), params);
}
