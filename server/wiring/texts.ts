import type { TextDocuments } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { CursorParams } from '../publisher.js';
import { kindOf } from '../workspace.js';
import type { Session } from './session.js';

const CURSOR = 'borewright/cursor';

/** Follows the texts: those that are open, the cursor in them, and the files on the disk. */
export function followTexts(session: Session, documents: TextDocuments<TextDocument>): void {
  const { connection, workspace, names, publisher, lastPlans, lastLenses, client } = session;
  documents.onDidOpen(({ document }) => workspace.open(document));
  documents.onDidChangeContent(({ document }) => {
    workspace.open(document);
    publisher.changed(document);
    if (kindOf(document) === 'shop') client.refreshSoon();
  });
  documents.onDidClose(({ document }) => {
    workspace.close(document.uri);
    lastPlans.forget(document.uri);
    lastLenses.forget(document.uri);
    names.forget(document.uri);
    publisher.closed(document);
  });
  connection.onDidChangeWatchedFiles(() => {
    publisher.shopsChanged();
    client.refreshSoon();
  });
  connection.onNotification(CURSOR, ({ uri, line }: CursorParams) => {
    if (typeof uri === 'string' && typeof line === 'number') publisher.cursorAt({ uri, line });
  });
}
