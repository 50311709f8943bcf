import { Moved } from '../answers.js';
import { codeActions, ownerOf, resolvedAction } from '../features/code-actions.js';
import { completion } from '../features/completion.js';
import { formatting, rangeFormatting, typedFormatting } from '../features/formatting.js';
import { signatureHelp } from '../features/signature-help.js';
import { template } from '../features/template.js';
import type { Session } from './session.js';

const TEMPLATE = 'borewright/template';

/** What helps to write a text: what may stand at the cursor, an even form, repairs and files to begin with. */
export function answerWriters(session: Session): void {
  const { connection, answer, files, workspace } = session;
  connection.onCompletion(({ textDocument, position }, token) =>
    answer(
      'completion',
      textDocument.uri,
      token,
      null,
      (file) => completion(file, position, files, session.abilities),
      position,
    ),
  );
  connection.onSignatureHelp(({ textDocument, position }, token) =>
    answer('signature help', textDocument.uri, token, null, (file) => signatureHelp(file, position), position),
  );
  connection.onDocumentFormatting(({ textDocument }, token) =>
    answer('formatting', textDocument.uri, token, [], formatting),
  );
  connection.onDocumentRangeFormatting(({ textDocument, range }, token) =>
    answer('formatting', textDocument.uri, token, [], (file) => rangeFormatting(file, range)),
  );
  connection.onDocumentOnTypeFormatting(({ textDocument, position, ch }, token) =>
    answer('formatting', textDocument.uri, token, [], (file) => typedFormatting(file, position, ch)),
  );
  connection.onCodeAction(({ textDocument, range, context }, token) =>
    answer('code actions', textDocument.uri, token, null, (file) =>
      codeActions(file, range, context, {
        abilities: session.abilities,
        workspace,
      }),
    ),
  );
  connection.onCodeActionResolve((action, token) => {
    const owner = ownerOf(action);
    if (owner === null) return action;
    return answer('code action', owner.uri, token, action, (file) => {
      if (file.document.version !== owner.version) throw new Moved();
      return resolvedAction(file, action, session.abilities);
    });
  });
  connection.onRequest(TEMPLATE, template);
}
