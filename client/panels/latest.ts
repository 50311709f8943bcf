/**
 * Keeps one request at a time in the air: calls that come while an answer is awaited make one more request after it, so the
 * last state is always asked for and none piles up.
 */
export class Latest {
  readonly #ask: () => Promise<void>;
  readonly #isDone: () => boolean;
  #asking = false;
  #again = false;

  /** @param isDone true where nobody wants an answer any more */
  constructor(ask: () => Promise<void>, isDone: () => boolean) {
    this.#ask = ask;
    this.#isDone = isDone;
  }

  async refresh(): Promise<void> {
    if (this.#asking) {
      this.#again = true;
      return;
    }
    this.#asking = true;
    try {
      do {
        this.#again = false;
        await this.#ask();
      } while (this.#again && !this.#isDone());
    } finally {
      this.#asking = false;
    }
  }
}

/** What a fault says, for the reader. */
export const wordsOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));
