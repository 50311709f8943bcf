import type { Position, Range, TextEdit } from 'vscode-languageserver';
import { formatEdits, lineEnd, lineStart, someOf, type Blanks } from '../../shared-core/service.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** Lays a whole file out evenly; nothing where its text cannot be read without fault. */
export function formatting({ document }: OpenFile): TextEdit[] {
  return asEdits(document, formatEdits(document.getText()));
}

/** The same in the lines of a range; where these cannot be moved without the lines around them, within each line. */
export function rangeFormatting({ document }: OpenFile, range: Range): TextEdit[] {
  const [from, to] = [offsetOf(document, range.start), offsetOf(document, range.end)];
  const all = within(document, from, to, () => true);
  return all.length > 0 ? all : within(document, from, to, ({ indents }) => !indents);
}

/**
 * Puts the blanks of a line right while it is typed: that of the bracket that was closed, or the one that Enter has left. Its
 * indentation is the writer's.
 */
export function typedFormatting({ document }: OpenFile, position: Position, typed: string): TextEdit[] {
  const line = typed === '\n' ? position.line - 1 : position.line;
  if (line < 0) return [];
  const at = offsetOf(document, { line, character: 0 });
  return within(document, at, at, ({ indents }) => !indents);
}

function within(
  document: OpenFile['document'],
  from: number,
  to: number,
  wanted: (edit: Blanks) => boolean,
): TextEdit[] {
  const text = document.getText();
  const [start, end] = [lineStart(text, from), lineEnd(text, Math.max(from, to))];
  const isIn = (edit: Blanks): boolean => edit.start >= start && edit.end <= end && wanted(edit);
  return asEdits(document, someOf(text, formatEdits(text), isIn));
}

function asEdits(document: OpenFile['document'], edits: readonly Blanks[]): TextEdit[] {
  return edits.map(({ start, end, text }) => ({ range: rangeOf(document, start, end), newText: text }));
}
