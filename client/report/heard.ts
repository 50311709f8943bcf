import * as vscode from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';
import type { HeardFault } from './text.js';

/** From the server: it has failed at something. Its words stay in its output, for they may quote a file. */
const FAULT = 'borewright/fault';

/** So many of each are kept. */
const MOST_WAITS = 200;
const MOST_FAULTS = 10;

/** What a report tells of how the window fared: waits, starts of the server, its last faults. Kept in memory alone. */
export class Heard implements vscode.Disposable {
  starts = 0;
  readonly #waits: number[] = [];
  readonly #faults: { readonly fault: Omit<HeardFault, 'secondsAgo'>; readonly at: number }[] = [];
  /** When a version of a document was typed. */
  readonly #typed = new Map<string, { readonly version: number; readonly at: number }>();
  readonly #listening: vscode.Disposable;
  /** Whether the window has asked the server to stop. */
  #isAsked = false;

  constructor(language: BaseLanguageClient) {
    this.#listening = vscode.Disposable.from(
      vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
        if (contentChanges.length > 0)
          this.#typed.set(document.uri.toString(), { version: document.version, at: performance.now() });
      }),
      vscode.workspace.onDidCloseTextDocument(({ uri }) => this.#typed.delete(uri.toString())),
      language.onNotification(FAULT, (said: unknown) => {
        const fault = faultIn(said);
        if (fault !== null) this.#keep(fault);
      }),
      language.onDidChangeState(({ oldState, newState }) => {
        if (newState === State.Running) this.starts += 1;
        // A server that the window itself stops is asked to first.
        else if (newState === State.Stopped && oldState === State.Running && !this.#isAsked)
          this.#keep({ how: 'ended', kind: null, frames: [] });
        if (newState === State.Stopped) this.#isAsked = false;
      }),
    );
  }

  /** The window is about to stop the server. */
  stops(): void {
    this.#isAsked = true;
  }

  /** What the server says of a version of a file; `complete` once it knows all. */
  changed(said: object & { readonly uri: string }, version: number | null): void {
    if (!('complete' in said) || said.complete !== true) return;
    const key = vscode.Uri.parse(said.uri).toString();
    const typed = this.#typed.get(key);
    if (typed === undefined || typed.version !== version) return;
    this.#typed.delete(key);
    this.#waits.push(Math.round(performance.now() - typed.at));
    if (this.#waits.length > MOST_WAITS) this.#waits.shift();
  }

  get waits(): readonly number[] {
    return this.#waits;
  }

  get faults(): readonly HeardFault[] {
    return this.#faults.map(({ fault, at }) => ({ ...fault, secondsAgo: Math.round((performance.now() - at) / 1000) }));
  }

  dispose(): void {
    this.#listening.dispose();
  }

  #keep(fault: Omit<HeardFault, 'secondsAgo'>): void {
    this.#faults.push({ fault, at: performance.now() });
    if (this.#faults.length > MOST_FAULTS) this.#faults.shift();
  }
}

function faultIn(said: unknown): Omit<HeardFault, 'secondsAgo'> | null {
  if (typeof said !== 'object' || said === null || !('how' in said) || !('kind' in said) || !('frames' in said))
    return null;
  const { how, kind, frames } = said;
  if (how !== 'ended' && how !== 'stuck' && how !== 'failed') return null;
  if ((kind !== null && typeof kind !== 'string') || !Array.isArray(frames)) return null;
  return { how, kind, frames: frames.filter((one) => typeof one === 'string') };
}
