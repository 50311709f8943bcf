import * as vscode from 'vscode';
import type { LanguageClientOptions } from 'vscode-languageclient';
import { NAMES } from './messages.js';

/** Opens a page of the reference; links in hovers lead to it. */
export const REFERENCE_COMMAND = 'borewright.openReference';

/** How the editor differs from others, and what its window is like when the server starts. */
export const startedWith = (): object => ({
  hoverPictures: true,
  diagnostics: 'push',
  referenceCommand: REFERENCE_COMMAND,
  restricted: !vscode.workspace.isTrusted,
});

/** What the server is told at the start, wherever it runs. */
export const languageOptions: LanguageClientOptions = {
  documentSelector: [{ language: 'borewright-job' }, { language: 'borewright-shop' }],
  outputChannelName: NAMES.program,
  progressOnInitialization: false,
  markdown: { isTrusted: { enabledCommands: [REFERENCE_COMMAND] } },
  initializationOptions: startedWith,
};
