import type { LanguageClientOptions } from 'vscode-languageclient';

/** What the server is told at the start, wherever it runs. */
export const languageOptions: LanguageClientOptions = {
  documentSelector: [{ language: 'borewright-job' }, { language: 'borewright-shop' }],
  outputChannelName: 'Borewright',
  progressOnInitialization: false,
  initializationOptions: { hoverPictures: true, diagnostics: 'push' },
};
