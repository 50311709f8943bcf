import type * as vscode from 'vscode';
import { LanguageClient, TransportKind, type ServerOptions } from 'vscode-languageclient/node';
import { start, stop, type Extension } from './extension.js';
import { languageOptions } from './language.js';
import { NAMES } from './messages.js';
import { checkTasks } from './tasks.js';

/** Where the editor runs under Node: the server is a process of its own, and there is a command line. */
export function activate(context: vscode.ExtensionContext): Extension {
  const module = context.asAbsolutePath('dist/server/server.cjs');
  const server: ServerOptions = {
    run: { module, transport: TransportKind.ipc },
    debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
  };
  context.subscriptions.push(checkTasks(context.extensionUri));
  return start(context, new LanguageClient('borewright', NAMES.program, server, languageOptions));
}

/** Stops the server with the window. */
export const deactivate = stop;
