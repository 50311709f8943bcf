import type { InlayHint, Range } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { hintsIn, type HintChoice, type ShownHint } from '../../shared-core/service.js';
import { offsetOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** Behind the values that cause them: stop positions by the shop's own stop names, and hole numbers of loose shelves. */
export function inlayHints(file: OpenFile, range: Range, choice: HintChoice): InlayHint[] {
  const { document } = file;
  return hintsIn(file, offsetOf(document, range.start), offsetOf(document, range.end), choice).map((hint) =>
    asHint(document, hint),
  );
}

/** A hint in the protocol's terms. */
export function asHint(document: TextDocument, { at, label, about }: ShownHint): InlayHint {
  return { position: document.positionAt(at), label, paddingLeft: true, ...(about !== '' && { tooltip: about }) };
}
