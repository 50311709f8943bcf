import {
  ErrorCodes,
  type NotificationMessage,
  type RequestMessage,
  type ResponseMessage,
} from 'vscode-languageserver/node';
import { tell } from '../../shared-core/words/message.js';
import { say } from '../messages.js';

/**
 * The life of a session as the protocol orders it: `initialize` once and first, and after `shutdown` nothing but `exit`.
 * Source: Language Server Protocol 3.17, "Server lifecycle".
 */
export class LifeCycle {
  #stage: 'new' | 'serving' | 'ending' = 'new';

  get isEnding(): boolean {
    return this.#stage === 'ending';
  }

  /** Goes on by a request; the error that the protocol has for one that may not come now, or that lacks what it is about. */
  refusal(request: RequestMessage): ResponseMessage | null {
    const { method, params } = request;
    if (this.#stage === 'new' && method !== 'initialize')
      return refused(request, ErrorCodes.ServerNotInitialized, tell(say.notInitialized(), 'mm'));
    if (this.#stage === 'ending') return refused(request, ErrorCodes.InvalidRequest, tell(say.shutDown(), 'mm'));
    if (this.#stage === 'serving' && method === 'initialize')
      return refused(request, ErrorCodes.InvalidRequest, tell(say.initializedTwice(), 'mm'));
    if (method === 'shutdown') this.#stage = 'ending';
    else if (typeof params !== 'object' || params === null || Array.isArray(params))
      return refused(request, ErrorCodes.InvalidParams, tell(say.paramsMissing({ method }), 'mm'));
    else this.#stage = 'serving';
    return null;
  }

  /** Whether a notification is to be heard; `exit` always is. */
  hears({ method }: NotificationMessage): boolean {
    return this.#stage === 'serving' || method === 'exit';
  }
}

function refused({ id }: RequestMessage, code: number, message: string): ResponseMessage {
  return { jsonrpc: '2.0', id, error: { code, message } };
}
