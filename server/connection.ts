import {
  TextDocuments,
  type Connection,
  type Diagnostic,
  type TextDocumentContentChangeEvent,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { abilitiesOf } from './abilities.js';
import { answering, type Log } from './answers.js';
import { ClientSide } from './client-side.js';
import { diagnostics } from './features/diagnostics.js';
import { tell, type FaceCutter } from '../shared-core/service.js';
import { TokenTeller } from './features/semantic-tokens.js';
import { BoundedFiles } from './bounded-files.js';
import type { Files } from './files.js';
import { LastHints } from './last-hints.js';
import { LastLenses } from './last-lenses.js';
import { LastPlans } from './last-plans.js';
import { say } from './messages.js';
import { Names } from './names.js';
import { ordersHere, remembering, type Orders } from './orders.js';
import type { WritePapers } from './papers/writing.js';
import { Publisher } from './publisher.js';
import { updated } from './text.js';
import { FAULT, toldFault } from './told-fault.js';
import { greet, type WordsIn } from './wiring/greeting.js';
import { answerNames } from './wiring/naming.js';
import { answerPanels } from './wiring/panels.js';
import { answerPapers } from './wiring/papers.js';
import { answerPulls } from './wiring/pulling.js';
import { answerReaders } from './wiring/reading.js';
import type { Session } from './wiring/session.js';
import { followTexts } from './wiring/texts.js';
import { answerWriters } from './wiring/writing.js';
import { WholeWorkspace, type Progress } from './whole-workspace.js';
import { Workspace, type OpenFile } from './workspace.js';
import { writtenLines } from './writing.js';

/** What the place has where the server runs. */
export interface Surroundings {
  readonly files: Files;
  /** Where the reference page is, unless the client says otherwise; null where there is none. */
  readonly reference: string | null;
  /** Fetches the words of the client’s language, before anything is told. */
  readonly words: WordsIn;
  /** Where the order of set-ups is sought; here where that is left out. */
  readonly orders?: Orders;
  /** null where there is no disk to write to. */
  readonly writePapers: WritePapers | null;
  /** What brings the lettering of a drawing along; nothing where that is left out. */
  readonly face?: () => FaceCutter | null;
  /** Is told of each document before it is worked on. */
  readonly begins?: (uri: string) => void;
}

/** Wires the features to a connection; it decides nothing itself. */
export function serve(connection: Connection, version: string, around: Surroundings): void {
  const { reference, words } = around;
  const session = sessionOn(connection, around);
  const documents = new TextDocuments({
    create: TextDocument.create,
    update: (document: TextDocument, changes: TextDocumentContentChangeEvent[], textVersion: number) => {
      session.publisher.edited(document.uri, writtenLines(changes));
      return updated(document, changes, textVersion);
    },
  });
  greet(session, version, reference, words);
  followTexts(session, documents);
  answerReaders(session);
  answerWriters(session);
  answerNames(session);
  answerPanels(session);
  answerPapers(session);
  answerPulls(session);
  documents.listen(connection);
  connection.listen();
}

function sessionOn(connection: Connection, around: Surroundings): Session {
  const { reference, orders = remembering(ordersHere), writePapers, face = () => null, begins } = around;
  const files = new BoundedFiles(around.files);
  const log: Log = (what, fault) => {
    const words = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
    connection.console.error(`${what}: ${words}`);
    void connection.sendNotification(FAULT, toldFault('failed', fault));
  };
  const workspace = new Workspace(files, begins);
  const names = new Names(workspace);
  // Where no folder is open, that of a file that is.
  files.bounds = () =>
    names.folders.length > 0 ? names.folders : workspace.all().map(({ uri }) => uri.slice(0, uri.lastIndexOf('/')));
  const find = (file: OpenFile): Diagnostic[] => diagnostics(file, session.abilities);
  const send = (uri: string, found: Diagnostic[], textVersion?: number): void => {
    if (session.abilities.pulls) return;
    const version = textVersion === undefined ? {} : { version: textVersion };
    void connection.sendDiagnostics({ uri, ...version, diagnostics: found });
  };
  const publisher = new Publisher(
    workspace,
    find,
    ({ uri, version, found, about, complete }) => {
      send(uri, found, version);
      void connection.sendNotification('borewright/changed', { uri, version, complete, ...about });
    },
    (uri) => send(uri, []),
    log,
  );
  const progress = (): Promise<Progress> => progressOn(connection, session.client.showsProgress);
  const wholeWorkspace = new WholeWorkspace(workspace, names, { find, send, progress }, log);
  const session: Session = {
    connection,
    files,
    workspace,
    names,
    publisher,
    wholeWorkspace,
    lastPlans: new LastPlans(),
    lastHints: new LastHints(),
    lastLenses: new LastLenses(),
    tokens: new TokenTeller(names),
    orders,
    writePapers,
    face,
    client: new ClientSide(connection, log, () => wantsDiffer(session)),
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

/** The reader has set something else. */
function wantsDiffer({ client, abilities, publisher, wholeWorkspace, workspace }: Session): void {
  workspace.takeWishes(client.settings.wishes);
  wholeWorkspace.turn(client.settings.wholeWorkspace && !abilities.pulls);
  publisher.wantsDiffer();
  wholeWorkspace.soon();
  client.refreshSoon();
}

/** Shows how far the search through the workspace has come, to a client that can and does not refuse. */
async function progressOn(connection: Connection, isShown: boolean): Promise<Progress> {
  const shown = isShown ? await connection.window.createWorkDoneProgress().catch(() => null) : null;
  if (shown === null) return { report: () => undefined, done: () => undefined };
  shown.begin(tell(say.checkingFiles(), 'mm'), 0);
  return {
    report: (done, of) => shown.report(Math.round((done * 100) / of), `${done}/${of}`),
    done: () => shown.done(),
  };
}
