import type { CompletionItem, CompletionList, Position, TextEdit } from 'vscode-languageserver';
import { CompletionItemKind, InsertTextFormat, InsertTextMode, MarkupKind } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { offersAt, type OfferSort, type PlacedOffer } from '../../shared-core/service.js';
import type { ClientAbilities } from '../abilities.js';
import type { Files } from '../files.js';
import { baseName, isShop, shopUri } from '../files.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

const KINDS: Readonly<Record<OfferSort, CompletionItemKind>> = {
  key: CompletionItemKind.Property,
  panel: CompletionItemKind.Field,
  word: CompletionItemKind.EnumMember,
  name: CompletionItemKind.Value,
  file: CompletionItemKind.File,
  skeleton: CompletionItemKind.Snippet,
};

/** What an editor finds no figure in. */
const NO_FIGURE = 'height';

/** Keys, words, names and heights that fit where the cursor stands, also in a line that is not whole yet. */
export function completion(
  file: OpenFile,
  position: Position,
  files: Files,
  { snippets }: Pick<ClientAbilities, 'snippets'>,
): CompletionList | null {
  const { document } = file;
  const found = offersAt(file, offsetOf(document, position), (folder) => {
    const like = shopUri(document.uri, `${folder}x.shop.yaml`);
    return (like === null ? [] : files.beside(like)).map(baseName).filter(isShop);
  });
  if (found === null) return null;
  const range = rangeOf(document, found.start, found.end);
  const moved = reindented(document, found.start, found.shift);
  return {
    isIncomplete: false,
    items: found.offers.map((offer, index) => item(offer, index, range, moved, snippets)),
  };
}

/** Puts a line that starts in a wrong column into that of the lines beside it. */
function reindented(document: TextDocument, start: number, shift: number): readonly TextEdit[] {
  if (shift === 0) return [];
  const { line } = document.positionAt(start);
  const at = { line, character: 0 };
  return shift > 0
    ? [{ range: { start: at, end: at }, newText: ' '.repeat(shift) }]
    : [{ range: { start: at, end: { line, character: -shift } }, newText: '' }];
}

function item(
  { label, sort, detail, documentation, text, snippet, tried = [], beforeAll }: PlacedOffer,
  index: number,
  range: TextEdit['range'],
  moved: readonly TextEdit[],
  snippets: boolean,
): CompletionItem {
  const isSnippet = snippets && (snippet !== undefined || text.includes('$0'));
  const newText =
    isSnippet && snippet !== undefined
      ? snippet
      : isSnippet
        ? text.replace(/[\\}](?!\s*$)|\$(?!0)/g, '\\$&')
        : text.replace('$0', '');
  return {
    label,
    kind: KINDS[sort],
    ...(detail !== undefined && { detail }),
    ...(documentation !== undefined && { documentation: { kind: MarkupKind.Markdown, value: documentation } }),
    sortText: String(index).padStart(4, '0'),
    filterText: beforeAll === true ? NO_FIGURE : [label, ...tried].join(' '),
    insertTextFormat: isSnippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    insertTextMode: InsertTextMode.adjustIndentation,
    textEdit: { range, newText },
    ...(moved.length > 0 && { additionalTextEdits: [...moved] }),
  };
}
