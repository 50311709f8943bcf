/**
 * Results that are worked out of something at the first asking, and kept as long as whoever owns this store. The work must
 * give the same of the same, so that nobody can tell whether it was done before.
 */
export class Derived {
  readonly #made = new Map<unknown, Map<unknown, unknown>>();

  /** What the work makes of `of`. */
  get<T extends object, R>(work: (of: T) => R, of: T): R {
    const made = this.#made.get(work) ?? new Map<unknown, unknown>();
    this.#made.set(work, made);
    if (!made.has(of)) made.set(of, work(of));
    return made.get(of) as R;
  }
}
