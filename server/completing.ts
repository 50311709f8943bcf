import type { JobAnalysis } from '../shared-core/service.js';

/** So long at a time a job is worked on before the next message of the client has its turn. */
const SLICE_MS = 30;

/** Lets what the client has sent meanwhile come in first. */
export const nextTurn = (): Promise<void> => new Promise((resume) => setTimeout(resume, 0));

/** Works out what the slow rules say of a job, in slices; false where `goesOn` said that nobody wants to know any more. */
export async function completed(analysis: JobAnalysis, goesOn: () => boolean): Promise<boolean> {
  while (!completedIn(analysis, SLICE_MS)) {
    await nextTurn();
    if (!goesOn()) return false;
  }
  return true;
}

/** True where all is known after so many milliseconds. */
export function completedIn(analysis: JobAnalysis, milliseconds: number): boolean {
  const start = performance.now();
  return analysis.complete(() => performance.now() - start > milliseconds);
}
