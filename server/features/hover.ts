import type { Hover, Position } from 'vscode-languageserver';
import { MarkupKind } from 'vscode-languageserver';
import { explain } from '../../shared-core/service.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/**
 * What stands under the pointer: the key's meaning, the value's, and the panels, rows and bores that come of it.
 * @param pictures whether the client shows pictures in hovers
 */
export function hover(file: OpenFile, position: Position, pictures: boolean): Hover | null {
  const said = explain(file, offsetOf(file.document, position), pictures);
  if (said === null) return null;
  const { words, about } = said;
  return {
    contents: { kind: MarkupKind.Markdown, value: words },
    ...(about !== null && { range: rangeOf(file.document, about.start, about.end) }),
  };
}
