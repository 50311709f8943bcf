import type {
  CancellationToken,
  Connection,
  DidChangeWatchedFilesParams,
  InitializeParams,
  InitializeResult,
} from 'vscode-languageserver';
import {
  CodeActionKind,
  CodeLensRefreshRequest,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  LSPErrorCodes,
  ResponseError,
  TextDocuments,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { DrawingMethod, DrawingParams } from '../shared-core/drawing/messages.js';
import type { MachineStepMethod, MachineStepParams } from '../shared-core/drawing/machine-view/messages.js';
import type { SetUpsMethod, SetUpsParams } from '../shared-core/drawing/set-up-messages.js';
import { codeLenses, lensOwner, resolvedLens } from './features/code-lens.js';
import { codeActions, FIX_ALL, ownerOf, resolvedAction } from './features/code-actions.js';
import { completion } from './features/completion.js';
import { diagnostics } from './features/diagnostics.js';
import { drawing } from './features/drawing.js';
import { hover } from './features/hover.js';
import { HINT_CHOICES, inlayHints, type HintChoice } from './features/inlay-hints.js';
import { machineStep } from './features/machine-view.js';
import { setUps } from './features/set-ups.js';
import { symbols } from './features/symbols.js';
import type { Files } from './files.js';
import { LastPlans } from './last-plans.js';
import { ordersHere, remembering, type Orders } from './orders.js';
import { Publisher } from './publisher.js';
import { updated } from './text.js';
import type { OpenFile } from './workspace.js';
import { kindOf, Workspace } from './workspace.js';

const DRAWING: DrawingMethod = 'borewright/drawing';
const SET_UPS: SetUpsMethod = 'borewright/setUps';
const MACHINE_STEP: MachineStepMethod = 'borewright/machineStep';

/** A shop that is being typed refreshes its jobs when the keys rest. */
const REFRESH_MS = 400;

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
export function serve(
  connection: Connection,
  files: Files,
  version: string,
  reference: string | null,
  orders: Orders = remembering(ordersHere),
): void {
  const documents = new TextDocuments({ create: TextDocument.create, update: updated });
  const workspace = new Workspace(files);
  const lastPlans = new LastPlans();
  let abilities = abilitiesOf(null, reference);
  let hints: HintChoice = 'all';
  const can = { watch: false, configure: false, tellSettings: false, refreshHints: false, refreshLenses: false };

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
    work: (file: OpenFile) => R | Promise<R>,
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
      return file === null ? nothing : await work(file);
    } catch (fault) {
      if (fault instanceof Moved) return moved;
      log(what, fault);
      return nothing;
    }
  };

  connection.onInitialize((params): InitializeResult => {
    abilities = abilitiesOf(params, reference);
    const { workspace: able } = params.capabilities;
    can.watch = able?.didChangeWatchedFiles?.dynamicRegistration === true;
    can.configure = able?.configuration === true;
    can.tellSettings = can.configure && able?.didChangeConfiguration?.dynamicRegistration === true;
    can.refreshHints = able?.inlayHint?.refreshSupport === true;
    can.refreshLenses = able?.codeLens?.refreshSupport === true;
    return {
      serverInfo: { name: 'borewright', version },
      capabilities: {
        positionEncoding: 'utf-16',
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        completionProvider: { triggerCharacters: [':', ' ', '-', '{', ','] },
        documentSymbolProvider: true,
        codeLensProvider: { resolveProvider: true },
        inlayHintProvider: true,
        codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, FIX_ALL], resolveProvider: true },
      },
    };
  });

  /** Which inlay hints the reader wants, asked of an editor that keeps settings. */
  const readSettings = async (): Promise<void> => {
    const set: unknown = await connection.workspace.getConfiguration('borewright.inlayHints');
    const choice = HINT_CHOICES.find((one) => one === set) ?? 'all';
    if (choice === hints) return;
    hints = choice;
    if (can.refreshHints) await connection.languages.inlayHint.refresh();
  };
  /** What an editor shows of a job and asks for only when that changes: its shop has changed meanwhile. */
  let refreshing: ReturnType<typeof setTimeout> | undefined;
  const refreshSoon = (): void => {
    clearTimeout(refreshing);
    refreshing = setTimeout(() => {
      const asked = [
        ...(can.refreshHints ? [connection.languages.inlayHint.refresh()] : []),
        ...(can.refreshLenses ? [connection.sendRequest(CodeLensRefreshRequest.type)] : []),
      ];
      Promise.all(asked).catch((fault: unknown) => log('refreshing', fault));
    }, REFRESH_MS);
  };
  const settingsMayDiffer = (): void => {
    if (can.configure) readSettings().catch((fault: unknown) => log('reading settings', fault));
  };
  connection.onDidChangeConfiguration(settingsMayDiffer);

  connection.onInitialized(() => {
    settingsMayDiffer();
    if (can.tellSettings) {
      connection.client
        .register(DidChangeConfigurationNotification.type, { section: 'borewright' })
        .catch((fault: unknown) => log('watching settings', fault));
    }
    if (!can.watch) return;
    const watchers = [{ globPattern: '**/*.shop.{yaml,yml}' }];
    connection.client
      .register(DidChangeWatchedFilesNotification.type, { watchers })
      .catch((fault: unknown) => log('watching shop files', fault));
  });

  documents.onDidOpen(({ document }) => workspace.open(document));
  documents.onDidChangeContent(({ document }) => {
    workspace.open(document);
    publisher.changed(document);
    if (kindOf(document) === 'shop') refreshSoon();
  });
  documents.onDidClose(({ document }) => {
    workspace.close(document.uri);
    lastPlans.forget(document.uri);
    publisher.closed(document);
  });
  connection.onDidChangeWatchedFiles((_: DidChangeWatchedFilesParams) => {
    publisher.shopsChanged();
    refreshSoon();
  });

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
  connection.onCodeLens(({ textDocument }, token) =>
    answer('lenses', textDocument.uri, token, null, (file) => codeLenses(file)),
  );
  connection.onCodeLensResolve((lens, token) => {
    const owner = lensOwner(lens);
    if (owner === null) return lens;
    return answer('lens', owner.uri, token, lens, async (file) => {
      if (file.kind !== 'job' || file.document.version !== owner.version) throw new Moved();
      return resolvedLens(lens, owner.uri, await file.analysis.planBy(orders));
    });
  });
  connection.languages.inlayHint.on(({ textDocument, range }, token) =>
    answer('inlay hints', textDocument.uri, token, null, (file) => inlayHints(file, range, hints)),
  );
  connection.onRequest(SET_UPS, (params: SetUpsParams, token: CancellationToken) =>
    answer('set-ups', params.uri, token, null, async (file) => {
      if (file.kind === 'shop') return setUps(file, null);
      const { job, stale } = lastPlans.of(file);
      return setUps(job, await job.analysis.planBy(orders), stale);
    }),
  );
  connection.onRequest(MACHINE_STEP, (params: MachineStepParams, token: CancellationToken) =>
    answer('machine view', params.uri, token, null, async (file) => {
      if (file.kind === 'shop') return null;
      const plannable = lastPlans.of(file);
      return machineStep(plannable, await plannable.job.analysis.planBy(orders), params);
    }),
  );
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
