import type { Position, Range, TextDocumentContentChangeEvent } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { DrawnDocument } from '../shared-core/service.js';

/** The version of a document that is not open: it has none, and 0 is one that a client may give. */
export const NOT_OPEN = -1;

/** A position as a client sent it may be anything: made whole, and put inside the document. */
export function offsetOf(document: TextDocument, position: Position): number {
  return document.offsetAt({ line: whole(position.line), character: whole(position.character) });
}

/**
 * The document after changes, each made on the text that the one before left. Ranges are put inside the text first: the
 * library loses count of the lines where one reaches past the end.
 */
export function updated(
  document: TextDocument,
  changes: readonly TextDocumentContentChangeEvent[],
  version: number,
): TextDocument {
  let now = document;
  for (const change of changes) {
    const inside =
      'range' in change
        ? { text: change.text, range: rangeOf(now, offsetOf(now, change.range.start), offsetOf(now, change.range.end)) }
        : change;
    now = TextDocument.update(now, [inside], version);
  }
  return now;
}

/** Offsets of a text as lines and columns of the protocol. */
export function rangeOf(document: TextDocument, start: number, end: number): Range {
  return { start: document.positionAt(start), end: document.positionAt(end) };
}

/** A document as drawings and lists name it. */
export function shownIn(document: TextDocument): DrawnDocument {
  const { uri, version } = document;
  return { uri, version, toRange: (start, end) => rangeOf(document, start, end) };
}

function whole(value: unknown): number {
  if (typeof value !== 'number' || Number.isNaN(value)) return 0;
  return Math.min(Math.max(Math.trunc(value), 0), 2 ** 31 - 1);
}
