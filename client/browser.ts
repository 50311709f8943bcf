import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { start, stop, type Extension } from './extension.js';
import { languageOptions, startedWith } from './language.js';
import { NAMES } from './messages.js';

/** Where the editor runs in a browser: the server is a worker, and there is neither a disk nor a command line. */
export function activate(context: vscode.ExtensionContext): Extension {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server', 'worker.js').toString(true);
  const reference = vscode.Uri.joinPath(context.extensionUri, 'dist', 'reference').toString();
  const options = { ...languageOptions, initializationOptions: () => ({ ...startedWith(), reference }) };
  return start(context, new LanguageClient('borewright', NAMES.program, new Worker(script), options));
}

/** Stops the server with the window. */
export const deactivate = stop;
