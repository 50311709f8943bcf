import type { TextDocuments } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { CursorParams } from '../publisher.js';
import { kindOf } from '../workspace.js';
import type { Session } from './session.js';

const CURSOR = 'borewright/cursor';
/** From the thread that watches this one: a file that no thread came to an end with. */
const LEAVE_OUT = 'borewright/leaveOut';

/** Follows the texts: those that are open, the cursor in them, and the files on the disk. */
export function followTexts(session: Session, documents: TextDocuments<TextDocument>): void {
  const { connection, workspace, names, publisher, wholeWorkspace, lastPlans, lastHints, lastLenses, tokens, client } =
    session;
  documents.onDidOpen(({ document }) => {
    workspace.open(document);
    wholeWorkspace.forget(document.uri);
  });
  documents.onDidChangeContent(({ document }) => {
    workspace.open(document);
    publisher.changed(document);
    if (kindOf(document) !== 'shop') return;
    client.refreshSoon();
    wholeWorkspace.soon();
  });
  documents.onDidClose(({ document }) => {
    workspace.close(document.uri);
    lastPlans.forget(document.uri);
    lastHints.forget(document.uri);
    lastLenses.forget(document.uri);
    tokens.forget(document.uri);
    names.forget(document.uri);
    publisher.closed(document);
    wholeWorkspace.forget(document.uri);
  });
  connection.onDidChangeWatchedFiles(() => {
    publisher.shopsChanged();
    client.refreshSoon();
    wholeWorkspace.soon();
  });
  connection.onNotification(LEAVE_OUT, ({ uri }: { readonly uri: unknown }) => {
    if (typeof uri === 'string') wholeWorkspace.leaveOut(uri);
  });
  connection.onNotification(CURSOR, ({ uri, line }: CursorParams) => {
    if (typeof uri === 'string' && typeof line === 'number') publisher.cursorAt({ uri, line });
  });
}
