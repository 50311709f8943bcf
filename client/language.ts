import type { LanguageClientOptions } from 'vscode-languageclient';
import { NAMES } from './messages.js';

/** What the server is told at the start, wherever it runs. */
export const languageOptions: LanguageClientOptions = {
  documentSelector: [{ language: 'borewright-job' }, { language: 'borewright-shop' }],
  outputChannelName: NAMES.program,
  progressOnInitialization: false,
  initializationOptions: { hoverPictures: true, diagnostics: 'push' },
};
