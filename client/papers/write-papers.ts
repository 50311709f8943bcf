import * as vscode from 'vscode';
import { WorkDoneProgress, type BaseLanguageClient } from 'vscode-languageclient';
import type { PaperName, PapersMethod, PapersParams, PapersReply } from '../../shared-core/papers/asked.js';
import { index, list, text, variants, type Shape } from '../webview/shape.js';
import { wordsOf } from '../panels/latest.js';
import { fileName, openText } from '../panels/text.js';
import { LABELS, PAPERS, say } from './messages.js';

/** The command that asks for papers: its argument is the job’s URI. */
export const WRITE_PAPERS = 'borewright.writePapers';

const METHOD: PapersMethod = 'borewright/papers';
/** Which papers were chosen last, in the workspace's own state. */
const CHOSEN = 'borewright.papers';

const isReply: Shape<PapersReply> = variants('kind', {
  written: { files: list(text), broken: list(text), errors: index },
  nothing: { reason: text },
});

/**
 * Asks which papers of a job are wanted, and has the server write them beside it. It shows how far they have come, and can be
 * cancelled: then nothing is written.
 * @param uri the job; null where there is none
 */
export async function writePapers(
  language: BaseLanguageClient,
  state: vscode.Memento,
  uri: string | null,
): Promise<void> {
  if (uri === null) {
    void vscode.window.showInformationMessage(say.openJob());
    return;
  }
  const job = vscode.Uri.parse(uri, true);
  if (job.scheme === 'untitled') {
    void vscode.window.showInformationMessage(say.saveFirst());
    return;
  }
  const only = await chosen(state);
  if (only === undefined) return;
  const settings = vscode.workspace.getConfiguration('borewright.papers', job);
  const folder = folderOf(job, settings.get('folder', ''));
  await openText(uri);
  const seconds = settings.get('seconds', 0);
  try {
    const reply = await asked(language, {
      uri,
      folder: folder.toString(),
      only,
      as: settings.get('forms', ['pdf']),
      page: settings.get('page', 'a4'),
      seconds: seconds > 0 ? seconds : null,
    });
    if (reply === null) return;
    if (reply.kind === 'nothing') {
      void vscode.window.showErrorMessage(say.failed(reply.reason));
      return;
    }
    await tell(reply, folder);
  } catch (fault) {
    void vscode.window.showErrorMessage(say.failed(wordsOf(fault)));
  }
}

/** What is ticked in the list, in its order; undefined where the reader thinks better of it. */
async function chosen(state: vscode.Memento): Promise<readonly PaperName[] | undefined> {
  const kept: unknown = state.get(CHOSEN);
  const before = Array.isArray(kept) ? new Set<unknown>(kept) : null;
  const items = (Object.keys(PAPERS) as PaperName[]).map((name) => ({
    label: PAPERS[name],
    name,
    picked: before?.has(name) ?? true,
  }));
  const picked = await vscode.window.showQuickPick(items, { canPickMany: true, placeHolder: LABELS.whichPapers });
  if (picked === undefined || picked.length === 0) return undefined;
  const names = picked.map(({ name }) => name);
  await state.update(CHOSEN, names);
  return names;
}

/** The folder that the settings name: from the job's own where the name does not begin at the root. */
function folderOf(job: vscode.Uri, named: string): vscode.Uri {
  const beside = vscode.Uri.joinPath(job, '..');
  const isWhole = named.startsWith('/') || /^[a-z]:[\\/]/i.test(named);
  return isWhole ? vscode.Uri.file(named) : vscode.Uri.joinPath(beside, ...named.split(/[\\/]/));
}

/** null where it was cancelled, or the server has no answer. */
function asked(language: BaseLanguageClient, params: PapersParams): Thenable<PapersReply | null> {
  const place = vscode.ProgressLocation.Notification;
  const options = { location: place, title: say.writing(fileName(params.uri)), cancellable: true };
  return vscode.window.withProgress(options, async (progress, token) => {
    const workDoneToken = `${METHOD} ${params.uri}`;
    const hearing = language.onProgress(WorkDoneProgress.type, workDoneToken, (done) => {
      if (done.kind === 'report' && done.message !== undefined) progress.report({ message: done.message });
    });
    try {
      const reply = await language.sendRequest<unknown>(METHOD, { ...params, workDoneToken }, token);
      return isReply(reply) ? reply : null;
    } catch (fault) {
      if (token.isCancellationRequested) return null;
      throw fault;
    } finally {
      hearing.dispose();
    }
  });
}

type Written = Extract<PapersReply, { kind: 'written' }>;

async function tell({ files, broken, errors }: Written, folder: vscode.Uri): Promise<void> {
  const where = vscode.workspace.asRelativePath(folder);
  const words =
    broken.length > 0
      ? say.without(files.length, where, broken)
      : errors > 0
        ? say.withErrors(files.length, where, errors)
        : say.written(files.length, where);
  const show =
    errors === 0 && broken.length === 0 ? vscode.window.showInformationMessage : vscode.window.showWarningMessage;
  const choice = await show(words, LABELS.showFolder);
  if (choice === undefined) return;
  const isHere = vscode.workspace.getWorkspaceFolder(folder) !== undefined;
  await vscode.commands.executeCommand(isHere ? 'revealInExplorer' : 'revealFileInOS', folder);
}
