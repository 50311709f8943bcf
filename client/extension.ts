import * as vscode from 'vscode';
import { LSPErrorCodes, ResponseError, State, type LanguageClient } from 'vscode-languageclient/node';
import type { DrawingMethod } from '../shared-core/drawing/messages.js';
import { createLanguageClient } from './language.js';
import { Previews, VIEW_TYPE } from './preview/previews.js';

const DRAWING: DrawingMethod = 'borewright/drawing';
/** From the server: it has worked out this version of a job file. */
const CHANGED = 'borewright/changed';

let client: LanguageClient | null = null;

/** Registers commands and the preview, and starts the language server. Sends nothing anywhere but to that server. */
export function activate(context: vscode.ExtensionContext): void {
  const language = createLanguageClient(context);
  client = language;
  const previews = new Previews(context.extensionUri, async (params) => {
    await started;
    try {
      return await language.sendRequest<unknown>(DRAWING, params);
    } catch (fault) {
      // The text went on meanwhile: the server says when it has worked that out.
      if (fault instanceof ResponseError && PASSED_BY.has(fault.code)) return undefined;
      throw fault;
    }
  });
  context.subscriptions.push(
    language.onNotification(CHANGED, (said: unknown) => {
      if (typeof said === 'object' && said !== null && 'uri' in said && typeof said.uri === 'string')
        previews.changed(said.uri);
    }),
    language.onDidChangeState(({ newState }) => {
      if (newState === State.Running) previews.refresh();
      else if (newState === State.Stopped) previews.trouble(STOPPED);
    }),
    vscode.window.registerWebviewPanelSerializer(VIEW_TYPE, previews),
    vscode.commands.registerCommand('borewright.showBoreMap', () => previews.show('panel')),
    vscode.commands.registerCommand('borewright.showSheet', () => previews.show('sheet')),
    vscode.commands.registerCommand('borewright.restartServer', () => restart(language)),
  );
  const started = language.start().catch((fault: unknown) => {
    void vscode.window.showErrorMessage(`Borewright: the language server did not start: ${wordsOf(fault)}`);
  });
}

export function deactivate(): Thenable<void> | undefined {
  return client?.isRunning() === true ? client.stop() : undefined;
}

const PASSED_BY: ReadonlySet<number> = new Set([
  LSPErrorCodes.ContentModified,
  LSPErrorCodes.RequestCancelled,
  LSPErrorCodes.ServerCancelled,
]);
const STOPPED = 'The language server has stopped. Run the command “Borewright: Restart Language Server”.';

/** Also after the client has given up restarting a server that failed too often. */
async function restart(language: LanguageClient): Promise<void> {
  try {
    if (language.isRunning()) await language.restart();
    else await language.start();
    void vscode.window.setStatusBarMessage('Borewright: language server restarted.', 3000);
  } catch (fault) {
    void vscode.window.showErrorMessage(`Borewright: the language server could not be restarted: ${wordsOf(fault)}`);
  }
}

function wordsOf(fault: unknown): string {
  return fault instanceof Error ? fault.message : String(fault);
}
