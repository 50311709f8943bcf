import type { InlayHint, Range } from 'vscode-languageserver';
import { hintsIn, type HintChoice } from '../../shared-core/service.js';
import { offsetOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** Behind the values that cause them: stop positions by the shop's own stop names, and hole numbers of loose shelves. */
export function inlayHints(file: OpenFile, range: Range, choice: HintChoice): InlayHint[] {
  const { document } = file;
  return hintsIn(file, offsetOf(document, range.start), offsetOf(document, range.end), choice).map(
    ({ at, label, about }): InlayHint => ({
      position: document.positionAt(at),
      label,
      paddingLeft: true,
      ...(about !== '' && { tooltip: about }),
    }),
  );
}
