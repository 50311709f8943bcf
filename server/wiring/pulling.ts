import {
  DocumentDiagnosticReportKind,
  LSPErrorCodes,
  ResponseError,
  type Diagnostic,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { Moved } from '../answers.js';
import { completed } from '../completing.js';
import { normalUri } from '../files.js';
import { diagnostics } from '../features/diagnostics.js';
import type { Session } from './session.js';

/** Answers clients that ask for findings themselves, and are then sent none unasked. */
export function answerPulls(session: Session): void {
  const { connection, answer, workspace, wholeWorkspace } = session;
  /** The findings told last, by document; a client that names them again is told that nothing changed. */
  const told = new Map<string, { readonly id: string; readonly words: string }>();
  let count = 0;
  const reported = (
    uri: string,
    found: Diagnostic[],
    previous: string | undefined,
  ):
    | { readonly kind: typeof DocumentDiagnosticReportKind.Unchanged; readonly resultId: string }
    | { readonly kind: typeof DocumentDiagnosticReportKind.Full; readonly resultId: string; items: Diagnostic[] } => {
    const words = JSON.stringify(found);
    const before = told.get(uri);
    if (before !== undefined && before.id === previous && before.words === words)
      return { kind: DocumentDiagnosticReportKind.Unchanged, resultId: before.id };
    count += 1;
    const id = String(count);
    told.set(uri, { id, words });
    return { kind: DocumentDiagnosticReportKind.Full, resultId: id, items: found };
  };
  connection.languages.diagnostics.on(async ({ textDocument: { uri }, previousResultId }, token) => {
    const found = await answer<Diagnostic[]>('findings', uri, token, [], async (file) => {
      const { version } = file.document;
      const goesOn = (): boolean => !token.isCancellationRequested && workspace.document(uri)?.version === version;
      if (file.kind === 'job' && !(await completed(file.analysis, goesOn))) throw new Moved();
      return diagnostics(file, session.abilities);
    });
    if (found instanceof ResponseError) throw found;
    return reported(uri, found, previousResultId);
  });
  connection.languages.diagnostics.onWorkspace(async ({ previousResultIds }, token) => {
    const before = new Map(previousResultIds.map(({ uri, value }) => [uri, value]));
    const items: WorkspaceDocumentDiagnosticReport[] = [];
    const files = session.client.settings.wholeWorkspace ? wholeWorkspace.closed() : [];
    const known = new Set(files.map(({ uri }) => uri));
    // What a client was told of a file that counts no more stays there until it is told otherwise.
    for (const uri of before.keys()) {
      if (known.has(normalUri(uri)) || workspace.document(uri) !== undefined) continue;
      items.push({ ...reported(uri, [], before.get(uri)), uri, version: null });
    }
    for (const file of files) {
      const found = await wholeWorkspace.foundIn(file, () => !token.isCancellationRequested);
      if (workspace.document(file.uri) !== undefined) continue;
      if (found === null) throw new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
      const { uri } = file.document;
      items.push({ ...reported(uri, found, before.get(uri)), uri, version: null });
    }
    return { items };
  });
}
