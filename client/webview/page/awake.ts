/** Keeps the screen from going off, where the platform lets a page ask for that. */
export class Awake {
  readonly #told: (isKept: boolean) => void;
  #wanted = false;
  #lock: WakeLockSentinel | null = null;

  /** @param told whether the screen is kept on from now on */
  constructor(told: (isKept: boolean) => void) {
    this.#told = told;
    // A page that was hidden has lost its hold on the screen.
    document.addEventListener('visibilitychange', () => {
      if (this.#wanted && document.visibilityState === 'visible') void this.#ask();
    });
  }

  keep(): void {
    this.#wanted = true;
    void this.#ask();
  }

  release(): void {
    this.#wanted = false;
    void this.#lock?.release();
    this.#lock = null;
  }

  async #ask(): Promise<void> {
    try {
      const lock = await navigator.wakeLock.request('screen');
      // Let go of meanwhile; or asked for once more meanwhile, and a second hold would outlive the first.
      if (!this.#wanted || this.#lock !== null) {
        await lock.release();
        return;
      }
      this.#lock = lock;
      lock.addEventListener('release', () => {
        if (this.#lock === lock) this.#lock = null;
        this.#told(false);
      });
      this.#told(true);
    } catch {
      // Not allowed here, or not known to this platform.
      this.#told(false);
    }
  }
}
