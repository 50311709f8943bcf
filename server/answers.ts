import { LSPErrorCodes, ResponseError, type CancellationToken } from 'vscode-languageserver';
import type { OpenFile, Workspace } from './workspace.js';

/** The request is about an older text. */
export class Moved extends Error {}

/** Tells whoever looks at the server's log of a fault, and where it came up. */
export type Log = (what: string, fault: unknown) => void;

/** Answers one request about a document; `nothing` where there is nothing to say. */
export type Answer = <R>(
  what: string,
  uri: unknown,
  token: CancellationToken,
  nothing: R,
  work: (file: OpenFile) => R | Promise<R>,
) => Promise<R | ResponseError>;

/** Answers of the present text, unless the request is cancelled or the text moves on meanwhile. A fault is no answer. */
export function answering(workspace: Workspace, log: Log): Answer {
  return async (what, uri, token, nothing, work) => {
    if (typeof uri !== 'string') return nothing;
    const asked = workspace.document(uri)?.version;
    // Lets what the client has sent since (a cancellation, the next key) come in first.
    await new Promise((resume) => setTimeout(resume, 0));
    if (token.isCancellationRequested) return new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
    const moved = new ResponseError(LSPErrorCodes.ContentModified, 'the text has changed');
    if (workspace.document(uri)?.version !== asked) return moved;
    try {
      const file = workspace.file(uri);
      return file === null ? nothing : await work(file);
    } catch (fault) {
      if (fault instanceof Moved) return moved;
      log(what, fault);
      return nothing;
    }
  };
}
