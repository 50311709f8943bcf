import type { NotificationMessage, ProgressToken } from 'vscode-languageserver';

/** What is told of one piece of work. */
interface Told {
  readonly token: ProgressToken;
  readonly value: { readonly kind?: string };
}

/** What a thread shows of how far it has come and has not ended, so that it can be ended when the thread is gone. */
export class OpenProgress {
  readonly #tokens = new Set<ProgressToken>();

  /** Takes note of a notification of the thread. */
  told({ method, params }: NotificationMessage): void {
    if (method !== PROGRESS) return;
    const { token, value } = params as Told;
    if (value.kind === 'begin') this.#tokens.add(token);
    if (value.kind === 'end') this.#tokens.delete(token);
  }

  /** What ends all that is open; after that nothing is. */
  ends(): readonly NotificationMessage[] {
    const open = [...this.#tokens];
    this.#tokens.clear();
    return open.map((token) => ({ jsonrpc: '2.0', method: PROGRESS, params: { token, value: { kind: 'end' } } }));
  }
}

const PROGRESS = '$/progress';
