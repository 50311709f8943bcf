import { tell } from '../../shared-core/words/message.js';
import { say } from '../messages.js';
import type { CodeAction, CodeActionContext, Diagnostic, Range, WorkspaceEdit } from 'vscode-languageserver';
import { CodeActionKind } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import {
  editsOfBatch,
  editsWithoutChoice,
  refactorsIn,
  repairsFor,
  type BatchKey,
  type TextEdit,
} from '../../shared-core/service.js';
import type { ClientAbilities } from '../abilities.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile, OpenJob, Workspace } from '../workspace.js';
import { shopCreation } from './create-shop.js';
import { diagnosticsInOrder, shopOf } from './diagnostics.js';
import { workspaceEdit, type DocumentEdits } from './workspace-edit.js';

/** Takes every repair that may be taken without asking. */
export const FIX_ALL = `${CodeActionKind.SourceFixAll}.borewright`;

/** What repairs are offered by, beside the file. */
interface Around {
  readonly abilities: ClientAbilities;
  readonly workspace: Workspace;
}

/** The repairs of the findings that the range touches, the batches that they belong to, and, when asked for, all at once. */
export function codeActions(
  file: OpenFile,
  range: Range,
  context: CodeActionContext,
  { abilities, workspace }: Around,
): CodeAction[] {
  const wants = (kind: string): boolean =>
    context.only === undefined ||
    context.only.some((only) => only === '' || kind === only || kind.startsWith(`${only}.`));
  const actions = wants(CodeActionKind.QuickFix) ? quickFixes(file, range, { abilities, workspace }) : [];
  if (wants(CodeActionKind.RefactorRewrite)) actions.push(...refactors(file, range, abilities));
  // Offered only where it is asked for: beside every single fault it would be noise.
  if (context.only !== undefined && wants(FIX_ALL)) actions.push(...fixAll(file, abilities));
  return actions;
}

function quickFixes(file: OpenFile, range: Range, { abilities, workspace }: Around): CodeAction[] {
  const start = offsetOf(file.document, range.start);
  const end = Math.max(start, offsetOf(file.document, range.end));
  const touches = ({ range: found }: Diagnostic): boolean =>
    file.document.offsetAt(found.start) <= end && file.document.offsetAt(found.end) >= start;
  const shown = diagnosticsInOrder(file, abilities);
  const isTouched = (index: number): boolean => {
    const one = shown[index];
    return one !== undefined && one !== null && touches(one);
  };
  const missing = abilities.createsFiles ? shown.find((one) => one?.code === SHOP_MISSING && touches(one)) : null;
  const creations = missing === null || missing === undefined ? [] : shopCreation(file, missing, workspace.files);
  const repairs = repairsFor(file, isTouched).flatMap(({ finding, repairs }) =>
    repairs.flatMap((repair): CodeAction[] => {
      const action = { title: repair.title, kind: CodeActionKind.QuickFix, diagnostics: [shown[finding]!] };
      if ('edits' in repair) {
        const document = repair.in === 'shop' ? shopDocument(file, workspace) : file.document;
        const edit = document === null ? null : editOf(document, repair.edits, abilities);
        return edit === null ? [] : [{ ...action, ...(repair.preferred && { isPreferred: true }), edit }];
      }
      const { uri, version } = file.document;
      const data: BatchData = { uri, version, ...repair.batch };
      // To try the repairs of a whole file takes a while: done for the one that is chosen, where the client lets us.
      if (abilities.resolvesEdits) return [{ ...action, data }];
      return file.kind === 'job' ? withEdit(file, { ...action, data }, abilities) : [];
    }),
  );
  return [...repairs, ...creations];
}

const SHOP_MISSING = 'shop-missing';

/** What a batch's action carries until it is chosen. */
interface BatchData extends BatchKey {
  readonly uri: string;
  readonly version: number;
}

function isBatchData(data: unknown): data is BatchData {
  if (typeof data !== 'object' || data === null) return false;
  const { uri, version, key, rule, carcass } = data as Partial<Record<keyof BatchData, unknown>>;
  const isText = [uri, key, rule].every((value) => typeof value === 'string');
  return isText && typeof version === 'number' && (carcass === null || Number.isInteger(carcass));
}

/** The document that an action without an edit belongs to; null for one that was never ours. */
export function ownerOf({ data }: CodeAction): { readonly uri: string; readonly version: number } | null {
  return isBatchData(data) ? { uri: data.uri, version: data.version } : null;
}

/** The action with its edit, which it was offered without. */
export function resolvedAction(file: OpenFile, action: CodeAction, abilities: ClientAbilities): CodeAction {
  return (file.kind === 'job' ? withEdit(file, action, abilities)[0] : undefined) ?? action;
}

/** Empty where there is nothing to change. */
function withEdit(file: OpenJob, action: CodeAction, abilities: ClientAbilities): CodeAction[] {
  if (!isBatchData(action.data)) return [];
  const edit = editOf(file.document, editsOfBatch(file.analysis, action.data), abilities);
  return edit === null ? [] : [{ ...action, edit }];
}

function refactors(file: OpenFile, range: Range, abilities: ClientAbilities): CodeAction[] {
  return refactorsIn(file, offsetOf(file.document, range.start)).flatMap(({ title, edits }): CodeAction[] => {
    const edit = editOf(file.document, edits, abilities);
    return edit === null ? [] : [{ title, kind: CodeActionKind.RefactorRewrite, edit }];
  });
}

function fixAll(file: OpenFile, abilities: ClientAbilities): CodeAction[] {
  const edit = editOf(file.document, editsWithoutChoice(file), abilities);
  return edit === null ? [] : [{ title: tell(say.takeRepairs(), 'mm'), kind: FIX_ALL, edit }];
}

/** The shop file of a job, as it is open where it is. */
function shopDocument(file: OpenFile, workspace: Workspace): TextDocument | null {
  const shop = shopOf(file);
  return shop === null ? null : (workspace.document(shop.uri) ?? shop);
}

function editOf(
  document: TextDocument,
  edits: readonly TextEdit[],
  { versionedEdits }: ClientAbilities,
): WorkspaceEdit | null {
  return workspaceEdit([inDocument(document, edits)], versionedEdits);
}

function inDocument(document: TextDocument, edits: readonly TextEdit[]): DocumentEdits {
  return {
    document,
    edits: edits.map(({ start, end, text }) => ({ range: rangeOf(document, start, end), newText: text })),
  };
}
