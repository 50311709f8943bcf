import {
  CodeActionKind,
  FileOperationPatternKind,
  TextDocumentSyncKind,
  type InitializeParams,
  type InitializeResult,
} from 'vscode-languageserver';
import { languageOf, type Language } from '../../shared-core/words/language.js';
import { speak, type Spoken } from '../../shared-core/words/spoken.js';
import { abilitiesOf } from '../abilities.js';
import { FIX_ALL } from '../features/code-actions.js';
import { LEGEND } from '../features/semantic-tokens.js';
import type { Session } from './session.js';

/** The words of a language; null where it has none of its own. */
export type WordsIn = (language: Language) => Spoken | null | Promise<Spoken | null>;

/** What a job's `shop:` has to follow. */
const MOVED_FILES = [
  { scheme: 'file', pattern: { glob: '**/*.{shop,carcass}.{yaml,yml}', matches: FileOperationPatternKind.file } },
  { scheme: 'file', pattern: { glob: '**', matches: FileOperationPatternKind.folder } },
];

/** A colon is none of them: Enter behind `doors:` goes on below it, and must not take the first word that is offered. */
const VALUE_SIGNS = [' ', '-', '{', ','];

const CAPABILITIES: InitializeResult['capabilities'] = {
  positionEncoding: 'utf-16',
  textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
  hoverProvider: true,
  completionProvider: { triggerCharacters: VALUE_SIGNS },
  signatureHelpProvider: { triggerCharacters: [' ', '[', ','] },
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
  semanticTokensProvider: { legend: LEGEND, full: { delta: true }, range: true },
  codeActionProvider: {
    codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite, FIX_ALL],
    resolveProvider: true,
  },
};

/** A job's findings follow from its shop file too. */
const PULLS = { identifier: 'borewright', interFileDependencies: true, workspaceDiagnostics: true };

/** The folders that are open. */
function foldersOf(params: InitializeParams): readonly string[] {
  if (params.workspaceFolders) return params.workspaceFolders.map(({ uri }) => uri);
  // eslint-disable-next-line @typescript-eslint/no-deprecated -- An older client names one folder alone, and so.
  return params.rootUri ? [params.rootUri] : [];
}

/**
 * Client and server say what they can do, and the client which folders are open.
 * @param reference where the reference page is, unless the client says otherwise
 * @param words fetches the words of a language
 */
export function greet(session: Session, version: string, reference: string | null, words: WordsIn): void {
  const { connection, client, names, wholeWorkspace } = session;
  connection.onInitialize(async (params) => {
    speak(await words(languageOf(params.locale)));
    session.abilities = abilitiesOf(params, reference);
    session.files.isRestricted = session.abilities.isRestricted;
    client.meet(params);
    session.workspace.takeWishes(client.settings.wishes);
    names.folders = foldersOf(params);
    const capabilities = session.abilities.pulls ? { ...CAPABILITIES, diagnosticProvider: PULLS } : CAPABILITIES;
    return { serverInfo: { name: 'borewright', version }, capabilities };
  });
  connection.onInitialized(() => {
    client.settingsMayDiffer();
    client.subscribe();
    wholeWorkspace.turn(client.settings.wholeWorkspace && !session.abilities.pulls);
    if (!client.tellsFolders) return;
    connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
      const gone = new Set(removed.map(({ uri }) => uri));
      names.folders = [...names.folders.filter((uri) => !gone.has(uri)), ...added.map(({ uri }) => uri)];
      wholeWorkspace.soon();
    });
  });
  connection.onDidChangeConfiguration(() => client.settingsMayDiffer());
}
