/**
 * Runs something once what the client has sent meanwhile has come in; gives what calls it off. A timer would leave the thread
 * idle for a millisecond between two slices of work.
 */
export function atNextTurn(work: () => void): () => void {
  if (typeof setImmediate === 'function') {
    const waiting = setImmediate(work);
    return () => clearImmediate(waiting);
  }
  // A worker of a browser has timers alone.
  const waiting = setTimeout(work, 0);
  return () => clearTimeout(waiting);
}

/** Lets what the client has sent meanwhile come in first. */
export const nextTurn = (): Promise<void> =>
  new Promise((resume) => {
    atNextTurn(resume);
  });
