import { boxesOf, type BoxParams, type BoxReply } from '../../shared-core/service.js';
import { offsetOf, shownIn } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** A carcass in three dimensions, or all that stand along its wall. */
export function boxes(file: OpenFile, params: BoxParams): BoxReply {
  const { document } = file;
  const offset = params.position === null ? null : offsetOf(document, params.position);
  return boxesOf(file, shownIn(document), params, offset);
}
