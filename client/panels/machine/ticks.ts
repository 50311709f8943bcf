import type * as vscode from 'vscode';

/** So many ticks are kept for a job; beyond that the oldest that the job no longer has go first. */
const MOST = 4000;

/**
 * What is ticked off of a job, by content, in the workspace's own state: the job file is not touched. What is no longer in
 * the job counts for nothing but is kept for a while, so that an edit that is undone brings its ticks back.
 */
export class Ticks {
  readonly #state: vscode.Memento;

  constructor(state: vscode.Memento) {
    this.#state = state;
  }

  of(uri: string): readonly string[] {
    const kept: unknown = this.#state.get(keyOf(uri));
    return Array.isArray(kept) ? kept.filter((one): one is string => typeof one === 'string') : [];
  }

  /** @param present the contents that the job has now, which are never dropped */
  async set(uri: string, ticks: readonly string[], on: boolean, present: ReadonlySet<string>): Promise<void> {
    const changed = new Set(ticks);
    const others = this.of(uri).filter((one) => !changed.has(one));
    const all = on ? [...others, ...changed] : others;
    let surplus = all.length - MOST;
    const kept = all.filter((one) => surplus <= 0 || present.has(one) || (surplus -= 1) < 0);
    await this.#state.update(keyOf(uri), kept.length === 0 ? undefined : kept);
  }
}

const keyOf = (uri: string): string => `borewright.ticks:${uri}`;
