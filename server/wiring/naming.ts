import type { ScannedMethod, ScannedParams, ScannedReply } from '../../shared-core/service.js';
import { definition } from '../features/definition.js';
import { documentLinks } from '../features/document-links.js';
import { fileRenames } from '../features/file-renames.js';
import { highlights } from '../features/highlights.js';
import { references } from '../features/references.js';
import { prepareRename, rename } from '../features/rename.js';
import { scanned } from '../features/scanned.js';
import { workspaceSymbols } from '../features/workspace-symbols.js';
import type { Session } from './session.js';

/** The jobs that name a shop file. */
const JOBS_OF = 'borewright/jobsOf';
const SCANNED: ScannedMethod = 'borewright/scanned';

/** Where names are given and asked for, in all files that are known, and how they are changed everywhere. */
export function answerNames(session: Session): void {
  const { connection, answer, guarded, names } = session;
  connection.onWorkspaceSymbol(({ query }) => guarded('workspace symbols', [], () => workspaceSymbols(query, names)));
  connection.onDefinition(({ textDocument, position }, token) =>
    answer('definition', textDocument.uri, token, null, (file) => definition(file, position, names)),
  );
  connection.onReferences(({ textDocument, position, context }, token) =>
    answer('references', textDocument.uri, token, null, (file) =>
      references(file, position, context.includeDeclaration, names),
    ),
  );
  connection.onDocumentHighlight(({ textDocument, position }, token) =>
    answer('highlights', textDocument.uri, token, null, (file) => highlights(file, position, names)),
  );
  connection.onPrepareRename(({ textDocument, position }, token) =>
    answer('rename', textDocument.uri, token, null, (file) => prepareRename(file, position, names)),
  );
  connection.onRenameRequest(({ textDocument, position, newName }, token) =>
    answer('rename', textDocument.uri, token, null, (file) =>
      rename(file, position, newName, names, session.abilities.versionedEdits),
    ),
  );
  connection.onDocumentLinks(({ textDocument }, token) =>
    answer('links', textDocument.uri, token, null, (file) => documentLinks(file, names)),
  );
  connection.onRequest(JOBS_OF, ({ uri }: { readonly uri: unknown }) =>
    guarded('jobs of a shop', [], () =>
      typeof uri === 'string' ? names.jobsOf(uri).map((job) => job.document.uri) : [],
    ),
  );
  const onScanned = ({ text }: ScannedParams): ScannedReply | null =>
    guarded<ScannedReply | null>('scanned code', null, () =>
      typeof text === 'string' ? scanned(text, names, session.workspace) : null,
    );
  connection.onRequest<ScannedReply | null, unknown>(SCANNED, onScanned);
  connection.workspace.onWillRenameFiles(({ files }) =>
    guarded('file renames', null, () => fileRenames(files, names, session.abilities.versionedEdits)),
  );
}
