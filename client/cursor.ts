import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** To the server: the cursor has come to a line. What it has left is finished, and its findings may be shown. */
const CURSOR = 'borewright/cursor';

/** Tells the server of every line that the cursor comes to, and of other documents. */
export function tellsCursor(language: BaseLanguageClient): vscode.Disposable {
  let told = '';
  const tell = (editor: vscode.TextEditor | undefined): void => {
    if (editor === undefined || !language.isRunning()) return;
    const cursor = { uri: editor.document.uri.toString(), line: editor.selection.active.line };
    const now = JSON.stringify(cursor);
    if (now === told) return;
    told = now;
    language.sendNotification(CURSOR, cursor).catch(() => undefined);
  };
  return vscode.Disposable.from(
    vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => tell(textEditor)),
    vscode.window.onDidChangeActiveTextEditor(tell),
  );
}
