import type { LanguageClientOptions } from 'vscode-languageclient';
import { NAMES } from './messages.js';

/** Opens a page of the reference; links in hovers lead to it. */
export const REFERENCE_COMMAND = 'borewright.openReference';

/** How the editor differs from others. */
export const STARTED_WITH = { hoverPictures: true, diagnostics: 'push', referenceCommand: REFERENCE_COMMAND };

/** What the server is told at the start, wherever it runs. */
export const languageOptions: LanguageClientOptions = {
  documentSelector: [{ language: 'borewright-job' }, { language: 'borewright-shop' }],
  outputChannelName: NAMES.program,
  progressOnInitialization: false,
  markdown: { isTrusted: { enabledCommands: [REFERENCE_COMMAND] } },
  initializationOptions: STARTED_WITH,
};
