/**
 * Keeps one request at a time in the air: calls that come while an answer is awaited make one more request after it, so the
 * last state is always asked for and none piles up. The one in the air is told that it is out of date: whoever has not begun
 * to answer it need not. An answer that comes all the same is newer than what is shown.
 */
export class Latest {
  readonly #ask: (outdated: AbortSignal) => Promise<void>;
  readonly #isDone: () => boolean;
  #asking: AbortController | null = null;
  #again = false;

  /** @param isDone true where nobody wants an answer any more */
  constructor(ask: (outdated: AbortSignal) => Promise<void>, isDone: () => boolean) {
    this.#ask = ask;
    this.#isDone = isDone;
  }

  async refresh(): Promise<void> {
    if (this.#asking !== null) {
      this.#again = true;
      this.#asking.abort();
      return;
    }
    try {
      do {
        this.#again = false;
        this.#asking = new AbortController();
        await this.#ask(this.#asking.signal);
      } while (this.#again && !this.#isDone());
    } finally {
      this.#asking = null;
    }
  }
}

/** What a fault says, for the reader. */
export const wordsOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));
