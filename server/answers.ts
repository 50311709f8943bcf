import {
  LSPErrorCodes,
  ResponseError,
  type CancellationToken,
  type Disposable,
  type Position,
} from 'vscode-languageserver';
import { prepared } from './completing.js';
import { nextTurn } from './next-turn.js';
import type { OpenFile, Workspace } from './workspace.js';

/** The request is about an older text. */
export class Moved extends Error {}

/** Nobody waits for the answer any more. */
class Cancelled extends Error {}

/** Waits for what is worked on elsewhere, as long as somebody waits for the answer. Not for work that must end by itself. */
export async function whileAwaited<R>(work: Promise<R>, token: CancellationToken): Promise<R> {
  let listening: Disposable | undefined;
  const cancelled = new Promise<never>((_, refuse) => {
    listening = token.onCancellationRequested(() => refuse(new Cancelled()));
  });
  try {
    return await Promise.race([work, cancelled]);
  } finally {
    listening?.dispose();
  }
}

/**
 * Waits for what is worked out of a file elsewhere. Throws `Moved` where its text has gone on meanwhile: the document is the new
 * text then, and the analysis is of the old one.
 */
export async function ofPresent<R>({ document }: OpenFile, work: Promise<R>): Promise<R> {
  const { version } = document;
  const done = await work;
  if (document.version !== version) throw new Moved();
  return done;
}

/** Tells whoever looks at the server's log of a fault, and where it came up. */
export type Log = (what: string, fault: unknown) => void;

/**
 * Answers one request about a document; `nothing` where there is nothing to say.
 * @param at where it is about the carcass at a place, and cannot wait for the others: of a text that is new as a whole, `work`
 * gets what is known so far, that carcass included
 */
export type Answer = <R>(
  what: string,
  uri: unknown,
  token: CancellationToken,
  nothing: R,
  work: (file: OpenFile) => R | Promise<R>,
  at?: Position | null,
) => Promise<R | ResponseError>;

const cancelled = (): ResponseError => new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');

/** Answers of the present text, unless the request is cancelled or the text moves on meanwhile. A fault is no answer. */
export function answering(workspace: Workspace, log: Log): Answer {
  return async (what, uri, token, nothing, work, at = null) => {
    if (typeof uri !== 'string') return nothing;
    const asked = workspace.document(uri)?.version;
    // Lets what the client has sent since (a cancellation, the next key) come in first.
    await nextTurn();
    if (token.isCancellationRequested) return cancelled();
    const moved = new ResponseError(LSPErrorCodes.ContentModified, 'the text has changed');
    const isPresent = (): boolean => workspace.document(uri)?.version === asked;
    if (!isPresent()) return moved;
    try {
      if (at !== null) {
        const soon = workspace.near(uri, at.line);
        return soon === null ? nothing : await work(soon);
      }
      // A text that is new as a whole takes a while; whatever else comes in has its turn meanwhile.
      await prepared(workspace, uri, () => isPresent() && !token.isCancellationRequested);
      if (token.isCancellationRequested) return cancelled();
      if (!isPresent()) return moved;
      const file = workspace.file(uri);
      return file === null ? nothing : await work(file);
    } catch (fault) {
      if (fault instanceof Moved) return moved;
      if (fault instanceof Cancelled) return cancelled();
      log(what, fault);
      return nothing;
    }
  };
}
