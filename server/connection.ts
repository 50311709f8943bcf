import type {
  CancellationToken,
  Connection,
  DidChangeWatchedFilesParams,
  InitializeParams,
  InitializeResult,
} from 'vscode-languageserver';
import {
  CodeActionKind,
  DidChangeWatchedFilesNotification,
  LSPErrorCodes,
  ResponseError,
  TextDocuments,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { DrawingMethod, DrawingParams } from '../shared-core/drawing/messages.js';
import { codeActions, FIX_ALL, ownerOf, resolvedAction } from './features/code-actions.js';
import { completion } from './features/completion.js';
import { diagnostics } from './features/diagnostics.js';
import { drawing } from './features/drawing.js';
import { hover } from './features/hover.js';
import { symbols } from './features/symbols.js';
import type { Files } from './files.js';
import { Publisher } from './publisher.js';
import { updated } from './text.js';
import type { OpenFile } from './workspace.js';
import { Workspace } from './workspace.js';

const DRAWING: DrawingMethod = 'borewright/drawing';

/** The request is about an older text. */
class Moved extends Error {}

/** What the client can do, as far as the features ask. */
export interface ClientAbilities {
  readonly versionedEdits: boolean;
  /** The edit of a code action may come when it is chosen. */
  readonly resolvesEdits: boolean;
  readonly snippets: boolean;
  readonly related: boolean;
  readonly codeDescription: boolean;
  /** Where the reference page of the findings can be opened; null where the client did not say. */
  readonly reference: string | null;
}

/** Wires the features to a connection; it decides nothing itself. */
export function serve(connection: Connection, files: Files, version: string, reference: string | null): void {
  const documents = new TextDocuments({ create: TextDocument.create, update: updated });
  const workspace = new Workspace(files);
  let abilities = abilitiesOf(null, reference);
  let canWatch = false;

  const log = (what: string, fault: unknown): void => {
    const words = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
    connection.console.error(`${what}: ${words}`);
  };
  const publisher = new Publisher(
    workspace,
    (file) => diagnostics(file, abilities),
    ({ uri, version: textVersion, found, complete }) => {
      void connection.sendDiagnostics({ uri, version: textVersion, diagnostics: found });
      void connection.sendNotification('borewright/changed', { uri, version: textVersion, complete });
    },
    (uri) => void connection.sendDiagnostics({ uri, diagnostics: [] }),
    log,
  );

  /** Answers one request about a document: of its present text, unless it is cancelled or the text moves on meanwhile. */
  const answer = async <R>(
    what: string,
    uri: unknown,
    token: CancellationToken,
    nothing: R,
    work: (file: OpenFile) => R,
  ): Promise<R | ResponseError> => {
    if (typeof uri !== 'string') return nothing;
    const asked = workspace.document(uri)?.version;
    // Lets what the client has sent since (a cancellation, the next key) come in first.
    await new Promise((resume) => setTimeout(resume, 0));
    if (token.isCancellationRequested) return new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
    const moved = new ResponseError(LSPErrorCodes.ContentModified, 'the text has changed');
    if (workspace.document(uri)?.version !== asked) return moved;
    try {
      const file = workspace.file(uri);
      return file === null ? nothing : work(file);
    } catch (fault) {
      if (fault instanceof Moved) return moved;
      log(what, fault);
      return nothing;
    }
  };

  connection.onInitialize((params): InitializeResult => {
    abilities = abilitiesOf(params, reference);
    canWatch = params.capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
    return {
      serverInfo: { name: 'borewright', version },
      capabilities: {
        positionEncoding: 'utf-16',
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        completionProvider: { triggerCharacters: [':', ' ', '-', '{', ','] },
        documentSymbolProvider: true,
        codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, FIX_ALL], resolveProvider: true },
      },
    };
  });

  connection.onInitialized(() => {
    if (!canWatch) return;
    const watchers = [{ globPattern: '**/*.shop.{yaml,yml}' }];
    connection.client
      .register(DidChangeWatchedFilesNotification.type, { watchers })
      .catch((fault: unknown) => log('watching shop files', fault));
  });

  documents.onDidOpen(({ document }) => workspace.open(document));
  documents.onDidChangeContent(({ document }) => {
    workspace.open(document);
    publisher.changed(document);
  });
  documents.onDidClose(({ document }) => {
    workspace.close(document.uri);
    publisher.closed(document);
  });
  connection.onDidChangeWatchedFiles((_: DidChangeWatchedFilesParams) => publisher.shopsChanged());

  connection.onHover(({ textDocument, position }, token) =>
    answer('hover', textDocument.uri, token, null, (file) => hover(file, position)),
  );
  connection.onCompletion(({ textDocument, position }, token) =>
    answer('completion', textDocument.uri, token, null, (file) => completion(file, position, files, abilities)),
  );
  connection.onDocumentSymbol(({ textDocument }, token) =>
    answer('symbols', textDocument.uri, token, null, (file) => symbols(file)),
  );
  connection.onCodeAction(({ textDocument, range, context }, token) =>
    answer('code actions', textDocument.uri, token, null, (file) => codeActions(file, range, context, abilities)),
  );
  connection.onCodeActionResolve((action, token) => {
    const owner = ownerOf(action);
    if (owner === null) return action;
    return answer('code action', owner.uri, token, action, (file) => {
      if (file.document.version !== owner.version) throw new Moved();
      return resolvedAction(file, action, abilities);
    });
  });
  connection.onRequest(DRAWING, (params: DrawingParams, token: CancellationToken) =>
    answer('drawing', params.uri, token, null, (file) => drawing(file, params)),
  );

  documents.listen(connection);
  connection.listen();
}

function abilitiesOf(params: InitializeParams | null, reference: string | null): ClientAbilities {
  const text = params?.capabilities.textDocument;
  const options: unknown = params?.initializationOptions;
  const said =
    typeof options === 'object' && options !== null && 'reference' in options && typeof options.reference === 'string'
      ? options.reference
      : null;
  return {
    resolvesEdits: text?.codeAction?.resolveSupport?.properties.includes('edit') === true,
    versionedEdits: params?.capabilities.workspace?.workspaceEdit?.documentChanges === true,
    snippets: text?.completion?.completionItem?.snippetSupport === true,
    related: text?.publishDiagnostics?.relatedInformation === true,
    codeDescription: text?.publishDiagnostics?.codeDescriptionSupport === true,
    reference: said ?? reference,
  };
}
