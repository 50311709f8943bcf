import type { SemanticTokens } from 'vscode-languageserver';
import { Moved, ofPresent, whileAwaited } from '../answers.js';
import { sorted } from '../completing.js';
import { codeLenses, lensOwner, resolvedLens } from '../features/code-lens.js';
import { folding } from '../features/folding.js';
import { hover } from '../features/hover.js';
import { selectionRanges } from '../features/selection-ranges.js';
import { symbols } from '../features/symbols.js';
import { waitForLetters } from '../letters.js';
import { answerHints } from './hints.js';
import type { Session } from './session.js';

const NO_TOKENS: SemanticTokens = { data: [] };

/** What a reader of a text is shown in it and about it. */
export function answerReaders(session: Session): void {
  const { connection, answer, workspace, lastLenses, lastPlans, tokens, orders } = session;
  connection.onHover(({ textDocument, position }, token) =>
    answer(
      'hover',
      textDocument.uri,
      token,
      null,
      async (near) => {
        const { file, areKnown } = workspace.withSetUps(near);
        if (areKnown) await ofPresent(file, waitForLetters(file, orders));
        return hover(file, position, session.abilities);
      },
      position,
    ),
  );
  connection.onDocumentSymbol(({ textDocument }, token) =>
    answer('symbols', textDocument.uri, token, null, (file) => symbols(file)),
  );
  connection.onFoldingRanges(({ textDocument }, token) => answer('folding', textDocument.uri, token, null, folding));
  connection.onSelectionRanges(({ textDocument, positions }, token) =>
    answer('selection', textDocument.uri, token, null, (file) => selectionRanges(file, positions)),
  );
  answerHints(session);
  const { semanticTokens } = connection.languages;
  semanticTokens.on(({ textDocument }, token) =>
    answer('tokens', textDocument.uri, token, NO_TOKENS, (file) => tokens.all(file)),
  );
  semanticTokens.onDelta(({ textDocument, previousResultId }, token) =>
    answer('tokens', textDocument.uri, token, NO_TOKENS, (file) => tokens.since(file, previousResultId)),
  );
  semanticTokens.onRange(({ textDocument, range }, token) =>
    answer('tokens', textDocument.uri, token, NO_TOKENS, (file) => tokens.within(file, range)),
  );
  connection.onCodeLens(({ textDocument }, token) =>
    answer('lenses', textDocument.uri, token, null, async (file) =>
      (await sorted(file)) ? lastLenses.of(file.document, codeLenses(file)) : null,
    ),
  );
  connection.onCodeLensResolve((lens, token) => {
    const owner = lensOwner(lens);
    if (owner === null) return lens;
    return answer('lens', owner.uri, token, lens, async (file) => {
      if (file.kind !== 'job' || file.document.version !== owner.version) throw new Moved();
      const plan = await whileAwaited(lastPlans.of(file).job.analysis.planBy(orders), token);
      return resolvedLens(lens, owner.uri, plan);
    });
  });
}
