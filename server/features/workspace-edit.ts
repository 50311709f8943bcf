import type { TextDocumentEdit, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { NOT_OPEN } from '../text.js';

/** A document and what is to be changed in it. */
export interface DocumentEdits {
  readonly document: TextDocument;
  readonly edits: TextEdit[];
}

/**
 * Edits of several files, as the client can take them; null where there is nothing to change.
 * @param versioned whether the client takes edits of a version alone
 */
export function workspaceEdit(files: readonly DocumentEdits[], versioned: boolean): WorkspaceEdit | null {
  const changed = files.filter(({ edits }) => edits.length > 0);
  if (changed.length === 0) return null;
  if (!versioned) return { changes: Object.fromEntries(changed.map(({ document, edits }) => [document.uri, edits])) };
  return {
    documentChanges: changed.map(({ document: { uri, version }, edits }): TextDocumentEdit => ({
      textDocument: { uri, version: version === NOT_OPEN ? null : version },
      edits,
    })),
  };
}
