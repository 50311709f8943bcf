/** Work that is done a step at a time, by whoever has the time for it, and comes to a result. */
export type Steps<R> = Generator<undefined, R, undefined>;

/** Does all of it at once. */
export function inOneGo<R>(steps: Steps<R>): R {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}

/** What takes no step. */
export function* known<R>(result: R): Steps<R> {
  return result;
}
