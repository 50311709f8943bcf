import type {
  DidChangeTextDocumentParams,
  DidCloseTextDocumentParams,
  DidOpenTextDocumentParams,
  NotificationMessage,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { updated } from '../text.js';

/** The documents that the client has open, as their notifications tell, so that a new thread can be told of them. */
export class OpenTexts {
  readonly #documents = new Map<string, TextDocument>();

  /** Takes note of a notification; the URI of the document that it is about, or null where it is about none. */
  heard({ method, params }: NotificationMessage): string | null {
    switch (method) {
      case 'textDocument/didOpen': {
        const { uri, languageId, version, text } = (params as DidOpenTextDocumentParams).textDocument;
        this.#documents.set(uri, TextDocument.create(uri, languageId, version, text));
        return uri;
      }
      case 'textDocument/didChange': {
        const { textDocument, contentChanges } = params as DidChangeTextDocumentParams;
        const document = this.#documents.get(textDocument.uri);
        if (document !== undefined)
          this.#documents.set(textDocument.uri, updated(document, contentChanges, textDocument.version));
        return textDocument.uri;
      }
      case 'textDocument/didClose': {
        const { uri } = (params as DidCloseTextDocumentParams).textDocument;
        this.#documents.delete(uri);
        return uri;
      }
      default:
        return null;
    }
  }

  get(uri: string): TextDocument | undefined {
    return this.#documents.get(uri);
  }

  /** In the order in which they were opened. */
  all(): readonly TextDocument[] {
    return [...this.#documents.values()];
  }
}

/** What opens a document as it is now. */
export function opening(document: TextDocument): NotificationMessage {
  const { uri, languageId, version } = document;
  const params: DidOpenTextDocumentParams = {
    textDocument: { uri, languageId, version, text: document.getText() },
  };
  return { jsonrpc: '2.0', method: 'textDocument/didOpen', params };
}
