import type {
  CancellationToken,
  Connection,
  InitializeResult,
  TextDocumentContentChangeEvent,
} from 'vscode-languageserver';
import { CodeActionKind, FileOperationPatternKind, TextDocuments, TextDocumentSyncKind } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { DrawingMethod, DrawingParams } from '../shared-core/drawing/messages/drawing.js';
import type { MachineStepMethod, MachineStepParams } from '../shared-core/drawing/messages/machine-view.js';
import type { SetUpsMethod, SetUpsParams } from '../shared-core/drawing/messages/set-ups.js';
import { abilitiesOf } from './abilities.js';
import { answering, Moved, type Log } from './answers.js';
import { ClientSide } from './client-side.js';
import { codeLenses, lensOwner, resolvedLens } from './features/code-lens.js';
import { codeActions, FIX_ALL, ownerOf, resolvedAction } from './features/code-actions.js';
import { completion } from './features/completion.js';
import { definition } from './features/definition.js';
import { diagnostics } from './features/diagnostics.js';
import { documentLinks } from './features/document-links.js';
import { drawing } from './features/drawing.js';
import { fileRenames } from './features/file-renames.js';
import { formatting, rangeFormatting, typedFormatting } from './features/formatting.js';
import { folding } from './features/folding.js';
import { highlights } from './features/highlights.js';
import { hover } from './features/hover.js';
import { inlayHints } from './features/inlay-hints.js';
import { machineStep } from './features/machine-view.js';
import { references } from './features/references.js';
import { prepareRename, rename } from './features/rename.js';
import { selectionRanges } from './features/selection-ranges.js';
import { setUps } from './features/set-ups.js';
import { symbols } from './features/symbols.js';
import { template } from './features/template.js';
import { workspaceSymbols } from './features/workspace-symbols.js';
import type { Files } from './files.js';
import { LastLenses } from './last-lenses.js';
import { LastPlans } from './last-plans.js';
import { Names } from './names.js';
import { ordersHere, remembering, type Orders } from './orders.js';
import { Publisher, type CursorParams } from './publisher.js';
import { updated } from './text.js';
import { kindOf, Workspace } from './workspace.js';
import { writtenLines } from './writing.js';

const DRAWING: DrawingMethod = 'borewright/drawing';
const SET_UPS: SetUpsMethod = 'borewright/setUps';
const MACHINE_STEP: MachineStepMethod = 'borewright/machineStep';

const CURSOR = 'borewright/cursor';
const TEMPLATE = 'borewright/template';

/** What a job's `shop:` has to follow. */
const MOVED_FILES = [
  { scheme: 'file', pattern: { glob: '**/*.{shop,carcass}.{yaml,yml}', matches: FileOperationPatternKind.file } },
  { scheme: 'file', pattern: { glob: '**', matches: FileOperationPatternKind.folder } },
];

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
  const documents = new TextDocuments({
    create: TextDocument.create,
    update: (document: TextDocument, changes: TextDocumentContentChangeEvent[], textVersion: number) => {
      publisher.edited(document.uri, writtenLines(changes));
      return updated(document, changes, textVersion);
    },
  });
  const workspace = new Workspace(files, begins);
  const lastPlans = new LastPlans();
  const lastLenses = new LastLenses();
  const names = new Names(workspace);
  let abilities = abilitiesOf(null, reference);
  const log: Log = (what, fault) => {
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

  const answer = answering(workspace, log);
  /** For what is asked of no one document. */
  const guarded = <R>(what: string, nothing: R, work: () => R): R => {
    try {
      return work();
    } catch (fault) {
      log(what, fault);
      return nothing;
    }
  };
  const client = new ClientSide(connection, log);

  connection.onInitialize((params): InitializeResult => {
    abilities = abilitiesOf(params, reference);
    client.meet(params);
    names.folders = (params.workspaceFolders ?? []).map(({ uri }) => uri);
    return {
      serverInfo: { name: 'borewright', version },
      capabilities: {
        positionEncoding: 'utf-16',
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        completionProvider: { triggerCharacters: [':', ' ', '-', '{', ','] },
        documentSymbolProvider: true,
        workspaceSymbolProvider: true,
        definitionProvider: true,
        referencesProvider: true,
        documentHighlightProvider: true,
        renameProvider: { prepareProvider: true },
        documentLinkProvider: {},
        documentFormattingProvider: true,
        documentRangeFormattingProvider: true,
        documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n', moreTriggerCharacter: ['}', ']'] },
        foldingRangeProvider: true,
        selectionRangeProvider: true,
        workspace: {
          workspaceFolders: { supported: true, changeNotifications: true },
          fileOperations: { willRename: { filters: MOVED_FILES } },
        },
        codeLensProvider: { resolveProvider: true },
        inlayHintProvider: true,
        codeActionProvider: {
          codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite, FIX_ALL],
          resolveProvider: true,
        },
      },
    };
  });

  connection.onInitialized(() => {
    client.settingsMayDiffer();
    client.subscribe();
    if (client.tellsFolders) {
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        const gone = new Set(removed.map(({ uri }) => uri));
        names.folders = [...names.folders.filter((uri) => !gone.has(uri)), ...added.map(({ uri }) => uri)];
      });
    }
  });
  connection.onDidChangeConfiguration(() => client.settingsMayDiffer());

  documents.onDidOpen(({ document }) => workspace.open(document));
  documents.onDidChangeContent(({ document }) => {
    workspace.open(document);
    publisher.changed(document);
    if (kindOf(document) === 'shop') client.refreshSoon();
  });
  documents.onDidClose(({ document }) => {
    workspace.close(document.uri);
    lastPlans.forget(document.uri);
    lastLenses.forget(document.uri);
    names.forget(document.uri);
    publisher.closed(document);
  });
  connection.onDidChangeWatchedFiles(() => {
    publisher.shopsChanged();
    client.refreshSoon();
  });

  connection.onNotification(CURSOR, ({ uri, line }: CursorParams) => {
    if (typeof uri === 'string' && typeof line === 'number') publisher.cursorAt({ uri, line });
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
      rename(file, position, newName, names, abilities.versionedEdits),
    ),
  );
  connection.onDocumentLinks(({ textDocument }, token) =>
    answer('links', textDocument.uri, token, null, (file) => documentLinks(file, names)),
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
  connection.onFoldingRanges(({ textDocument }, token) => answer('folding', textDocument.uri, token, null, folding));
  connection.onSelectionRanges(({ textDocument, positions }, token) =>
    answer('selection', textDocument.uri, token, null, (file) => selectionRanges(file, positions)),
  );
  connection.workspace.onWillRenameFiles(({ files: renames }) =>
    guarded('file renames', null, () => fileRenames(renames, names, abilities.versionedEdits)),
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
    answer('lenses', textDocument.uri, token, null, (file) => lastLenses.of(file.document, codeLenses(file))),
  );
  connection.onCodeLensResolve((lens, token) => {
    const owner = lensOwner(lens);
    if (owner === null) return lens;
    return answer('lens', owner.uri, token, lens, async (file) => {
      if (file.kind !== 'job' || file.document.version !== owner.version) throw new Moved();
      return resolvedLens(lens, owner.uri, await lastPlans.of(file).job.analysis.planBy(orders));
    });
  });
  connection.languages.inlayHint.on(({ textDocument, range }, token) =>
    answer('inlay hints', textDocument.uri, token, null, (file) => inlayHints(file, range, client.hints)),
  );
  connection.onRequest(TEMPLATE, template);
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
