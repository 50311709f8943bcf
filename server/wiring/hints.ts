import { CancellationToken, type InlayHint, type InlayHintParams, type ResponseError } from 'vscode-languageserver';
import { sorted } from '../completing.js';
import { nextTurn } from '../next-turn.js';
import type { Session } from './session.js';

type Hints = InlayHint[] | null | ResponseError;

/** Hints are not waited for: where they take long, the last ones stay meanwhile, and the client is told when to ask again. */
export function answerHints({ connection, answer, guarded, client, workspace, lastHints }: Session): void {
  const worked = ({ textDocument, range }: InlayHintParams, token: CancellationToken): Promise<Hints> =>
    answer('inlay hints', textDocument.uri, token, null, async (file) =>
      (await sorted(file)) ? lastHints.of(file, range, client.settings.hints) : null,
    );

  const awaited = new Set<string>();
  const refreshWhenKnown = async (params: InlayHintParams): Promise<void> => {
    const { uri } = params.textDocument;
    if (awaited.has(uri)) return;
    awaited.add(uri);
    const hints = await worked(params, CancellationToken.None);
    awaited.delete(uri);
    // Of a text that has changed since, the client asks by itself.
    if (Array.isArray(hints)) client.refreshHints();
  };

  const meanwhile = ({ textDocument: { uri }, range }: InlayHintParams): InlayHint[] | null => {
    const document = workspace.document(uri);
    if (document === undefined || workspace.readySetUps(uri) !== null) return null;
    return lastHints.meanwhile(document, range, client.settings.hints);
  };

  connection.languages.inlayHint.on(async (params, token) => {
    if (!client.canRefreshHints) return worked(params, token);
    await nextTurn();
    const last = token.isCancellationRequested ? null : guarded('inlay hints', null, () => meanwhile(params));
    if (last === null) return worked(params, token);
    void refreshWhenKnown(params);
    return last;
  });
}
