import * as vscode from 'vscode';
import { say } from '../messages.js';
import { fileName } from '../text.js';
import { LANGUAGE } from '../../spoken.js';
import { printPage } from './print-page.js';

/** Asks where a picture is to be saved, proposes a name that no file has, and writes it there. */
export async function savePicture(
  job: string,
  name: string,
  ending: 'svg' | 'png',
  content: Uint8Array,
): Promise<void> {
  const defaultUri = await freeName(folderOf(job), name, ending);
  // The dialog itself asks before a file is replaced.
  const chosen = await vscode.window.showSaveDialog({ defaultUri, filters: { [ending.toUpperCase()]: [ending] } });
  if (chosen === undefined) return;
  await vscode.workspace.fs.writeFile(chosen, content);
  void vscode.window.setStatusBarMessage(say.saved(fileName(chosen.toString())), 4000);
}

/** Where a job lies; for one that has no file yet, the folder that is open. */
function folderOf(job: string): vscode.Uri {
  const uri = vscode.Uri.parse(job, true);
  const open = vscode.workspace.workspaceFolders?.[0]?.uri;
  return uri.scheme === 'untitled' && open !== undefined ? open : vscode.Uri.joinPath(uri, '..');
}

async function freeName(folder: vscode.Uri, name: string, ending: string): Promise<vscode.Uri> {
  for (let number = 1; ; number += 1) {
    const at = vscode.Uri.joinPath(folder, `${name}${number === 1 ? '' : `-${number}`}.${ending}`);
    const isThere = await Promise.resolve(vscode.workspace.fs.stat(at)).then(
      () => true,
      () => false,
    );
    if (!isThere) return at;
  }
}

/** Opens a drawing in the browser, which prints it: an editor's page may not print. */
export async function printPicture(store: vscode.Uri, name: string, svg: string): Promise<void> {
  const page = vscode.Uri.joinPath(store, 'print', `${name}.html`);
  await vscode.workspace.fs.writeFile(page, new TextEncoder().encode(printPage(name, svg, LANGUAGE)));
  if (!(await vscode.env.openExternal(page))) void vscode.window.showWarningMessage(say.noBrowser(page.fsPath));
}
