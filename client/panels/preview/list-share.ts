import type * as vscode from 'vscode';

const KEY = 'borewright.preview.lists';
/** Percent of the page; bounds leave room for both drawing and lists. */
const USUAL = 32;
const LEAST = 8;
const MOST = 80;

/** What part of a preview's page its lists have, as the reader last drew the line between them. */
export class ListShare {
  readonly #state: vscode.Memento;

  constructor(state: vscode.Memento) {
    this.#state = state;
  }

  get(): number {
    const kept: unknown = this.#state.get(KEY);
    return typeof kept === 'number' && kept >= LEAST && kept <= MOST ? kept : USUAL;
  }

  set(share: number): void {
    if (share >= LEAST && share <= MOST) void this.#state.update(KEY, share);
  }
}
