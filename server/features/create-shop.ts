import { CodeActionKind, type CodeAction, type Diagnostic, type TextDocumentEdit } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { builtInShop, tell } from '../../shared-core/service.js';
import { shopUri, type Files } from '../files.js';
import { say } from '../messages.js';
import type { OpenFile } from '../workspace.js';

/** A name without its ending. */
const BARE = /^[\w-]+$/;

/**
 * Writes the shop file that a job names and that is not there. An edit of the workspace, and not of this server, since the file
 * is the owner's.
 * @param missing what tells that it is not there
 */
export function shopCreation(file: OpenFile, missing: Diagnostic, files: Files): CodeAction[] {
  const reference = file.kind === 'job' ? file.analysis.head.shopRef?.value : undefined;
  if (reference === undefined) return [];
  const name = BARE.test(reference) ? `${reference}.shop.yaml` : reference;
  const uri = shopUri(file.document.uri, name);
  const reading = uri === null ? null : files.read(uri);
  // What is there and cannot be read is never written over; where there is no disk nobody knows what is there.
  if (uri === null || reading === null || reading.ok || reading.fault !== 'missing') return [];
  const start = { line: 0, character: 0 };
  return [
    {
      title: tell(say.createShop({ reference: name }), 'mm'),
      kind: CodeActionKind.QuickFix,
      diagnostics: [missing],
      edit: {
        documentChanges: [
          { kind: 'create', uri, options: { overwrite: false, ignoreIfExists: false } },
          {
            textDocument: { uri, version: null },
            edits: [{ range: { start, end: start }, newText: builtInShop() }],
          },
          ...(name === reference ? [] : [named(file.document, missing, name)]),
        ],
      },
    },
  ];
}

/** Gives the job the whole name, where it has one without its ending. */
function named({ uri, version }: TextDocument, { range }: Diagnostic, name: string): TextDocumentEdit {
  return { textDocument: { uri, version }, edits: [{ range, newText: name }] };
}
