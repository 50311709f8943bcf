import type * as vscode from 'vscode';
import {
  LanguageClient,
  TransportKind,
  type LanguageClientOptions,
  type ServerOptions,
} from 'vscode-languageclient/node';

/** The client of the language server, not started yet. It speaks over the channel that Node opens to a child process. */
export function createLanguageClient(context: vscode.ExtensionContext): LanguageClient {
  const module = context.asAbsolutePath('dist/server/server.cjs');
  const server: ServerOptions = {
    run: { module, transport: TransportKind.ipc },
    debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
  };
  const options: LanguageClientOptions = {
    documentSelector: [{ language: 'borewright-job' }, { language: 'borewright-shop' }],
    outputChannelName: 'Borewright',
    progressOnInitialization: false,
    initializationOptions: { hoverPictures: true, diagnostics: 'push' },
  };
  return new LanguageClient('borewright', 'Borewright', server, options);
}
