import type {
  CodeAction,
  CodeActionContext,
  Diagnostic,
  Range,
  TextDocumentEdit,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver';
import { CodeActionKind } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Repair } from '../../shared-core/document/finding.js';
import type { TextEdit as CoreEdit } from '../../shared-core/document/pieces.js';
import type { RepairEdits } from '../../shared-core/engine/repairs.js';
import {
  batchEdits,
  batchesFor,
  preferredRepairs,
  repairEdits,
  repairsOf,
  shopRepairEdits,
} from '../../shared-core/engine/repairs.js';
import type { ClientAbilities } from '../abilities.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile, OpenJob, OpenShop } from '../workspace.js';
import { diagnostics } from './diagnostics.js';
import { tell } from '../../shared-core/words/message.js';

/** Takes every repair that may be taken without asking. */
export const FIX_ALL = `${CodeActionKind.SourceFixAll}.borewright`;

/** The repairs of the findings that the range touches, the batches that they belong to, and, when asked for, all at once. */
export function codeActions(
  file: OpenFile,
  range: Range,
  context: CodeActionContext,
  abilities: ClientAbilities,
): CodeAction[] {
  const wants = (kind: string): boolean =>
    context.only === undefined ||
    context.only.some((only) => only === '' || kind === only || kind.startsWith(`${only}.`));
  const actions = wants(CodeActionKind.QuickFix) ? quickFixes(file, range, abilities) : [];
  // Offered only where it is asked for: beside every single fault it would be noise.
  if (context.only !== undefined && wants(FIX_ALL)) actions.push(...fixAll(file, abilities));
  return actions;
}

function quickFixes(file: OpenFile, range: Range, abilities: ClientAbilities): CodeAction[] {
  const start = offsetOf(file.document, range.start);
  const end = Math.max(start, offsetOf(file.document, range.end));
  const touches = ({ range: found }: Diagnostic): boolean =>
    file.document.offsetAt(found.start) <= end && file.document.offsetAt(found.end) >= start;
  const shown = diagnostics(file, abilities);
  if (file.kind === 'shop') {
    return file.analysis.findings.flatMap((finding, index) => {
      const diagnostic = shown[index];
      if (diagnostic === undefined || !touches(diagnostic)) return [];
      return finding.repairs.flatMap((repair) =>
        quickFix(
          tell(repair.title, file.analysis.shop.unit),
          repair.preferred,
          diagnostic,
          shopEdit(file, [repair], abilities),
        ),
      );
    });
  }
  const { analysis } = file;
  const offered = new Set<string>();
  return analysis.known().flatMap((one, index) => {
    const diagnostic = shown[index];
    if (diagnostic === undefined || !touches(diagnostic)) return [];
    const own = one.finding.repairs.flatMap((repair) => {
      const edits = repairEdits(analysis, { carcass: one.carcass, repair });
      return edits === null
        ? []
        : quickFix(tell(repair.title, analysis.unit), repair.preferred, diagnostic, jobEdit(file, edits, abilities));
    });
    const batches = batchesFor(analysis, one)
      .map(({ title, key, rule, carcass: of }) => ({ title: tell(title, analysis.unit), key, rule, carcass: of }))
      .filter(({ title }) => !offered.has(title))
      .flatMap(({ title, key, rule, carcass }): CodeAction[] => {
        offered.add(title);
        const { uri, version } = file.document;
        const data: BatchData = { uri, version, key, rule, carcass };
        const action = { title, kind: CodeActionKind.QuickFix, diagnostics: [diagnostic], data };
        // To try the repairs of a whole file takes a while: done for the one that is chosen, where the client lets us.
        return abilities.resolvesEdits ? [action] : withEdit(file, action, abilities);
      });
    return [...own, ...batches];
  });
}

function quickFix(title: string, preferred: boolean, diagnostic: Diagnostic, edit: WorkspaceEdit | null): CodeAction[] {
  if (edit === null) return [];
  return [
    { title, kind: CodeActionKind.QuickFix, diagnostics: [diagnostic], ...(preferred && { isPreferred: true }), edit },
  ];
}

/** What a batch's action carries until it is chosen. */
interface BatchData {
  readonly uri: string;
  readonly version: number;
  readonly key: string;
  readonly rule: string;
  readonly carcass: number | null;
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
  const edit = jobEdit(file, batchEdits(file.analysis, repairsOf(file.analysis, action.data)), abilities);
  return edit === null ? [] : [{ ...action, edit }];
}

function fixAll(file: OpenFile, abilities: ClientAbilities): CodeAction[] {
  const edit =
    file.kind === 'job'
      ? jobEdit(file, batchEdits(file.analysis, preferredRepairs(file.analysis)), abilities)
      : shopEdit(
          file,
          file.analysis.findings.flatMap(({ repairs }) => repairs.find(({ preferred }) => preferred) ?? []),
          abilities,
        );
  return edit === null ? [] : [{ title: 'Take every repair that needs no choice', kind: FIX_ALL, edit }];
}

function shopEdit(
  { document, analysis }: OpenShop,
  repairs: readonly Repair[],
  abilities: ClientAbilities,
): WorkspaceEdit | null {
  return workspaceEdit([{ document, edits: shopRepairEdits(analysis.text, repairs) }], abilities);
}

function jobEdit(
  { document, analysis }: OpenJob,
  edits: RepairEdits,
  abilities: ClientAbilities,
): WorkspaceEdit | null {
  const { uri, text } = analysis.used;
  return workspaceEdit(
    [
      { document, edits: edits.job },
      // The shop file may not be open: it has no version then.
      ...(uri === null
        ? []
        : [{ document: TextDocument.create(uri, 'borewright-shop', NO_VERSION, text), edits: edits.shop }]),
    ],
    abilities,
  );
}

const NO_VERSION = -1;

/** Null where there is nothing to change. */
function workspaceEdit(
  files: readonly { readonly document: TextDocument; readonly edits: readonly CoreEdit[] }[],
  { versionedEdits }: ClientAbilities,
): WorkspaceEdit | null {
  const changed = files
    .filter(({ edits }) => edits.length > 0)
    .map(({ document, edits }) => ({
      document,
      edits: edits.map(({ start, end, text }): TextEdit => ({ range: rangeOf(document, start, end), newText: text })),
    }));
  if (changed.length === 0) return null;
  if (!versionedEdits)
    return { changes: Object.fromEntries(changed.map(({ document, edits }) => [document.uri, edits])) };
  return {
    documentChanges: changed.map(({ document: { uri, version }, edits }): TextDocumentEdit => ({
      textDocument: { uri, version: version === NO_VERSION ? null : version },
      edits,
    })),
  };
}
