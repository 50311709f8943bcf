import { TextDocuments, type Connection, type TextDocumentContentChangeEvent } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { abilitiesOf } from './abilities.js';
import { answering, type Log } from './answers.js';
import { ClientSide } from './client-side.js';
import { diagnostics } from './features/diagnostics.js';
import type { Files } from './files.js';
import { LastLenses } from './last-lenses.js';
import { LastPlans } from './last-plans.js';
import { Names } from './names.js';
import { ordersHere, remembering, type Orders } from './orders.js';
import { Publisher } from './publisher.js';
import { updated } from './text.js';
import { greet } from './wiring/greeting.js';
import { answerNames } from './wiring/naming.js';
import { answerPanels } from './wiring/panels.js';
import { answerReaders } from './wiring/reading.js';
import type { Session } from './wiring/session.js';
import { followTexts } from './wiring/texts.js';
import { answerWriters } from './wiring/writing.js';
import { Workspace } from './workspace.js';
import { writtenLines } from './writing.js';

/**
 * Wires the features to a connection; it decides nothing itself.
 * @param begins is told of each document before it is worked on
 */
export function serve(
  connection: Connection,
  files: Files,
  version: string,
  reference: string | null,
  orders: Orders = remembering(ordersHere),
  begins: (uri: string) => void = () => undefined,
): void {
  const session = sessionOn(connection, files, reference, orders, begins);
  const documents = new TextDocuments({
    create: TextDocument.create,
    update: (document: TextDocument, changes: TextDocumentContentChangeEvent[], textVersion: number) => {
      session.publisher.edited(document.uri, writtenLines(changes));
      return updated(document, changes, textVersion);
    },
  });
  greet(session, version, reference);
  followTexts(session, documents);
  answerReaders(session);
  answerWriters(session);
  answerNames(session);
  answerPanels(session);
  documents.listen(connection);
  connection.listen();
}

function sessionOn(
  connection: Connection,
  files: Files,
  reference: string | null,
  orders: Orders,
  begins: (uri: string) => void,
): Session {
  const log: Log = (what, fault) => {
    const words = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
    connection.console.error(`${what}: ${words}`);
  };
  const workspace = new Workspace(files, begins);
  const publisher = new Publisher(
    workspace,
    (file) => diagnostics(file, session.abilities),
    ({ uri, version, found, complete }) => {
      void connection.sendDiagnostics({ uri, version, diagnostics: found });
      void connection.sendNotification('borewright/changed', { uri, version, complete });
    },
    (uri) => void connection.sendDiagnostics({ uri, diagnostics: [] }),
    log,
  );
  const session: Session = {
    connection,
    files,
    workspace,
    names: new Names(workspace),
    publisher,
    lastPlans: new LastPlans(),
    lastLenses: new LastLenses(),
    orders,
    client: new ClientSide(connection, log),
    abilities: abilitiesOf(null, reference),
    answer: answering(workspace, log),
    guarded: (what, nothing, work) => {
      try {
        return work();
      } catch (fault) {
        log(what, fault);
        return nothing;
      }
    },
  };
  return session;
}
