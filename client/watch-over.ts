import type { BaseLanguageClient, ErrorHandler } from 'vscode-languageclient';
import { CloseAction } from 'vscode-languageclient';
import { say } from './messages.js';

/** Starts a server that ends by itself again, without a message in the window; where that comes too often, says what to do. */
export function watchOver(language: BaseLanguageClient): ErrorHandler {
  const usual = language.createDefaultErrorHandler();
  return {
    error: (fault, message, count) => usual.error(fault, message, count),
    closed: async () => {
      const { action } = await usual.closed();
      const goesOn = action === CloseAction.Restart;
      return { action, message: goesOn ? say.startsAgain() : say.endsTooOften(), handled: goesOn };
    },
  };
}
