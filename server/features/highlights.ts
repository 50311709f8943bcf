import { DocumentHighlightKind, type DocumentHighlight, type Position } from 'vscode-languageserver';
import { sameThing } from '../../shared-core/service.js';
import { named, type Names } from '../names.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** The same name elsewhere in this file. */
export function highlights(file: OpenFile, position: Position, names: Names): DocumentHighlight[] {
  const mention = names.at(file, position);
  if (mention === null) return [];
  return names
    .in(named(file))
    .filter((other) => sameThing(mention, other))
    .map(({ start, end, gives }) => ({
      range: rangeOf(file.document, start, end),
      kind: gives ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
    }));
}
