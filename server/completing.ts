import type { JobAnalysis } from '../shared-core/service.js';
import type { OpenFile, Workspace } from './workspace.js';

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

/** True where the present text of a document is ready to be asked about after so many milliseconds. */
export function preparedIn(workspace: Workspace, uri: string, milliseconds: number): boolean {
  const start = performance.now();
  return workspace.prepare(uri, () => performance.now() - start > milliseconds);
}

/** Prepares a document in slices, whatever its text becomes; false where `goesOn` said that nobody waits any more. */
export async function prepared(workspace: Workspace, uri: string, goesOn: () => boolean): Promise<boolean> {
  while (!preparedIn(workspace, uri, SLICE_MS)) {
    await nextTurn();
    if (!goesOn()) return false;
  }
  return true;
}

/** Sorts the work of a job into set-ups in slices; false where its text was changed meanwhile. */
export async function sorted(file: OpenFile): Promise<boolean> {
  if (file.kind === 'shop') return true;
  const { document, analysis } = file;
  const { version } = document;
  for (;;) {
    const start = performance.now();
    if (analysis.sortSetUps(() => performance.now() - start > SLICE_MS)) return true;
    await nextTurn();
    if (document.version !== version) return false;
  }
}
