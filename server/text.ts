import type { Position, Range } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';

/** A position as a client sent it may be anything: made whole, and put inside the document. */
export function offsetOf(document: TextDocument, position: Position): number {
  return document.offsetAt({ line: whole(position.line), character: whole(position.character) });
}

export function rangeOf(document: TextDocument, start: number, end: number): Range {
  return { start: document.positionAt(start), end: document.positionAt(end) };
}

function whole(value: unknown): number {
  if (typeof value !== 'number' || Number.isNaN(value)) return 0;
  return Math.min(Math.max(Math.trunc(value), 0), 2 ** 31 - 1);
}
